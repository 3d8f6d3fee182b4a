package org.shortgrain.mechanics.crack;

/**
 * Semi-elliptical surface crack in a plate under tension and bending, by Newman and Raju's equations.
 *
 * <p>{@code K = (S_t + H S_b) sqrt(pi a/Q) F(a/c, a/t, c/b, phi)}; phi is the parametric angle, pi/2 at the deepest point
 * and 0 at the surface. Range: 0 &lt; a/c &lt;= 2, a/t &lt;= 0.8, c/b &lt; 0.5; within some 5 % of finite elements there.
 * J. C. Newman and I. S. Raju, Eng. Fract. Mech. 15 (1981) 185; NASA TM-85793 (1984) for a/c &gt; 1. The equations were
 * seen in two open-source programs that cite TM-85793 (secondary), H1 for a/c &gt; 1 is from memory.
 *
 * @param depth      a (m)
 * @param halfLength c, half the length on the surface (m)
 * @param thickness  t (m)
 * @param halfWidth  b, half the width of the plate (m); positive infinity where it is wide
 */
public record SurfaceCrack(double depth, double halfLength, double thickness, double halfWidth) {

    /** Greatest a/c. */
    public static final double GREATEST_ASPECT = 2;
    /** Greatest a/t. */
    public static final double GREATEST_DEPTH = 0.8;
    /** c/b stays below. */
    public static final double GREATEST_WIDTH = 0.5;
    /** Angle of the deepest point (rad). */
    public static final double DEEPEST = Math.PI / 2;
    /** Angle of the point at the surface (rad). */
    public static final double AT_SURFACE = 0;

    /** Refuses sizes that are not above zero. */
    public SurfaceCrack {
        if (!(depth > 0 && halfLength > 0 && thickness > 0 && halfWidth > 0)) {
            throw new IllegalArgumentException("crack " + depth + " x " + halfLength + " m, plate " + thickness + " x "
                    + halfWidth + " m");
        }
    }

    /** {@return whether the sizes lie where the equations hold} */
    public boolean isInside() {
        return aspect() <= GREATEST_ASPECT && depth <= GREATEST_DEPTH * thickness && halfLength < GREATEST_WIDTH * halfWidth;
    }

    /** {@return Q, the square of the complete elliptic integral of the second kind, within 0.14 %} */
    public double shapeFactor() {
        return 1 + 1.464 * Math.pow(Math.min(aspect(), 1 / aspect()), 1.65);
    }

    /**
     * {@return the stress intensity (Pa sqrt(m))}
     *
     * @param tension membrane stress (Pa)
     * @param bending bending stress at the cracked surface (Pa)
     * @param angle   place on the front (rad)
     */
    public double intensity(double tension, double bending, double angle) {
        return (tension + bending(angle) * bending) * Math.sqrt(Math.PI * depth / shapeFactor()) * boundary(angle);
    }

    /**
     * {@return F, the boundary-correction factor for tension}
     *
     * @param angle place on the front (rad)
     */
    public double boundary(double angle) {
        double at2 = Math.pow(depth / thickness, 2);
        double series = shallow() ? flat(aspect(), at2) : deep(1 / aspect(), at2);
        double sine = Math.sin(angle);
        double rise = 0.1 + 0.35 * at2 * (shallow() ? 1 : 1 / aspect());
        double g = 1 + rise * Math.pow(1 - sine, 2);
        return series * g * front(angle) * width();
    }

    private static double flat(double ac, double at2) {
        double m1 = 1.13 - 0.09 * ac;
        double m2 = -0.54 + 0.89 / (0.2 + ac);
        double m3 = 0.5 - 1 / (0.65 + ac) + 14 * Math.pow(1 - ac, 24);
        return m1 + m2 * at2 + m3 * at2 * at2;
    }

    private static double deep(double ca, double at2) {
        double m1 = Math.sqrt(ca) * (1 + 0.04 * ca);
        double m2 = 0.2 * Math.pow(ca, 4);
        double m3 = -0.11 * Math.pow(ca, 4);
        return m1 + m2 * at2 + m3 * at2 * at2;
    }

    private double front(double angle) {
        double sine2 = Math.pow(Math.sin(angle), 2);
        double cosine2 = Math.pow(Math.cos(angle), 2);
        double ratio2 = shallow() ? aspect() * aspect() : 1 / (aspect() * aspect());
        return Math.pow(shallow() ? ratio2 * cosine2 + sine2 : ratio2 * sine2 + cosine2, 0.25);
    }

    private double width() {
        double quarter = Math.PI * halfLength / (2 * halfWidth) * Math.sqrt(depth / thickness);
        return 1 / Math.sqrt(Math.cos(quarter));
    }

    /**
     * {@return H, what bending counts beside tension}
     *
     * @param angle place on the front (rad)
     */
    public double bending(double angle) {
        double at = depth / thickness;
        double h1 = shallow() ? 1 - 0.34 * at - 0.11 * aspect() * at : deepAtSurface(1 / aspect(), at);
        double h2 = shallow() ? flatAtDepth(aspect(), at) : deepAtDepth(1 / aspect(), at);
        double power = 0.2 + Math.min(aspect(), 1 / aspect()) + 0.6 * at;
        return h1 + (h2 - h1) * Math.pow(Math.sin(angle), power);
    }

    private static double flatAtDepth(double ac, double at) {
        double g1 = -1.22 - 0.12 * ac;
        double g2 = 0.55 - 1.05 * Math.pow(ac, 0.75) + 0.47 * Math.pow(ac, 1.5);
        return 1 + g1 * at + g2 * at * at;
    }

    private static double deepAtSurface(double ca, double at) {
        return 1 + (-0.04 - 0.41 * ca) * at + (0.55 - 1.93 * Math.pow(ca, 0.75) + 1.38 * Math.pow(ca, 1.5)) * at * at;
    }

    private static double deepAtDepth(double ca, double at) {
        return 1 + (-2.11 + 0.77 * ca) * at + (0.55 - 0.72 * Math.pow(ca, 0.75) + 0.14 * Math.pow(ca, 1.5)) * at * at;
    }

    private double aspect() {
        return depth / halfLength;
    }

    private boolean shallow() {
        return aspect() <= 1;
    }
}
