package org.shortgrain.mechanics.crack;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * Stress intensity of a growing crack against its depth, never falling: a crack that has begun to grow is not credited with
 * stopping where the stress falls off.
 *
 * <p>Held at fixed depths, even in ln a, and straight between them in ln K against ln a, which is exact where K goes with
 * a power of a.
 */
public final class IntensityCurve {

    /** Points of the curve: a Newman-Raju crack between them is met within 2e-3. */
    private static final int POINTS = 60;
    /** Least depth (m) that is looked at: smaller than any crack that is found or assumed. */
    public static final double LEAST_DEPTH = 1e-5;
    /** Stands for no stress intensity, so that its logarithm exists (Pa sqrt(m)). */
    private static final double NEXT_TO_NOTHING = 1;

    private final double[] lnDepth;
    private final double[] lnIntensity;

    private IntensityCurve(double greatest, DoubleUnaryOperator intensity) {
        this.lnDepth = new double[POINTS];
        this.lnIntensity = new double[POINTS];
        double from = Math.log(LEAST_DEPTH);
        double to = Math.log(greatest);
        double highest = NEXT_TO_NOTHING;
        for (int i = 0; i < POINTS; i++) {
            lnDepth[i] = from + (to - from) * i / (POINTS - 1);
            highest = Math.max(highest, intensity.applyAsDouble(Math.exp(lnDepth[i])));
            lnIntensity[i] = Math.log(highest);
        }
    }

    /**
     * {@return the curve of a crack}
     *
     * @param greatest  greatest depth (m), above the least
     * @param intensity stress intensity (Pa sqrt(m)) against depth (m)
     */
    public static IntensityCurve of(double greatest, DoubleUnaryOperator intensity) {
        if (!(greatest > LEAST_DEPTH)) {
            throw new IllegalArgumentException("no crack grows within " + greatest + " m");
        }
        return new IntensityCurve(greatest, intensity);
    }

    /** {@return the greatest depth (m)} */
    public double greatestDepth() {
        return Math.exp(lnDepth[POINTS - 1]);
    }

    /**
     * {@return the stress intensity (Pa sqrt(m)); beyond the ends that of the ends}
     *
     * @param depth depth (m)
     */
    public double at(double depth) {
        double x = Math.log(depth);
        if (x <= lnDepth[0]) {
            return Math.exp(lnIntensity[0]);
        }
        if (x >= lnDepth[POINTS - 1]) {
            return Math.exp(lnIntensity[POINTS - 1]);
        }
        int found = Arrays.binarySearch(lnDepth, x);
        int i = found >= 0 ? Math.max(1, found) : -found - 1;
        double share = (x - lnDepth[i - 1]) / (lnDepth[i] - lnDepth[i - 1]);
        return Math.exp(lnIntensity[i - 1] + share * (lnIntensity[i] - lnIntensity[i - 1]));
    }

    /**
     * {@return the least depth at which a stress intensity is reached (m); empty if it is not down to the greatest depth}
     *
     * @param intensity the stress intensity (Pa sqrt(m)), above zero
     */
    public OptionalDouble depthAt(double intensity) {
        double y = Math.log(intensity);
        if (lnIntensity[POINTS - 1] < y) {
            return OptionalDouble.empty();
        }
        int i = 0;
        while (lnIntensity[i] < y) {
            i++;
        }
        if (i == 0) {
            return OptionalDouble.of(LEAST_DEPTH);
        }
        double share = (y - lnIntensity[i - 1]) / (lnIntensity[i] - lnIntensity[i - 1]);
        return OptionalDouble.of(Math.exp(lnDepth[i - 1] + share * (lnDepth[i] - lnDepth[i - 1])));
    }

    /** {@return its depths (m)} */
    public List<Double> depths() {
        return Arrays.stream(lnDepth).map(Math::exp).boxed().toList();
    }

    /** {@return its stress intensities (Pa sqrt(m)), one for each depth} */
    public List<Double> intensities() {
        return Arrays.stream(lnIntensity).map(Math::exp).boxed().toList();
    }
}
