package org.shortgrain.report.pdf.figure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A linear axis with round ticks.
 *
 * @param label    what it measures, with its unit
 * @param from     lower end
 * @param to       upper end
 * @param step     distance of the ticks
 */
record Axis(String label, double from, double to, double step) {

    private static final double[] ROUND = {1, 2, 5, 10};
    private static final double EPSILON = 1e-9;

    Axis {
        Objects.requireNonNull(label, "label");
        if (!(from < to) || !(step > 0)) {
            throw new IllegalArgumentException("no axis from " + from + " to " + to + " by " + step);
        }
    }

    /**
     * {@return an axis whose ends are ticks and that covers a range}
     *
     * @param label what it measures
     * @param low   lowest value to show
     * @param high  highest value to show
     * @param ticks about how many steps
     */
    static Axis covering(String label, double low, double high, int ticks) {
        double span = high > low ? high - low : Math.max(1, Math.abs(high));
        double step = roundStep(span / ticks);
        double from = Math.floor(low / step + EPSILON) * step;
        double to = Math.ceil(high / step - EPSILON) * step;
        return new Axis(label, from, to > from ? to : from + step, step);
    }

    /**
     * {@return an axis that ends where the range ends, with round ticks inside}
     *
     * @param label what it measures
     * @param low   lowest value
     * @param high  highest value, more than the lowest
     * @param ticks about how many steps
     */
    static Axis ending(String label, double low, double high, int ticks) {
        return new Axis(label, low, high, roundStep((high - low) / ticks));
    }

    private static double roundStep(double wanted) {
        double power = Math.pow(10, Math.floor(Math.log10(wanted)));
        for (double round : ROUND) {
            if (wanted <= round * power * (1 + EPSILON)) {
                return round * power;
            }
        }
        throw new IllegalStateException("no round step for " + wanted);
    }

    List<Double> ticks() {
        List<Double> ticks = new ArrayList<>();
        long last = (long) Math.floor(to / step + EPSILON);
        for (long i = (long) Math.ceil(from / step - EPSILON); i <= last; i++) {
            ticks.add(i * step);
        }
        return ticks;
    }

    /** {@return a value with as many decimals as the ticks need} */
    String print(double value) {
        int decimals = (int) Math.max(0, Math.ceil(-Math.log10(step) - EPSILON));
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString().replace('-', '\u2212');
    }

    double share(double value) {
        return (value - from) / (to - from);
    }
}
