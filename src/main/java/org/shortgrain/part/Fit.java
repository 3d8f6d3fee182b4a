package org.shortgrain.part;

/**
 * A fit between the part and a bush, pin, bearing or fastener.
 *
 * @param kind kind of fit
 * @param role whether the part is the outer or the inner member. Absent: outer
 * @param hole hole diameter, limits
 * @param bush outside diameter of the bush or pin, limits
 * @param interference diametral interference, where the limits of hole and bush are not given
 * @param bushBore bore of the bush; absent for a solid pin
 * @param outerWidth outside diameter of the outer member: twice the smallest distance from the centre to an edge
 * @param edgeDistance smallest distance from the hole centre to an edge
 * @param length length of the fit
 * @param pushOutLoad axial load that friction alone must hold
 * @param bushMaterial material and condition of the other member
 * @param bushCoating coating of the other member, or none
 * @param installedWet installed with wet sealant or primer
 * @param sealedEnds whether the ends are sealed
 * @param coldest lowest long-lasting temperature
 * @param taper taper on diameter of a taper pin or thread
 * @param advance axial advance of a taper pin or thread
 * @param origin where the group stands, and its reference
 */
public record Fit(
        @InShort @Meaning("Kind of fit.") Stated<FitKind> kind,
        @Meaning("Whether the part is the outer or the inner member. Absent: outer.") Stated<FitRole> role,
        @In(Dimension.LENGTH) @Limits(positive = true, usualMin = Limits.THIN, usualMax = Limits.THICK)
        @Meaning("Hole diameter, limits.") Stated<Range> hole,
        @In(Dimension.LENGTH) @Limits(positive = true, usualMin = Limits.THIN, usualMax = Limits.THICK)
        @Meaning("Outside diameter of the bush or pin, limits.") Stated<Range> bush,
        @In(Dimension.LENGTH) @Limits(min = Double.NEGATIVE_INFINITY)
        @Meaning("Diametral interference, where the limits of hole and bush are not given.") Stated<Range> interference,
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Bore of the bush; absent for a solid pin.")
        Stated<Range> bushBore,
        @In(Dimension.LENGTH) @Limits(positive = true)
        @Meaning("Outside diameter of the outer member: twice the smallest distance from the centre to an edge.")
        Stated<Range> outerWidth,
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Smallest distance from the hole centre to an edge.")
        Stated<Range> edgeDistance,
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Length of the fit.") Stated<Range> length,
        @In(Dimension.FORCE) @Limits(min = 0) @Meaning("Axial load that friction alone must hold.") Stated<Range> pushOutLoad,
        @Meaning("Material and condition of the other member.") Stated<String> bushMaterial,
        @Meaning("Coating of the other member, or none.") Stated<String> bushCoating,
        @Meaning("Installed with wet sealant or primer.") Stated<Boolean> installedWet,
        @Meaning("Whether the ends are sealed.") Stated<Boolean> sealedEnds,
        @In(Dimension.TEMPERATURE) @Meaning("Lowest long-lasting temperature.") Stated<Range> coldest,
        @Limits(positive = true) @Meaning("Taper on diameter of a taper pin or thread.") Stated<Double> taper,
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Axial advance of a taper pin or thread.")
        Stated<Range> advance,
        Origin origin) {
}
