package org.shortgrain.part;

/**
 * One specimen.
 *
 * @param stress stress
 * @param days days to cracking, or to the end of the test
 * @param cracked whether it cracked
 * @param origin where the group stands, and its reference
 */
public record TestPoint(
        @In(Dimension.STRESS) @Limits(min = 0) @Meaning("Stress.") Stated<Range> stress,
        @Limits(min = 0) @Meaning("Days to cracking, or to the end of the test.") Stated<Double> days,
        @Meaning("Whether it cracked.") Stated<Boolean> cracked,
        Origin origin) {
}
