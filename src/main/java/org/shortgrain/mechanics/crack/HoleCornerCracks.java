package org.shortgrain.mechanics.crack;

/**
 * Two symmetric quarter-elliptical corner cracks at a hole in a plate under remote tension, and one alone.
 *
 * <p>Newman and Raju, 1984 form (memory), which agrees within 3 % with the 1981 form seen in an open-source library of
 * crack growth (secondary). One crack from two by Shah's factor (memory). Range: 0.2 &lt;= a/c &lt;= 1, 0.5 &lt;= r/t &lt;= 2,
 * a/t &lt; 1. The concentration of the hole is in it: the stress is the remote one.
 *
 * @param depth     a, along the bore (m)
 * @param length    c, from the bore along the face (m)
 * @param thickness t (m)
 * @param radius    r of the hole (m)
 * @param halfWidth b, half the width of the plate (m); positive infinity where it is wide
 */
public record HoleCornerCracks(double depth, double length, double thickness, double radius, double halfWidth) {

    private static final double LEAST_ASPECT = 0.2;
    private static final double LEAST_RADIUS = 0.5;
    private static final double GREATEST_RADIUS = 2;

    /** Refuses sizes that are not above zero, and cracks deeper than long, for which this form does not hold. */
    public HoleCornerCracks {
        if (!(depth > 0 && length >= depth && thickness > 0 && radius > 0 && halfWidth > radius + length)) {
            throw new IllegalArgumentException("corner cracks " + depth + " x " + length + " m at a hole of radius " + radius
                    + " m, plate " + thickness + " x " + halfWidth + " m");
        }
    }

    /** {@return whether the sizes lie where the equations hold} */
    public boolean isInside() {
        double rt = radius / thickness;
        return depth >= LEAST_ASPECT * length && rt >= LEAST_RADIUS && rt <= GREATEST_RADIUS && depth < thickness;
    }

    /**
     * {@return the stress intensity with cracks on both sides (Pa sqrt(m))}
     *
     * @param remote remote tension (Pa)
     * @param angle  place on the front (rad)
     */
    public double ofTwo(double remote, double angle) {
        return remote * Math.sqrt(Math.PI * depth / shapeFactor()) * boundary(angle, 2);
    }

    /**
     * {@return the stress intensity with a crack on one side (Pa sqrt(m))}
     *
     * @param remote remote tension (Pa)
     * @param angle  place on the front (rad)
     */
    public double ofOne(double remote, double angle) {
        return ofTwo(remote, angle) * shah();
    }

    /** {@return what one crack has of the stress intensity of two, by Shah} */
    public double shah() {
        double area = depth * length / (thickness * radius);
        return Math.sqrt((4 / Math.PI + area / 2) / (4 / Math.PI + area));
    }

    private double shapeFactor() {
        return 1 + 1.464 * Math.pow(depth / length, 1.65);
    }

    /** F over sqrt(Q) is what tables print. */
    double normalised(double angle) {
        return boundary(angle, 2) / Math.sqrt(shapeFactor());
    }

    private double boundary(double angle, int cracks) {
        double ac = depth / length;
        double at = depth / thickness;
        double at2 = at * at;
        double m1 = 1.13 - 0.09 * ac;
        double m2 = -0.54 + 0.89 / (0.2 + ac);
        double m3 = 0.5 - 1 / (0.65 + ac) + 14 * Math.pow(1 - ac, 24);
        double g1 = 1 + (0.1 + 0.35 * at2) * Math.pow(1 - Math.sin(angle), 2);
        double lambda = 1 / (1 + length / radius * Math.cos(0.85 * angle));
        double g2 = (1 + lambda * (0.358 + lambda * (1.425 + lambda * (-1.578 + lambda * 2.156))))
                / (1 + 0.13 * lambda * lambda);
        double g3 = (1 + 0.04 * ac) * (1 + 0.1 * Math.pow(1 - Math.cos(angle), 2)) * (0.85 + 0.15 * Math.pow(at, 0.25));
        double g4 = 1 - 0.7 * (1 - at) * (ac - 0.2) * (1 - ac);
        double front = Math.pow(ac * ac * Math.pow(Math.cos(angle), 2) + Math.pow(Math.sin(angle), 2), 0.25);
        return (m1 + m2 * at2 + m3 * at2 * at2) * g1 * g2 * g3 * g4 * front * width(at, cracks);
    }

    private double width(double at, int cracks) {
        if (Double.isInfinite(halfWidth)) {
            return 1;
        }
        double hole = Math.PI * radius / (2 * halfWidth);
        double whole = Math.PI * (2 * radius + cracks * length) / (4 * (halfWidth - length) + 2 * cracks * length);
        return 1 / Math.sqrt(Math.cos(hole) * Math.cos(whole * Math.sqrt(at)));
    }
}
