package org.shortgrain.mechanics.machining;

import java.util.function.DoubleUnaryOperator;
import org.shortgrain.mechanics.GaussLegendre;

/**
 * Elastic stress at the root of a narrow slot that is cut into stressed metal.
 *
 * <pre>
 * s_root = 2 K / sqrt(pi rho) + 0.78 s(a)
 * K = int_0^a s(x) m(x, a) dx
 * m = 2 / sqrt(2 pi (a - x)) [1 + M1 (1 - x/a)^0.5 + M2 (1 - x/a) + M3 (1 - x/a)^1.5]
 * </pre>
 *
 * <p>Valid for a depth below a fifth of the thickness (edge crack in a half-space) and a half-width rho that is small
 * against the depth. In a quenched skin K is negative, the flanks push the slot shut; no credit should be taken for
 * that: use the stress as it was where it is higher. Source: weight function of Glinka and Shen, Engng Fract. Mech. 40
 * (1991) 1135, from memory; for uniform stress it gives 1.1226 s sqrt(pi a) against 1.1215 exactly.
 */
public final class SlotRoot {

    /** Largest depth over thickness for which the half-space stands. */
    public static final double DEEPEST = 0.2;

    private static final double M1 = 0.0719768;
    private static final double M2 = 0.246984;
    private static final double M3 = 0.514465;
    /** Share of the stress of the unslotted metal that adds to the singular part; from memory. */
    private static final double FAR_SHARE = 0.78;

    /** The integrand is smooth after the substitution; 40 points carry it to rounding between two kinks. */
    private static final GaussLegendre GAUSS = new GaussLegendre(40);

    private SlotRoot() {
    }

    /**
     * {@return the stress intensity of an edge slot, Pa sqrt(m)}
     *
     * @param stress stress before the slot against distance from the mouth, Pa
     * @param depth  depth of the slot, m
     */
    public static double stressIntensity(DoubleUnaryOperator stress, double depth) {
        return GAUSS.integral(u -> {
            double ratio = u * u;
            double weight = 2 / Math.sqrt(2 * Math.PI * depth * ratio)
                    * (1 + M1 * Math.sqrt(ratio) + M2 * ratio + M3 * ratio * Math.sqrt(ratio));
            return stress.applyAsDouble(depth * (1 - ratio)) * weight * 2 * depth * u;
        }, 0, 1);
    }

    /**
     * {@return the stress at the root, Pa}
     *
     * @param stress    stress before the slot against distance from the mouth, Pa
     * @param depth     depth of the slot, m
     * @param halfWidth root radius or half-width of the slot, m
     */
    public static double rootStress(DoubleUnaryOperator stress, double depth, double halfWidth) {
        return 2 * stressIntensity(stress, depth) / Math.sqrt(Math.PI * halfWidth)
                + FAR_SHARE * stress.applyAsDouble(depth);
    }
}
