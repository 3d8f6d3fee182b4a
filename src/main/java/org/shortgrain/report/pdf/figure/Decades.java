package org.shortgrain.report.pdf.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A logarithmic scale in whole powers of ten, laid on an axis that counts the powers.
 *
 * @param label what it measures, with its unit
 * @param from  lowest power
 * @param to    highest power, above the lowest
 */
record Decades(String label, int from, int to) {

    private static final double TICK = 3;
    private static final double BELOW = 10;

    /** {@return the scale that covers two values above zero} */
    static Decades covering(String label, double low, double high) {
        int from = (int) Math.floor(Math.log10(low) + 1e-9);
        int to = (int) Math.ceil(Math.log10(high) - 1e-9);
        return new Decades(label, from, Math.max(to, from + 1));
    }

    Axis axis() {
        return new Axis(label, from, to, 1);
    }

    static double place(double value) {
        return Math.log10(value);
    }

    List<Double> ticks() {
        List<Double> ticks = new ArrayList<>();
        for (int power = from; power <= to; power++) {
            ticks.add((double) power);
        }
        return ticks;
    }

    /** Draws the axis below a plot that was made with {@link #axis()}. */
    void draw(Pen pen, Plot plot) {
        pen.line(new Point(plot.left(), plot.bottom()), new Point(plot.right(), plot.bottom()), Stroke.THIN);
        for (double tick : ticks()) {
            pen.line(new Point(plot.x(tick), plot.bottom()), new Point(plot.x(tick), plot.bottom() + TICK), Stroke.THIN);
            pen.text(new Point(plot.x(tick), plot.bottom() + BELOW), Pen.Align.CENTRE, print(tick), Lettering.SMALL);
        }
        pen.text(new Point((plot.left() + plot.right()) / 2, plot.bottom() + 2 * BELOW + 1), Pen.Align.CENTRE, label,
                Lettering.LABEL);
    }

    private static String print(double power) {
        double value = Math.pow(10, power);
        return value >= 1 ? String.format(Locale.ROOT, "%.0f", value)
                : String.format(Locale.ROOT, "%." + (int) Math.round(-power) + "f", value);
    }
}
