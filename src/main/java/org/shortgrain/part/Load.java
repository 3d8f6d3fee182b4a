package org.shortgrain.part;

import org.shortgrain.terms.GrainDirection;

/**
 * A lasting load at a feature.
 *
 * @param source where it comes from
 * @param stress nominal stress, tension positive
 * @param level in words, when no number is known
 * @param direction grain direction, where it is not that of the feature
 * @param shareOfLife share of calendar time, 0 to 1. Absent: 1
 * @param pressure pressure in a vessel or tube
 * @param bore inside diameter of the vessel or tube
 * @param wall wall of the vessel or tube
 * @param force force
 * @param area area that carries it
 * @param report stress report and revision
 * @param transientLoads short-lived loads that are not counted
 * @param origin where the group stands, and its reference
 */
public record Load(
        @Meaning("Where it comes from.") Stated<LoadSource> source,
        @In(Dimension.STRESS) @Meaning("Nominal stress, tension positive.") Stated<Range> stress,
        @Meaning("In words, when no number is known.") Stated<Level> level,
        @Meaning("Grain direction, where it is not that of the feature.") Stated<GrainDirection> direction,
        @In(Dimension.SHARE) @Meaning("Share of calendar time, 0 to 1. Absent: 1.") Stated<Double> shareOfLife,
        @In(Dimension.STRESS) @Meaning("Pressure in a vessel or tube.") Stated<Range> pressure,
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Inside diameter of the vessel or tube.")
        Stated<Range> bore,
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Wall of the vessel or tube.") Stated<Range> wall,
        @In(Dimension.FORCE) @Meaning("Force.") Stated<Range> force,
        @In(Dimension.AREA) @Limits(positive = true) @Meaning("Area that carries it.") Stated<Range> area,
        @Meaning("Stress report and revision.") Stated<String> report,
        @Key("transient") @Meaning("Short-lived loads that are not counted.") Stated<String> transientLoads,
        Origin origin) {
}
