package org.shortgrain.mechanics.water;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A hollow that keeps water: a floor drawn out over a width, between two upright side walls.
 *
 * <p>Water stands at a point as high as the lowest way out from there: the lowest over all ways out of the highest point
 * on the way. Ways out are the ends of the floor line, the rim of the side walls, and holes. Across the width the floor is
 * straight, so that every way goes down to the low side first and then along it; on a straight stretch of floor the level
 * is the lower of the levels at its two ends. The volume follows exactly: between floor points the section of the water is
 * a quadratic of the place in pieces, and Simpson's rule is exact for quadratics.
 *
 * <p>Range of validity: opening upwards, however askew. Source: own derivation.
 *
 * @param floor    the floor line with its end walls
 * @param width    width (m), above 0
 * @param rim      height of the upper edge of the side walls (m), not below any floor point; empty where they reach above
 *                 all water
 * @param endsOpen whether water runs off over both ends of the floor line; false in a closed hollow
 */
public record Basin(Floor floor, double width, OptionalDouble rim, boolean endsOpen) {

    /** Refuses a basin without width and a rim below the floor. */
    public Basin {
        if (!(width > 0)) {
            throw new IllegalArgumentException("no width: " + width + " m");
        }
        if (rim.isPresent() && !(rim.getAsDouble() >= floor.highest())) {
            throw new IllegalArgumentException("the rim " + rim.getAsDouble() + " m lies below the floor");
        }
    }

    /**
     * {@return the water that stays; none where the opening no longer faces up}
     *
     * @param tilt  how the part rests
     * @param holes holes that let water out
     * @throws IllegalArgumentException if nothing lets the water out: a closed hollow without a hole
     */
    public Pool pool(Tilt tilt, List<Outlet> holes) {
        if (!endsOpen && rim.isEmpty() && holes.isEmpty()) {
            throw new IllegalArgumentException("nothing lets the water out");
        }
        if (!tilt.facesUp()) {
            return new Pool(0, 0, floor.lowestAt(0));
        }
        Floor marked = floor;
        for (Outlet hole : holes) {
            for (double place : hole.places(floor)) {
                marked = marked.marked(place);
            }
        }
        double[] heights = marked.points().stream().mapToDouble(point -> point.z() + tilt.along() * point.x()).toArray();
        double[] levels = waysOut(marked, heights, tilt, holes);
        carry(levels, heights);
        return filled(marked, heights, levels, Math.abs(tilt.across()));
    }

    /** At each floor point the height at which water leaves right there; infinite where it cannot. */
    private double[] waysOut(Floor marked, double[] heights, Tilt tilt, List<Outlet> holes) {
        double[] out = new double[heights.length];
        Arrays.setAll(out, i -> rim.isPresent() ? rim.getAsDouble() + tilt.along() * marked.points().get(i).x()
                : Double.POSITIVE_INFINITY);
        if (endsOpen) {
            out[0] = heights[0];
            out[out.length - 1] = heights[out.length - 1];
        }
        for (Outlet hole : holes) {
            double[] places = hole.places(floor);
            double[] rises = hole.rises(tilt.across(), width);
            for (int edge = 0; edge < places.length; edge++) {
                int at = marked.indexAt(places[edge]);
                out[at] = Math.min(out[at], heights[at] + rises[edge]);
            }
        }
        return out;
    }

    /** Carries the ways out along the floor: the level behind a ridge is at least the ridge. */
    private static void carry(double[] levels, double[] heights) {
        for (int i = 1; i < levels.length; i++) {
            levels[i] = Math.min(levels[i], Math.max(heights[i], levels[i - 1]));
        }
        for (int i = levels.length - 2; i >= 0; i--) {
            levels[i] = Math.min(levels[i], Math.max(heights[i], levels[i + 1]));
        }
    }

    private Pool filled(Floor marked, double[] heights, double[] levels, double acrossSlope) {
        double volume = 0;
        double depth = 0;
        double deepest = Double.NaN;
        for (int i = 0; i + 1 < heights.length; i++) {
            double level = Math.min(levels[i], levels[i + 1]);
            double run = marked.points().get(i + 1).x() - marked.points().get(i).x();
            volume += stretch(run, level - heights[i], level - heights[i + 1], acrossSlope);
            for (int end = i; end <= i + 1; end++) {
                if (level - heights[end] > depth) {
                    depth = level - heights[end];
                    deepest = marked.points().get(end).x();
                }
            }
        }
        return new Pool(depth, volume, depth > 0 ? deepest : lowest(marked, heights));
    }

    private static double lowest(Floor marked, double[] heights) {
        int low = 0;
        for (int i = 1; i < heights.length; i++) {
            low = heights[i] < heights[low] ? i : low;
        }
        return marked.points().get(low).x();
    }

    /** Volume over a straight stretch of floor, from the depths at the low side at its two ends; negative is dry. */
    private double stretch(double run, double from, double to, double acrossSlope) {
        double[] cuts = {0, share(from, to, 0), share(from, to, acrossSlope * width), 1};
        Arrays.sort(cuts);
        double volume = 0;
        for (int i = 0; i + 1 < cuts.length; i++) {
            double start = from + cuts[i] * (to - from);
            double end = from + cuts[i + 1] * (to - from);
            double simpson = (section(start, acrossSlope) + 4 * section((start + end) / 2, acrossSlope)
                    + section(end, acrossSlope)) / 6;
            volume += run * (cuts[i + 1] - cuts[i]) * simpson;
        }
        return volume;
    }

    /** Where between two depths a third lies, as a share of the way; at an end where it does not lie between. */
    private static double share(double from, double to, double depth) {
        if (from == to) {
            return 0;
        }
        return Math.max(0, Math.min(1, (depth - from) / (to - from)));
    }

    /** Section of water across the width with a depth at its low side: a trapezium, or a triangle. */
    private double section(double depth, double acrossSlope) {
        if (depth <= 0) {
            return 0;
        }
        double rise = acrossSlope * width;
        return depth >= rise ? width * (depth - rise / 2) : depth * depth / (2 * acrossSlope);
    }
}
