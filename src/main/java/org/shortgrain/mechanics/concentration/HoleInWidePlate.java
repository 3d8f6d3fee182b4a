package org.shortgrain.mechanics.concentration;

import java.util.List;
import org.shortgrain.mechanics.Computed.Input;
import org.shortgrain.mechanics.Computed.Validity;
import org.shortgrain.mechanics.Given;
import org.shortgrain.terms.Citation;

/**
 * Round hole far from any edge: 3 under tension one way, {@code 3 S1 - S2} under two ways. Kirsch, exact (memory).
 */
public record HoleInWidePlate() implements Concentration {

    @Override
    public String name() {
        return "a hole in a wide plate";
    }

    @Override
    public Section nominal() {
        return Section.GROSS;
    }

    @Override
    public String equation() {
        return "Kt = 3";
    }

    @Override
    public List<Given> dimensions() {
        return List.of();
    }

    @Override
    public List<Input> inputs() {
        return List.of();
    }

    @Override
    public double factor(double... dimensions) {
        return along(1);
    }

    /**
     * {@return stress over far stress on the section across the load: 1/2 (1 + (a/r)^2) + 1/2 (1 + 3 (a/r)^4)}
     *
     * @param ratio distance r from the hole centre over the hole radius a, 1 or more
     * @throws IllegalArgumentException if the place lies inside the hole
     */
    public static double along(double ratio) {
        if (!(ratio >= 1)) {
            throw new IllegalArgumentException("inside the hole: r/a = " + ratio);
        }
        double square = 1 / (ratio * ratio);
        return (1 + square) / 2 + (1 + 3 * square * square) / 2;
    }

    /**
     * {@return peak stress at the hole under two principal far stresses, 3 S1 - S2 (Pa)}
     *
     * @param s1 the greater far stress (Pa)
     * @param s2 the lesser far stress (Pa)
     */
    public static double biaxialPeak(double s1, double s2) {
        return 3 * Math.max(s1, s2) - Math.min(s1, s2);
    }

    @Override
    public Validity validity() {
        return new Validity(true, "Plate wide against the hole, tension one way, elastic.");
    }

    @Override
    public List<Citation> sources() {
        return List.of(Sources.KIRSCH);
    }
}
