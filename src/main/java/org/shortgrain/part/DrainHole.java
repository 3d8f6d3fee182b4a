package org.shortgrain.part;

/**
 * A drain hole.
 *
 * @param diameter diameter
 * @param atLowestPoint whether it lies at the lowest point in the attitudes stated
 * @param fromLowEnd distance of its near edge from the end of the floor that is lower on the ground
 * @param fromLowSide distance of its near edge from the side of the floor that is lower in the first attitude that rolls,
 *        in the order ground, flight, parked, transport
 * @param pathContinues whether the way out goes on through neighbouring structure
 * @param neighbourHole hole of the neighbour that it meets, or none
 * @param waiver written acceptance of a smaller hole
 * @param origin where the group stands, and its reference
 */
public record DrainHole(
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Diameter.") Stated<Range> diameter,
        @Meaning("Whether it lies at the lowest point in the attitudes stated.") Stated<Boolean> atLowestPoint,
        @In(Dimension.LENGTH)
        @Meaning("Distance of its near edge from the end of the floor that is lower on the ground.")
        Stated<Range> fromLowEnd,
        @In(Dimension.LENGTH)
        @Meaning("Distance of its near edge from the side of the floor that is lower in the first attitude that rolls.")
        Stated<Range> fromLowSide,
        @Meaning("Whether the way out goes on through neighbouring structure.") Stated<Boolean> pathContinues,
        @Meaning("Hole of the neighbour that it meets, or none.") Stated<NeighbourHole> neighbourHole,
        @Meaning("Written acceptance of a smaller hole.") Stated<String> waiver,
        Origin origin) {
}
