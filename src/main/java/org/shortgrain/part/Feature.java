package org.shortgrain.part;

import java.util.List;

/**
 * A place on the part that is judged on its own.
 *
 * @param id short name, used by the route and the report
 * @param what what kind of place it is
 * @param stressDirection grain direction of the lasting tension: L, LT, ST, mixed, transverse, across_flow, or an
 *        axis. Absent or unknown: judged as ST
 * @param critical whether the loss of the part starts here
 * @param place where on the part it lies
 * @param asQuenchedDepth how deep the finished surface lies below the surface that was quenched
 * @param sectionAsQuenched section at quench, where it differs from the form
 * @param sectionFinished finished section
 * @param restraint whether the rest of the part holds it straight; unknown: both are computed, the worse counts
 * @param residualStress residual stress at the surface; replaces the computed one
 * @param loads lasting loads, or none. Short peaks do not belong here
 * @param stressConcentration what concentrates the stress here, or none
 * @param fit fit in or around this place, or none
 * @param clampUp gaps pulled shut in assembly, or none
 * @param fasteners fasteners through this place, or none
 * @param axis axis of a bore or hole in part axes
 * @param drainage whether and how water drains here; none: water cannot stand here
 * @param surface surface treatment where it differs from the part
 * @param sealant sealing where it differs from the part
 * @param zone zone where it differs from the part
 * @param neighbours neighbours at this place
 * @param remarks anything a reader should know
 * @param origin where the group stands, and its reference
 */
public record Feature(
        @Minimum(Minimum.Role.REFUSED) @Verbatim @Meaning("Short name, used by the route and the report.")
        Stated<String> id,
        @Minimum(Minimum.Role.JUDGING) @Meaning("What kind of place it is.") Stated<FeatureKind> what,
        @Minimum(Minimum.Role.JUDGING)
        @Meaning("Grain direction of the lasting tension: L, LT, ST, mixed, transverse, across_flow, or an axis. "
                + "Absent or unknown: judged as ST.")
        Stated<StressDirection> stressDirection,
        @Meaning("Whether the loss of the part starts here.") Stated<Boolean> critical,
        @Meaning("Where on the part it lies.") Stated<String> place,
        @In(Dimension.LENGTH) @Meaning("How deep the finished surface lies below the surface that was quenched.")
        Stated<Range> asQuenchedDepth,
        @In(Dimension.LENGTH) @Limits(positive = true, usualMin = Limits.THIN, usualMax = Limits.THICK)
        @Meaning("Section at quench, where it differs from the form.") Stated<Range> sectionAsQuenched,
        @In(Dimension.LENGTH) @Limits(positive = true, usualMin = Limits.THIN, usualMax = Limits.THICK)
        @Meaning("Finished section.") Stated<Range> sectionFinished,
        @Meaning("Whether the rest of the part holds it straight; unknown: both are computed, the worse counts.")
        Stated<Restraint> restraint,
        @Meaning("Residual stress at the surface; replaces the computed one.") Stated<ResidualStress> residualStress,
        @Minimum(value = Minimum.Role.JUDGING, noneAnswers = true)
        @Meaning("Lasting loads, or none. Short peaks do not belong here.") Stated<List<Load>> loads,
        @Meaning("What concentrates the stress here, or none.") Stated<Concentration> stressConcentration,
        @Minimum(value = Minimum.Role.JUDGING, noneAnswers = true) @Meaning("Fit in or around this place, or none.")
        Stated<Fit> fit,
        @Minimum(value = Minimum.Role.JUDGING, noneAnswers = true) @Meaning("Gaps pulled shut in assembly, or none.")
        Stated<List<ClampUp>> clampUp,
        @Meaning("Fasteners through this place, or none.") Stated<List<Fastener>> fasteners,
        @Meaning("Axis of a bore or hole in part axes.") Stated<Axis> axis,
        @Minimum(value = Minimum.Role.JUDGING, noneAnswers = true)
        @Meaning("Whether and how water drains here; none: water cannot stand here.") Stated<Drainage> drainage,
        @Meaning("Surface treatment where it differs from the part.") Stated<Surface> surface,
        @Meaning("Sealing where it differs from the part.") Stated<Sealant> sealant,
        @Vocabulary(Vocabulary.List.ZONES) @Meaning("Zone where it differs from the part.") Stated<List<String>> zone,
        @Meaning("Neighbours at this place.") Stated<List<Neighbour>> neighbours,
        @Meaning("Anything a reader should know.") Stated<String> remarks,
        Origin origin) {
}
