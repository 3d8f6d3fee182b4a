package org.shortgrain.part;

import java.util.List;

/**
 * Whether and how water drains from a place.
 *
 * @param holdsWater whether water stands here, when no geometry is given
 * @param opening where the opening faces when installed
 * @param depth depth
 * @param length length, fore and aft
 * @param width width
 * @param volume volume inside
 * @param gap gap between joined faces, which draws water in
 * @param profile floor of the cavity as points along its length, end walls among them, where it is no box; water runs off
 *        over its first and last point
 * @param attitude attitudes in which the part rests
 * @param drainHoles drain holes, or none
 * @param vented whether air can come in when water runs out
 * @param filledWith what fills the place, or none
 * @param fillingBonded whether the filling is bonded to a primed wall
 * @param origin where the group stands, and its reference
 */
public record Drainage(
        @Meaning("Whether water stands here, when no geometry is given.") Stated<Boolean> holdsWater,
        @Meaning("Where the opening faces when installed.") Stated<Opening> opening,
        @In(Dimension.LENGTH) @Meaning("Depth.") Stated<Range> depth,
        @In(Dimension.LENGTH) @Meaning("Length, fore and aft.") Stated<Range> length,
        @In(Dimension.LENGTH) @Meaning("Width.") Stated<Range> width,
        @In(Dimension.VOLUME) @Meaning("Volume inside.") Stated<Range> volume,
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Gap between joined faces, which draws water in.")
        Stated<Range> gap,
        @Meaning("Floor of the cavity as points along its length, end walls among them, where it is no box. Water runs off "
                + "over its first and last point.")
        Stated<List<ProfilePoint>> profile,
        @Meaning("Attitudes in which the part rests.") Stated<Attitudes> attitude,
        @Meaning("Drain holes, or none.") Stated<List<DrainHole>> drainHoles,
        @Meaning("Whether air can come in when water runs out.") Stated<Boolean> vented,
        @Meaning("What fills the place, or none.") Stated<Filling> filledWith,
        @Meaning("Whether the filling is bonded to a primed wall.") Stated<Boolean> fillingBonded,
        Origin origin) {
}
