package org.shortgrain.part;

/**
 * A point of the floor of a cavity.
 *
 * @param x distance along the length, from the end that is low when the nose is up
 * @param z height above the lowest floor point of the drawing
 * @param origin where the group stands, and its reference
 */
public record ProfilePoint(
        @In(Dimension.LENGTH) @Limits(min = Double.NEGATIVE_INFINITY) @Meaning("Distance along the length, from the end "
                + "that is low when the nose is up.")
        Stated<Range> x,
        @In(Dimension.LENGTH) @Limits(min = Double.NEGATIVE_INFINITY)
        @Meaning("Height above the lowest floor point of the drawing.") Stated<Range> z,
        Origin origin) {
}
