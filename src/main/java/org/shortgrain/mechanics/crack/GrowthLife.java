package org.shortgrain.mechanics.crack;

import java.util.OptionalDouble;
import java.util.TreeSet;
import org.shortgrain.mechanics.GaussLegendre;

/** Time that a crack takes from one depth to another: {@code t = integral of da / v(K(a))}. */
public final class GrowthLife {

    /**
     * Points between two depths of the curve: they lie some 15 % apart, where K follows a power of the depth, so that the
     * closed forms of the tests are met within 1e-8.
     */
    private static final int GAUSS_POINTS = 10;
    private static final GaussLegendre GAUSS = new GaussLegendre(GAUSS_POINTS);

    private GrowthLife() {
    }

    /**
     * {@return the time (s), 0 if the crack is already there; empty if the crack does not grow at its first depth}
     *
     * @param curve stress intensity against depth
     * @param law   velocity against stress intensity
     * @param from  first depth (m)
     * @param to    last depth (m)
     */
    public static OptionalDouble between(IntensityCurve curve, GrowthLaw law, double from, double to) {
        if (from >= to) {
            return OptionalDouble.of(0);
        }
        if (law.velocity(curve.at(from)) <= 0) {
            return OptionalDouble.empty();
        }
        TreeSet<Double> kinks = new TreeSet<>(curve.depths().stream().filter(a -> a > from && a < to).toList());
        curve.depthAt(Math.max(law.bend(), Double.MIN_NORMAL)).ifPresent(a -> {
            if (a > from && a < to) {
                kinks.add(a);
            }
        });
        kinks.add(to);
        double time = 0;
        double start = from;
        for (double end : kinks) {
            time += piece(curve, law, start, end);
            start = end;
        }
        return OptionalDouble.of(time);
    }

    private static double piece(IntensityCurve curve, GrowthLaw law, double from, double to) {
        return GAUSS.integral(a -> 1 / law.velocity(curve.at(a)), from, to);
    }
}
