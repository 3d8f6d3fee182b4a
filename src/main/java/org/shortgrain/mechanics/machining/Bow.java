package org.shortgrain.mechanics.machining;

/**
 * How far a part that is free to bow does so. Circular arc; small deflection.
 *
 * <pre>
 * plate:        kappa_x = (m_x - nu m_y) / E     (m = M/I of the direction)
 * narrow beam:  kappa = m / E
 * bow over a length L:  kappa L^2 / 8
 * </pre>
 *
 * @param curvature curvature, 1/m; positive bends the ends towards the deeper face
 */
public record Bow(double curvature) {

    /**
     * {@return the bow of a plate or wall}
     *
     * @param along   release in the direction of the bow
     * @param across  release in the direction across it
     * @param modulus Young's modulus, Pa
     * @param poisson Poisson's ratio
     */
    public static Bow ofPlate(SectionRelease along, SectionRelease across, double modulus, double poisson) {
        return new Bow((along.gradient() - poisson * across.gradient()) / modulus);
    }

    /**
     * {@return the bow of a narrow beam, whose width is free to change}
     *
     * @param along   release along the beam
     * @param modulus Young's modulus, Pa
     */
    public static Bow ofBeam(SectionRelease along, double modulus) {
        return new Bow(along.gradient() / modulus);
    }

    /**
     * {@return the bow of a part with every stress multiplied}
     *
     * @param factor the factor
     */
    public Bow times(double factor) {
        return new Bow(factor * curvature);
    }

    /**
     * {@return rise of the arc over a length, m}
     *
     * @param length length of the part, m
     */
    public double over(double length) {
        return Math.abs(curvature) * length * length / 8;
    }
}
