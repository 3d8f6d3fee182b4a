package org.shortgrain.mechanics.quench;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.SiUnit;

/**
 * Stress through a thickness: straight lines between points, depth counted from one face. Forces and moments are the
 * exact integrals of those lines.
 */
public final class StressProfile {

    private final double[] depth;
    private final double[] stress;

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
        if (!(z >= start() && z <= end())) {
            throw new IllegalArgumentException("depth " + z + " m outside " + start() + " to " + end() + " m");
        }
        int found = Arrays.binarySearch(depth, z);
        if (found >= 0) {
            return stress[found];
        }
        int next = -found - 1;
        double share = (z - depth[next - 1]) / (depth[next] - depth[next - 1]);
        return stress[next - 1] + share * (stress[next] - stress[next - 1]);
    }

    /**
     * {@return the part of the profile between two depths, unchanged}
     *
     * @param from depth of the first face kept, m
     * @param to   depth of the last face kept, m
     * @throws IllegalArgumentException if the kept part is empty or reaches outside
     */
    public StressProfile between(double from, double to) {
        double[] inside = Arrays.stream(depth).filter(z -> z > from && z < to).toArray();
        double[] kept = DoubleStream.concat(DoubleStream.concat(DoubleStream.of(from), Arrays.stream(inside)),
                DoubleStream.of(to)).toArray();
        return new StressProfile(kept, Arrays.stream(kept).map(this::at).toArray());
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
        return new StressProfile(depth, Arrays.stream(stress).map(s -> factor * s).toArray());
    }

    /** {@return the force for a width of one, N/m} */
    public double force() {
        double sum = 0;
        for (int i = 1; i < depth.length; i++) {
            sum += 0.5 * (depth[i] - depth[i - 1]) * (stress[i] + stress[i - 1]);
        }
        return sum;
    }

    /**
     * {@return the moment for a width of one, N}
     *
     * @param about depth of the axis, m
     */
    public double moment(double about) {
        double sum = 0;
        for (int i = 1; i < depth.length; i++) {
            double z0 = depth[i - 1] - about;
            double z1 = depth[i] - about;
            sum += (z1 - z0) * (stress[i - 1] * (2 * z0 + z1) + stress[i] * (z0 + 2 * z1)) / 6;
        }
        return sum;
    }

    /** {@return the largest stress, Pa} */
    public double highest() {
        return Arrays.stream(stress).max().orElseThrow();
    }

    /** {@return the smallest stress, Pa} */
    public double lowest() {
        return Arrays.stream(stress).min().orElseThrow();
    }

    /**
     * {@return the profile as a curve for a figure}
     *
     * @param name what is drawn
     */
    public Computed.Profile named(String name) {
        return new Computed.Profile(name, SiUnit.METRE, SiUnit.PASCAL, Arrays.stream(depth).boxed().toList(),
                Arrays.stream(stress).boxed().toList());
    }
}
