package org.shortgrain.mechanics.section;

/**
 * What governs the size of a section, and so how it scales with r = old strength / new strength at the same load.
 * Strength-index argument (own derivation; the exponent 2/3 of similar beams is the usual beam index).
 */
public enum SizingMode {
    /** Tension, shear, bearing or a lug; width and hole kept, thickness scaled: t goes with r. */
    THICKNESS("thickness, width kept", 1, 1),
    /** Bending of a rectangle, width kept: height goes with r^(1/2). */
    BENDING_WIDTH_KEPT("height, width kept", 1.0 / 2, 1.0 / 2),
    /** Bending, height kept: width goes with r. */
    BENDING_HEIGHT_KEPT("width, height kept", 1, 1),
    /** Bending, all dimensions in proportion: each goes with r^(1/3), the area with r^(2/3). */
    BENDING_IN_PROPORTION("every dimension", 1.0 / 3, 2.0 / 3),
    /** Stiffness or buckling, which the modulus governs: unchanged between alloys of equal modulus. */
    STIFFNESS("none: the modulus governs", 0, 0);

    private final String dimension;
    private final double dimensionExponent;
    private final double areaExponent;

    SizingMode(String dimension, double dimensionExponent, double areaExponent) {
        this.dimension = dimension;
        this.dimensionExponent = dimensionExponent;
        this.areaExponent = areaExponent;
    }

    /** {@return which dimension is scaled} */
    public String dimension() {
        return dimension;
    }

    /** {@return exponent of r for the scaled dimension} */
    public double dimensionExponent() {
        return dimensionExponent;
    }

    /** {@return exponent of r for the area} */
    public double areaExponent() {
        return areaExponent;
    }
}
