package org.shortgrain.part;

/**
 * Tilt of the part at rest.
 *
 * @param pitch pitch, nose up positive
 * @param roll roll
 * @param origin where the group stands, and its reference
 */
public record Attitude(
        @In(Dimension.ANGLE) @Meaning("Pitch, nose up positive.") Stated<Range> pitch,
        @In(Dimension.ANGLE) @Meaning("Roll.") Stated<Range> roll,
        Origin origin) {
}
