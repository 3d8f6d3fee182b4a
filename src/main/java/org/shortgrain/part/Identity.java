package org.shortgrain.part;

import java.util.List;

/**
 * Which part it is, and what depends on it.
 *
 * @param number part number as in the title block. Without it no report is made
 * @param revision revision as in the title block. Without it the report is not tied to a design
 * @param name name as in the title block
 * @param criticality what the loss of the part means. Absent or unknown: judged as safety_critical
 * @param singleLoadPath whether no other part carries the load when this one fails. Absent: taken as true
 * @param function what the part does, in one line
 * @param effectOfFailure what happens when it fails, in one line
 * @param designAuthority organisation that decides on the design
 * @param nextAssembly number of the next assembly
 * @param manufacturer who makes the part
 * @param serials serial numbers or lots the review covers
 * @param effectivity line numbers or vehicles the review covers
 * @param life calendar life
 * @param origin where the group stands, and its reference
 */
public record Identity(
        @Minimum(Minimum.Role.REFUSED) @Verbatim
        @Meaning("Part number as in the title block. Without it no report is made.") Stated<String> number,
        @Minimum(Minimum.Role.IDENTITY) @Verbatim
        @Meaning("Revision as in the title block. Without it the report is not tied to a design.")
        Stated<String> revision,
        @Verbatim @Meaning("Name as in the title block.") Stated<String> name,
        @Minimum(Minimum.Role.IDENTITY)
        @Meaning("What the loss of the part means. Absent or unknown: judged as safety_critical.")
        Stated<Criticality> criticality,
        @Meaning("Whether no other part carries the load when this one fails. Absent: taken as true.")
        Stated<Boolean> singleLoadPath,
        @Meaning("What the part does, in one line.") Stated<String> function,
        @Meaning("What happens when it fails, in one line.") Stated<String> effectOfFailure,
        @Verbatim @Meaning("Organisation that decides on the design.") Stated<String> designAuthority,
        @Verbatim @Meaning("Number of the next assembly.") Stated<String> nextAssembly,
        @Verbatim @Meaning("Who makes the part.") Stated<String> manufacturer,
        @Verbatim @Meaning("Serial numbers or lots the review covers.") Stated<List<String>> serials,
        @Verbatim @Meaning("Line numbers or vehicles the review covers.") Stated<String> effectivity,
        @In(Dimension.TIME) @Limits(positive = true) @Meaning("Calendar life.") Stated<Range> life,
        Origin origin) {
}
