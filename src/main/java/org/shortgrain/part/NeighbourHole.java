package org.shortgrain.part;

/**
 * Hole of a neighbour that a drain hole meets.
 *
 * @param diameter diameter
 * @param offset   distance between the centres of both holes
 * @param origin   where the group stands, and its reference
 */
public record NeighbourHole(
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Diameter.") Stated<Range> diameter,
        @In(Dimension.LENGTH) @Meaning("Distance between the centres of both holes.") Stated<Range> offset,
        Origin origin) {
}
