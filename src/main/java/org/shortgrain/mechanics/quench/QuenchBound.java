package org.shortgrain.mechanics.quench;

import java.util.Objects;

/**
 * The stress that a quench can leave at most, from the W-temper yield alone: for when the bath or the section is not
 * known. As close to the published measurements as the full model for cold water and 50 mm or over; for thinner
 * sections and milder baths it lies on the high side.
 *
 * <p>Basis: a plate core stretches until it yields in two directions (1 x yield); a round or square bar is held from
 * three sides, which lifts its axial core stress to 1.6 x and leaves 0.6 x across. The factors are those of the slab
 * and the bar model for cold water, from 50 mm up (own computation); published: 1.67 along, 0.87 across for an
 * as-quenched 7085 die forging (Olson et al. 2018, abstract).
 *
 * @param yield      0.2 % proof stress of the W temper, Pa
 * @param skinYield  flow stress of the worked skin, Pa: yield after one per cent more plastic strain
 */
public record QuenchBound(double yield, double skinYield) {

    /** Axial core stress of a compact bar over the W-temper yield. */
    public static final double BAR_ALONG = 1.6;
    /** Core stress across a compact bar over the W-temper yield. */
    public static final double BAR_ACROSS = 0.6;
    /** Plastic strain that the skin of a thick section has taken up by the end of the quench, about one per cent. */
    private static final double SKIN_STRAIN = 0.01;

    /**
     * {@return the bound for a metal}
     *
     * @param material the metal
     */
    public static QuenchBound of(QuenchMaterial material) {
        Objects.requireNonNull(material, "material");
        double yield = material.wYieldAtRoomTemperature();
        return new QuenchBound(yield, yield + SKIN_STRAIN * material.hardening().at(QuenchMaterial.ROOM_TEMPERATURE));
    }

    /** {@return in-plane core tension of a plate, Pa} */
    public double plateCore() {
        return yield;
    }

    /** {@return skin stress of a plate, Pa; compression, so negative} */
    public double plateSkin() {
        return -skinYield;
    }

    /** {@return core tension along a compact bar, Pa} */
    public double barCoreAlong() {
        return BAR_ALONG * yield;
    }

    /** {@return core tension across a compact bar, the short transverse direction among them, Pa} */
    public double barCoreAcross() {
        return BAR_ACROSS * yield;
    }
}
