package org.shortgrain.mechanics.threshold;

import java.util.function.DoubleUnaryOperator;

/** Lowest point of a function with one dip, by golden section. */
final class GoldenSection {

    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    /** Shrinks the range to 4e-10 of itself; the lowest value of a smooth dip is not told more finely than 1e-8. */
    private static final int STEPS = 45;

    private GoldenSection() {
    }

    /** Place of the lowest value between two ends. */
    static double lowest(DoubleUnaryOperator function, double from, double to) {
        double a = from;
        double b = to;
        double left = b - GOLDEN * (b - a);
        double right = a + GOLDEN * (b - a);
        double atLeft = function.applyAsDouble(left);
        double atRight = function.applyAsDouble(right);
        for (int step = 0; step < STEPS; step++) {
            if (atLeft < atRight) {
                b = right;
                right = left;
                atRight = atLeft;
                left = b - GOLDEN * (b - a);
                atLeft = function.applyAsDouble(left);
            } else {
                a = left;
                left = right;
                atLeft = atRight;
                right = a + GOLDEN * (b - a);
                atRight = function.applyAsDouble(right);
            }
        }
        return (a + b) / 2;
    }
}
