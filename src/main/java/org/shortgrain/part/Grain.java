package org.shortgrain.part;

import java.util.List;

/**
 * Grain directions in the axes of the part.
 *
 * @param basis how the directions are known. Absent: judged as a guess
 * @param l part axis of L: X, Y, Z, or three numbers
 * @param lt part axis of LT
 * @param st part axis of ST
 * @param partingLine parting plane of a die forging
 * @param endGrainExposed features where the grain runs out at the surface, or none
 * @param tilt tilt of the flow lines against the stated axes, or a cone of uncertainty
 * @param origin where the group stands, and its reference
 */
public record Grain(
        @Minimum(Minimum.Role.JUDGING) @Meaning("How the directions are known. Absent: judged as a guess.")
        Stated<GrainBasis> basis,
        @Key("L") @Meaning("Part axis of L: X, Y, Z, or three numbers.") Stated<Axis> l,
        @Key("LT") @Meaning("Part axis of LT.") Stated<Axis> lt,
        @Key("ST") @Meaning("Part axis of ST.") Stated<Axis> st,
        @Meaning("Parting plane of a die forging.") Stated<String> partingLine,
        @Meaning("Features where the grain runs out at the surface, or none.") Stated<List<String>> endGrainExposed,
        @In(Dimension.ANGLE) @Meaning("Tilt of the flow lines against the stated axes, or a cone of uncertainty.")
        Stated<Range> tilt,
        Origin origin) {
}
