package org.shortgrain.mechanics.crack;

/**
 * Quarter-elliptical corner crack in a plate under tension, by Newman and Raju's equation.
 *
 * <p>{@code K = S sqrt(pi a/Q) F(a/c, a/t, c/b, phi)}; phi is pi/2 at the end on the face along the thickness and 0 at the
 * end on the face of the plate. Range: 0.2 &lt;= a/c &lt;= 1, a/t &lt; 1, c/b &lt; 0.5. NASA TM-85793 (1984), as an
 * open-source library of crack growth has it (secondary).
 *
 * @param depth     a, along the thickness (m)
 * @param length    c, along the face (m)
 * @param thickness t (m)
 * @param width     b, width of the plate (m); positive infinity where it is wide
 */
public record CornerCrack(double depth, double length, double thickness, double width) {

    /** Least and greatest a/c. */
    private static final double LEAST_ASPECT = 0.2;
    private static final double GREATEST_WIDTH = 0.5;

    /** Refuses sizes that are not above zero, and a crack that is deeper than long, for which the equation does not hold. */
    public CornerCrack {
        if (!(depth > 0 && length >= depth && thickness > 0 && width > 0)) {
            throw new IllegalArgumentException("corner crack " + depth + " x " + length + " m, plate " + thickness + " x "
                    + width + " m");
        }
    }

    /** {@return whether the sizes lie where the equation holds} */
    public boolean isInside() {
        return depth >= LEAST_ASPECT * length && depth < thickness && length < GREATEST_WIDTH * width;
    }

    /**
     * {@return the stress intensity (Pa sqrt(m))}
     *
     * @param tension membrane stress (Pa)
     * @param angle   place on the front (rad)
     */
    public double intensity(double tension, double angle) {
        return tension * Math.sqrt(Math.PI * depth / shapeFactor()) * boundary(angle);
    }

    /** {@return Q} */
    public double shapeFactor() {
        return 1 + 1.464 * Math.pow(depth / length, 1.65);
    }

    /**
     * {@return F, the boundary-correction factor}
     *
     * @param angle place on the front (rad)
     */
    public double boundary(double angle) {
        double ac = depth / length;
        double at2 = Math.pow(depth / thickness, 2);
        double m1 = 1.08 - 0.03 * ac;
        double m2 = -0.44 + 1.06 / (0.3 + ac);
        double m3 = -0.5 + 0.25 * ac + 14.8 * Math.pow(1 - ac, 15);
        double g1 = 1 + (0.08 + 0.4 * at2) * Math.pow(1 - Math.sin(angle), 3);
        double g2 = 1 + (0.08 + 0.15 * at2) * Math.pow(1 - Math.cos(angle), 3);
        double front = Math.pow(ac * ac * Math.pow(Math.cos(angle), 2) + Math.pow(Math.sin(angle), 2), 0.25);
        return (m1 + m2 * at2 + m3 * at2 * at2) * g1 * g2 * front * widthFactor();
    }

    private double widthFactor() {
        double lambda = length / width * Math.sqrt(depth / thickness);
        return 1 + lambda * (-0.2 + lambda * (9.4 + lambda * (-19.4 + lambda * 27.1)));
    }
}
