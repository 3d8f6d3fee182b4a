package org.shortgrain.mechanics.quench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.SiUnit;

/**
 * Stress through a thickness: straight lines between points, depth counted from one face. Forces and moments are the
 * exact integrals of those lines.
 */
public final class StressProfile {

    private final double[] depth;
    private final double[] stress;
    /** Force for a width of one from the first face to each point. */
    private final double[] forceTo;
    /** Moment for a width of one about the first face, from there to each point. */
    private final double[] momentTo;

    private StressProfile(double[] depth, double[] stress) {
        if (depth.length < 2 || depth.length != stress.length) {
            throw new IllegalArgumentException(depth.length + " depths but " + stress.length + " stresses");
        }
        for (int i = 1; i < depth.length; i++) {
            if (!(depth[i] > depth[i - 1])) {
                throw new IllegalArgumentException("depths do not rise at " + depth[i]);
            }
        }
        this.depth = depth;
        this.stress = stress;
        this.forceTo = new double[depth.length];
        this.momentTo = new double[depth.length];
        for (int i = 1; i < depth.length; i++) {
            forceTo[i] = forceTo[i - 1] + pieceForce(i - 1, depth[i], stress[i]);
            momentTo[i] = momentTo[i - 1] + pieceMoment(i - 1, depth[i], stress[i]);
        }
    }

    /** Force of the straight piece from point i to a depth and stress. */
    private double pieceForce(int i, double z, double s) {
        return 0.5 * (z - depth[i]) * (stress[i] + s);
    }

    /** Moment of the straight piece from point i to a depth and stress, about the first face. */
    private double pieceMoment(int i, double z, double s) {
        double z0 = depth[i] - depth[0];
        double z1 = z - depth[0];
        return (z1 - z0) * (stress[i] * (2 * z0 + z1) + s * (z0 + 2 * z1)) / 6;
    }

    /**
     * {@return the profile through the given points}
     *
     * @param depth  depths in m, strictly rising
     * @param stress stress at each depth, Pa
     * @throws IllegalArgumentException if there are fewer than two points, the lengths differ or the depths do not rise
     */
    public static StressProfile through(double[] depth, double[] stress) {
        return new StressProfile(depth.clone(), stress.clone());
    }

    /**
     * {@return the profile of a section that is the same on both sides of its middle}
     *
     * @param fromCentre distances from the middle, m, the first 0 and the last at the face
     * @param stress     stress at each distance, Pa
     */
    public static StressProfile symmetric(double[] fromCentre, double[] stress) {
        int n = fromCentre.length - 1;
        double half = fromCentre[n];
        double[] depth = new double[2 * n + 1];
        double[] all = new double[2 * n + 1];
        for (int i = 0; i <= n; i++) {
            depth[n - i] = half - fromCentre[i];
            depth[n + i] = half + fromCentre[i];
            all[n - i] = stress[i];
            all[n + i] = stress[i];
        }
        return new StressProfile(depth, all);
    }

    /**
     * {@return the same stress at every depth}
     *
     * @param thickness thickness, m
     * @param stress    stress, Pa
     */
    public static StressProfile uniform(double thickness, double stress) {
        return new StressProfile(new double[] {0, thickness}, new double[] {stress, stress});
    }

    /** {@return depth of the first face, m} */
    public double start() {
        return depth[0];
    }

    /** {@return depth of the last face, m} */
    public double end() {
        return depth[depth.length - 1];
    }

    /** {@return distance between the faces, m} */
    public double thickness() {
        return end() - start();
    }

    /** {@return the depths of the points, m} */
    public double[] depths() {
        return depth.clone();
    }

    /** {@return the stresses at the points, Pa} */
    public double[] stresses() {
        return stress.clone();
    }

    /**
     * {@return the stress at a depth, Pa}
     *
     * @param z depth, m
     * @throws IllegalArgumentException if the depth lies outside the section
     */
    public double at(double z) {
        int i = pieceOf(z);
        double share = (z - depth[i]) / (depth[i + 1] - depth[i]);
        return stress[i] + share * (stress[i + 1] - stress[i]);
    }

    /** The piece that holds a depth: from point i to point i + 1. */
    private int pieceOf(double z) {
        if (!(z >= start() && z <= end())) {
            throw new IllegalArgumentException("depth " + z + " m outside " + start() + " to " + end() + " m");
        }
        int found = Arrays.binarySearch(depth, z);
        return Math.min(found >= 0 ? found : -found - 2, depth.length - 2);
    }

    /**
     * {@return the part of the profile between two depths, unchanged}
     *
     * @param from depth of the first face kept, m
     * @param to   depth of the last face kept, m
     * @throws IllegalArgumentException if the kept part is empty or reaches outside
     */
    public StressProfile between(double from, double to) {
        if (!(to > from)) {
            throw new IllegalArgumentException("nothing lies between " + from + " and " + to + " m");
        }
        int first = pieceOf(from) + 1;
        int last = pieceOf(to);
        int beyond = depth[last] < to ? last + 1 : last;
        double[] kept = new double[beyond - first + 2];
        double[] left = new double[kept.length];
        System.arraycopy(depth, first, kept, 1, beyond - first);
        System.arraycopy(stress, first, left, 1, beyond - first);
        kept[0] = from;
        left[0] = at(from);
        kept[kept.length - 1] = to;
        left[left.length - 1] = at(to);
        return new StressProfile(kept, left);
    }

    /**
     * {@return the profile with a straight line taken off}
     *
     * @param mean     stress taken off at {@code about}, Pa
     * @param gradient slope of the line, Pa/m
     * @param about    depth at which the line has its mean, m
     */
    public StressProfile minusLine(double mean, double gradient, double about) {
        double[] left = new double[stress.length];
        for (int i = 0; i < left.length; i++) {
            left[i] = stress[i] - mean - gradient * (depth[i] - about);
        }
        return new StressProfile(depth, left);
    }

    /**
     * {@return the profile with every stress multiplied}
     *
     * @param factor the factor
     */
    public StressProfile times(double factor) {
        double[] times = new double[stress.length];
        for (int i = 0; i < times.length; i++) {
            times[i] = factor * stress[i];
        }
        return new StressProfile(depth, times);
    }

    /**
     * {@return the profile less another one over the same depths}
     *
     * @param other the other profile
     * @throws IllegalArgumentException if the other one does not reach over the same depths
     */
    public StressProfile minus(StressProfile other) {
        if (Arrays.equals(depth, other.depth)) {
            double[] left = new double[stress.length];
            for (int i = 0; i < left.length; i++) {
                left[i] = stress[i] - other.stress[i];
            }
            return new StressProfile(depth, left);
        }
        double[] all = depthsWith(other);
        double[] left = new double[all.length];
        for (int i = 0; i < left.length; i++) {
            left[i] = at(all[i]) - other.at(all[i]);
        }
        return new StressProfile(all, left);
    }

    /** The depths of both, rising, each once. */
    private double[] depthsWith(StressProfile other) {
        double[] all = Arrays.copyOf(depth, depth.length + other.depth.length);
        System.arraycopy(other.depth, 0, all, depth.length, other.depth.length);
        Arrays.sort(all);
        int count = 0;
        for (double z : all) {
            if (count == 0 || z > all[count - 1]) {
                all[count++] = z;
            }
        }
        return Arrays.copyOf(all, count);
    }

    /**
     * {@return the profile with every depth increased}
     *
     * @param distance the distance, m
     */
    public StressProfile shiftedBy(double distance) {
        return new StressProfile(Arrays.stream(depth).map(z -> z + distance).toArray(), stress);
    }

    /** {@return the force for a width of one, N/m} */
    public double force() {
        return forceTo[forceTo.length - 1];
    }

    /**
     * {@return the force between two depths for a width of one, N/m}
     *
     * @param from depth, m
     * @param to   greater depth, m
     */
    public double force(double from, double to) {
        return forceTo(to) - forceTo(from);
    }

    /**
     * {@return the moment for a width of one, N}
     *
     * @param about depth of the axis, m
     */
    public double moment(double about) {
        return momentTo[momentTo.length - 1] - (about - start()) * force();
    }

    /**
     * {@return the moment between two depths for a width of one, N}
     *
     * @param from  depth, m
     * @param to    greater depth, m
     * @param about depth of the axis, m
     */
    public double moment(double from, double to, double about) {
        return momentTo(to) - momentTo(from) - (about - start()) * force(from, to);
    }

    private double forceTo(double z) {
        int i = pieceOf(z);
        return forceTo[i] + pieceForce(i, z, at(z));
    }

    private double momentTo(double z) {
        int i = pieceOf(z);
        return momentTo[i] + pieceMoment(i, z, at(z));
    }

    /** {@return the largest stress, Pa} */
    public double highest() {
        double highest = stress[0];
        for (double s : stress) {
            highest = Math.max(highest, s);
        }
        return highest;
    }

    /** {@return the smallest stress, Pa} */
    public double lowest() {
        double lowest = stress[0];
        for (double s : stress) {
            lowest = Math.min(lowest, s);
        }
        return lowest;
    }

    /**
     * {@return the profile as a curve for a figure}
     *
     * @param name what is drawn
     */
    public Computed.Profile named(String name) {
        return new Computed.Profile(name, SiUnit.METRE, SiUnit.PASCAL, boxed(depth), boxed(stress));
    }

    private static List<Double> boxed(double... values) {
        List<Double> boxed = new ArrayList<>(values.length);
        for (double value : values) {
            boxed.add(value);
        }
        return boxed;
    }
}
