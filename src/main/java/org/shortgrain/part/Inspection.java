package org.shortgrain.part;

import java.util.List;

/**
 * Inspection in service.
 *
 * @param access access
 * @param method methods, or none
 * @param first time to the first inspection
 * @param repeat interval between inspections
 * @param intervalBasis what the intervals rest on
 * @param detectable smallest crack that the method finds
 * @param afterAssembly whether the place can be inspected after assembly
 * @param origin where the group stands, and its reference
 */
public record Inspection(
        @Meaning("Access.") Stated<Access> access,
        @Meaning("Methods, or none.") Stated<List<InspectionMethod>> method,
        @In(Dimension.TIME) @Meaning("Time to the first inspection.") Stated<Range> first,
        @In(Dimension.TIME) @Meaning("Interval between inspections.") Stated<Range> repeat,
        @Key("interval_basis") @Meaning("What the intervals rest on.") Stated<IntervalBasis> intervalBasis,
        @In(Dimension.LENGTH) @Meaning("Smallest crack that the method finds.") Stated<Range> detectable,
        @Meaning("Whether the place can be inspected after assembly.") Stated<Boolean> afterAssembly,
        Origin origin) {
}
