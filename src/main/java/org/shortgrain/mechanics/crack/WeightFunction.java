package org.shortgrain.mechanics.crack;

import java.util.function.DoubleUnaryOperator;
import org.shortgrain.mechanics.GaussLegendre;

/**
 * Stress intensity of a surface crack under any stress through the thickness, by a weight function.
 *
 * <p>With {@code u = 1 - x/a}: at the deepest point {@code m = 2/sqrt(2 pi (a - x)) (1 + M1 u^(1/2) + M2 u + M3 u^(3/2))},
 * M2 = 3; at the surface {@code m = 2/sqrt(pi x) (1 + M1 (x/a)^(1/2) + M2 x/a + M3 (x/a)^(3/2))}, zero at x = a
 * (G. Shen and G. Glinka, Theor. Appl. Fract. Mech. 15 (1991) 247, form from memory). The remaining factors follow from
 * two known cases, for which {@link SurfaceCrack} under tension and under bending is taken; the two it returns exactly,
 * and its accuracy elsewhere is theirs: some 5 %, more where the stress turns within the depth.
 */
public final class WeightFunction {

    /** Points of the quadrature: the integrand is smooth but for the kinks of the stress, which cost up to 2 %, less than the equations. */
    private static final int POINTS = 24;
    private static final GaussLegendre GAUSS = new GaussLegendre(POINTS);

    private final double depth;
    private final double[] deepest;
    private final double[] surface;

    /**
     * Fits the weight function to a crack.
     *
     * @param crack the crack
     */
    public WeightFunction(SurfaceCrack crack) {
        this.depth = crack.depth();
        this.deepest = deepest(reference(crack, SurfaceCrack.DEEPEST), linear(crack, SurfaceCrack.DEEPEST));
        this.surface = surface(reference(crack, SurfaceCrack.AT_SURFACE), linear(crack, SurfaceCrack.AT_SURFACE));
    }

    /** K under a stress of 1 over sqrt(a). */
    private static double reference(SurfaceCrack crack, double angle) {
        return crack.intensity(1, 0, angle) / Math.sqrt(crack.depth());
    }

    /** K under 1 - x/a over sqrt(a): bending 1 - 2x/t is (1 - 2a/t) + (2a/t)(1 - x/a). */
    private static double linear(SurfaceCrack crack, double angle) {
        double part = 2 * crack.depth() / crack.thickness();
        return (crack.intensity(0, 1, angle) - (1 - part) * crack.intensity(1, 0, angle)) / (part * Math.sqrt(crack.depth()));
    }

    /** From K1 = 2 sqrt(2a/pi)(1 + M1/2 + 1 + M3/4) and the same with 1 - x/a. */
    private static double[] deepest(double uniform, double linear) {
        double unit = 2 * Math.sqrt(2 / Math.PI);
        double r0 = uniform / unit;
        double r1 = linear / unit;
        double m3 = 24 * r1 - 12 * r0 + 1.6;
        return new double[] {1, 2 * (r0 - 2 - m3 / 4), 3, m3};
    }

    /** From K1 = 4 sqrt(a/pi)(1 + M1/2 + M2/3 + M3/4), the same with 1 - x/a, and 1 + M1 + M2 + M3 = 0. */
    private static double[] surface(double uniform, double linear) {
        double unit = 4 / Math.sqrt(Math.PI);
        double p = uniform / unit - 1;
        double q = (uniform - linear) / unit - 1.0 / 3;
        double m1 = 24 * p - 60 * q - 4;
        double m2 = 12 * p + 3 - 3 * m1;
        return new double[] {1, m1, m2, -1 - m1 - m2};
    }

    /**
     * {@return the stress intensity at the deepest point (Pa sqrt(m))}
     *
     * @param stress stress (Pa) against depth (m)
     */
    public double atDepth(DoubleUnaryOperator stress) {
        double integral = GAUSS.integral(s -> stress.applyAsDouble(depth * (1 - s * s)) * series(deepest, s), 0, 1);
        return 2 * Math.sqrt(2 * depth / Math.PI) * integral;
    }

    /**
     * {@return the stress intensity at the surface (Pa sqrt(m))}
     *
     * @param stress stress (Pa) against depth (m)
     */
    public double atSurface(DoubleUnaryOperator stress) {
        double integral = GAUSS.integral(s -> stress.applyAsDouble(depth * s * s) * series(surface, s), 0, 1);
        return 4 * Math.sqrt(depth / Math.PI) * integral;
    }

    private static double series(double[] m, double s) {
        return m[0] + s * (m[1] + s * (m[2] + s * m[3]));
    }
}
