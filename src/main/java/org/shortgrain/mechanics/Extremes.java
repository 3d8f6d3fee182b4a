package org.shortgrain.mechanics;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Range of a result over the ranges of its inputs, taken at the corners of the box that they span.
 *
 * <p>Exact when the result rises or falls throughout with each input while the others stay put, whatever their values:
 * then the extremes lie at corners. Every caller names why that is so for its equation. All combinations are admitted,
 * so the range is the widest one (tolerance extremes), not a likely one.
 */
public final class Extremes {

    /** Above this many uncertain inputs the corners (2 to that power) are no longer worth visiting. */
    private static final int MOST_UNCERTAIN_INPUTS = 16;

    private Extremes() {
    }

    /**
     * {@return value at the best estimates, lowest and highest value at the corners}
     *
     * @param result the equation, as a function of its inputs in the given order
     * @param inputs the inputs with their ranges
     * @throws IllegalArgumentException if more than 16 inputs have a range
     */
    public static Band of(ToDoubleFunction<double[]> result, Band... inputs) {
        int[] uncertain = uncertain(List.of(inputs));
        double[] point = new double[inputs.length];
        for (int i = 0; i < inputs.length; i++) {
            point[i] = inputs[i].value();
        }
        double value = result.applyAsDouble(point.clone());
        double low = value;
        double high = value;
        for (int corner = 0; corner < 1 << uncertain.length; corner++) {
            for (int bit = 0; bit < uncertain.length; bit++) {
                Band input = inputs[uncertain[bit]];
                point[uncertain[bit]] = (corner >> bit & 1) == 0 ? input.low() : input.high();
            }
            double atCorner = result.applyAsDouble(point.clone());
            low = Math.min(low, atCorner);
            high = Math.max(high, atCorner);
        }
        return new Band(value, low, high);
    }

    private static int[] uncertain(List<Band> inputs) {
        int[] uncertain = IntStream.range(0, inputs.size())
                .filter(i -> !inputs.get(i).isExact()).toArray();
        if (uncertain.length > MOST_UNCERTAIN_INPUTS) {
            throw new IllegalArgumentException(uncertain.length + " uncertain inputs; at most " + MOST_UNCERTAIN_INPUTS);
        }
        return uncertain;
    }
}
