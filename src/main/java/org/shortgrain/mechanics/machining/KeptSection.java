package org.shortgrain.mechanics.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The part of the blank's thickness that the finished section keeps.
 *
 * @param from depth of the finished surface, m
 * @param to   depth of the opposite face, m
 */
record KeptSection(double from, double to) {

    /** Number of positions tried over the thickness where the depth or the finished thickness is not known. */
    private static final int POSITIONS = 20;
    /** Rounded drawing dimensions may add up to a hundredth more than the blank. */
    private static final double ROUNDING = 1.01;

    KeptSection {
        if (!(to > from && from >= 0)) {
            throw new IllegalArgumentException("nothing is kept between " + from + " and " + to + " m");
        }
    }

    /**
     * All sections that the stated facts allow: one, or a sweep over what is not known. Facts that contradict each other
     * say nothing.
     */
    static List<KeptSection> allowedBy(FinishedSurface surface, double blank) {
        boolean consistent = fits(surface, blank);
        OptionalDouble depth = consistent ? surface.depth() : OptionalDouble.empty();
        OptionalDouble thickness = consistent ? surface.thickness() : OptionalDouble.empty();
        List<KeptSection> all = new ArrayList<>();
        for (double from : choices(depth, 0, blank)) {
            for (double height : choices(thickness, blank / POSITIONS, blank - from)) {
                double to = Math.min(blank, from + height);
                if (to > from) {
                    all.add(new KeptSection(from, to));
                }
            }
        }
        return all;
    }

    /** Whether the stated depth and finished thickness fit into the blank. */
    static boolean fits(FinishedSurface surface, double blank) {
        double needed = surface.depth().orElse(0) + surface.thickness().orElse(0);
        return needed <= ROUNDING * blank && surface.depth().orElse(0) < blank;
    }

    private static List<Double> choices(OptionalDouble known, double lowest, double highest) {
        if (known.isPresent()) {
            return List.of(known.getAsDouble());
        }
        List<Double> sweep = new ArrayList<>();
        for (int i = 0; i <= POSITIONS; i++) {
            sweep.add(lowest + (highest - lowest) * i / POSITIONS);
        }
        return sweep;
    }
}
