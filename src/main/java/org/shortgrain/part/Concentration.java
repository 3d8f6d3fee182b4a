package org.shortgrain.part;

/**
 * What concentrates the stress at a feature.
 *
 * @param kt elastic concentration factor on the nominal stress
 * @param kind hole, fillet or notch, to compute the factor
 * @param mode tension or bending
 * @param width full width or larger diameter
 * @param netWidth reduced width or smaller diameter
 * @param diameter hole diameter
 * @param radius fillet or notch radius
 * @param depth notch depth
 * @param round whether the bar is round
 * @param origin where the group stands, and its reference
 */
public record Concentration(
        @InShort @Limits(min = 1) @Meaning("Elastic concentration factor on the nominal stress.") Stated<Double> kt,
        @Meaning("Hole, fillet or notch, to compute the factor.") Stated<ConcentrationKind> kind,
        @Meaning("Tension or bending.") Stated<LoadMode> mode,
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Full width or larger diameter.") Stated<Range> width,
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Reduced width or smaller diameter.")
        Stated<Range> netWidth,
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Hole diameter.") Stated<Range> diameter,
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Fillet or notch radius.") Stated<Range> radius,
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Notch depth.") Stated<Range> depth,
        @Meaning("Whether the bar is round.") Stated<Boolean> round,
        Origin origin) {
}
