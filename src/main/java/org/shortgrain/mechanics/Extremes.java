package org.shortgrain.mechanics;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;

/**
 * Range of a result over the ranges of its inputs.
 *
 * <p>All combinations within the ranges are admitted, so the range is the widest one (tolerance extremes), not a likely
 * one.
 */
public final class Extremes {

    /** More evaluations than this (2 to the power of 16) mean that the wrong tool was taken. */
    private static final int MOST_EVALUATIONS = 1 << 16;

    private Extremes() {
    }

    /**
     * {@return value at the best estimates, lowest and highest value at the corners of the box of ranges}
     *
     * <p>Exact when the result rises or falls throughout with each input while the others stay put, whatever their
     * values; every caller says why that is so for its equation.
     *
     * @param result the equation, as a function of its inputs in the given order
     * @param inputs the inputs with their ranges
     * @throws IllegalArgumentException if more than 16 inputs have a range
     */
    public static Band of(ToDoubleFunction<double[]> result, Band... inputs) {
        return onGrid(result, 2, inputs);
    }

    /**
     * {@return value at the best estimates, lowest and highest value on a grid through the box of ranges}
     *
     * <p>For a smooth result that may turn within the ranges. The error falls with the square of the spacing.
     *
     * @param result the equation, as a function of its inputs in the given order
     * @param points points across each range, both ends among them; 2 or more
     * @param inputs the inputs with their ranges
     * @throws IllegalArgumentException if the grid has more than 65,536 points
     */
    public static Band onGrid(ToDoubleFunction<double[]> result, int points, Band... inputs) {
        double[] best = new double[inputs.length];
        for (int i = 0; i < best.length; i++) {
            best[i] = inputs[i].value();
        }
        int[] uncertain = uncertain(inputs);
        long evaluations = evaluations(points, uncertain.length);
        double value = result.applyAsDouble(best.clone());
        double low = value;
        double high = value;
        for (long cell = 0; cell < evaluations; cell++) {
            double atPoint = result.applyAsDouble(point(best, uncertain, inputs, points, cell));
            low = Math.min(low, atPoint);
            high = Math.max(high, atPoint);
        }
        return new Band(value, low, high);
    }

    private static int[] uncertain(Band... inputs) {
        int[] uncertain = new int[inputs.length];
        int count = 0;
        for (int i = 0; i < inputs.length; i++) {
            if (!inputs[i].isExact()) {
                uncertain[count++] = i;
            }
        }
        return Arrays.copyOf(uncertain, count);
    }

    private static long evaluations(int points, int uncertain) {
        double evaluations = Math.pow(points, uncertain);
        if (!(points >= 2 && evaluations <= MOST_EVALUATIONS)) {
            throw new IllegalArgumentException(uncertain + " uncertain inputs at " + points + " points each");
        }
        return (long) evaluations;
    }

    /** Point of the grid with a running number, whose digits to the base of the points are the places on each range. */
    private static double[] point(double[] best, int[] uncertain, Band[] inputs, int points, long cell) {
        double[] point = best.clone();
        long digits = cell;
        for (int index : uncertain) {
            double place = (double) (digits % points) / (points - 1);
            point[index] = (1 - place) * inputs[index].low() + place * inputs[index].high();
            digits /= points;
        }
        return point;
    }
}
