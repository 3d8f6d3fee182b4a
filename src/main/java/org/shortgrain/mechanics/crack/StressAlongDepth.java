package org.shortgrain.mechanics.crack;

import java.util.Collections;
import java.util.List;

/**
 * Sustained stress on the plane of a crack against depth below the surface, in straight lines between its points; beyond
 * the last one it stays. Compression counts as none: a crack is not credited with being held shut.
 *
 * @param depths   depths (m), the first one 0, rising
 * @param stresses stresses (Pa), one for each depth, tension positive
 */
public record StressAlongDepth(List<Double> depths, List<Double> stresses) {

    /** Copies the lists; refuses unequal lengths, depths that do not rise from 0, and compression by calling it none. */
    public StressAlongDepth {
        depths = List.copyOf(depths);
        stresses = stresses.stream().map(one -> Math.max(0, one)).toList();
        if (depths.isEmpty() || depths.size() != stresses.size() || depths.get(0) != 0) {
            throw new IllegalArgumentException("depths " + depths + " with stresses " + stresses);
        }
        for (int i = 1; i < depths.size(); i++) {
            if (!(depths.get(i) > depths.get(i - 1))) {
                throw new IllegalArgumentException("depths do not rise: " + depths);
            }
        }
    }

    /**
     * {@return the same stress at every depth}
     *
     * @param stress the stress (Pa)
     */
    public static StressAlongDepth uniform(double stress) {
        return new StressAlongDepth(List.of(0.0), List.of(stress));
    }

    /** {@return whether it is the same at every depth} */
    public boolean isUniform() {
        return stresses.stream().allMatch(stresses.get(0)::equals);
    }

    /**
     * {@return the stress at a depth (Pa)}
     *
     * @param depth depth (m), 0 or more
     */
    public double at(double depth) {
        int last = depths.size() - 1;
        if (depth >= depths.get(last)) {
            return stresses.get(last);
        }
        int found = Collections.binarySearch(depths, depth);
        if (found >= 0) {
            return stresses.get(found);
        }
        int i = Math.max(1, -found - 1);
        double share = (depth - depths.get(i - 1)) / (depths.get(i) - depths.get(i - 1));
        return stresses.get(i - 1) + share * (stresses.get(i) - stresses.get(i - 1));
    }

    /**
     * {@return the greatest stress from the surface to a depth (Pa)}
     *
     * @param depth depth (m)
     */
    public double greatestDownTo(double depth) {
        double greatest = at(depth);
        for (int i = 0; i < depths.size() && depths.get(i) <= depth; i++) {
            greatest = Math.max(greatest, stresses.get(i));
        }
        return greatest;
    }
}
