package org.shortgrain.part;

import org.shortgrain.terms.GrainDirection;

/**
 * The user's own stress-corrosion threshold in one direction.
 *
 * @param direction grain direction
 * @param stress threshold stress
 * @param environment environment of the test
 * @param origin where the group stands, and its reference
 */
public record UserThreshold(
        @Meaning("Grain direction.") Stated<GrainDirection> direction,
        @In(Dimension.STRESS) @Limits(positive = true) @Meaning("Threshold stress.") Stated<Range> stress,
        @Meaning("Environment of the test.") Stated<String> environment,
        Origin origin) {
}
