package org.shortgrain.report.pdf.figure;

import java.util.List;

/** Arrows and dimension lines. */
final class Arrows {

    private static final double HEAD_LENGTH = 5;
    private static final double HEAD_HALF_WIDTH = 1.7;
    private static final double OVERSHOOT = 2.5;

    private Arrows() {
    }

    /** Draws an arrow that ends at a point. */
    static void arrow(Pen pen, Point from, Point to, Stroke stroke) {
        pen.line(from, to, stroke);
        head(pen, from, to, stroke);
    }

    private static void head(Pen pen, Point from, Point to, Stroke stroke) {
        double length = Math.hypot(to.x() - from.x(), to.y() - from.y());
        double alongX = (to.x() - from.x()) / length;
        double alongY = (to.y() - from.y()) / length;
        double scale = 0.7 + 0.3 * stroke.width();
        Point base = to.plus(-alongX * HEAD_LENGTH * scale, -alongY * HEAD_LENGTH * scale);
        double sideX = -alongY * HEAD_HALF_WIDTH * scale;
        double sideY = alongX * HEAD_HALF_WIDTH * scale;
        pen.area(List.of(to, base.plus(sideX, sideY), base.plus(-sideX, -sideY)), new Fill.Even(stroke.ink()));
    }

    /**
     * Draws a horizontal dimension below or above two places, with its number on the line.
     *
     * @param pen  what to draw with
     * @param from left place that is measured
     * @param to   right place that is measured
     * @param y    height of the dimension line
     * @param text the number
     */
    static void across(Pen pen, Point from, Point to, double y, String text) {
        double beyond = y > from.y() ? OVERSHOOT : -OVERSHOOT;
        pen.line(from, new Point(from.x(), y + beyond), Stroke.HAIRLINE.in(Ink.GREY));
        pen.line(to, new Point(to.x(), y + beyond), Stroke.HAIRLINE.in(Ink.GREY));
        between(pen, new Point(from.x(), y), new Point(to.x(), y));
        double middle = (from.x() + to.x()) / 2;
        if (pen.width(text, Lettering.LABEL) < to.x() - from.x() - 2) {
            pen.text(new Point(middle, y - 2), Pen.Align.CENTRE, text, Lettering.LABEL);
        } else {
            pen.text(new Point(to.x() + 3, y + 2.2), Pen.Align.LEFT, text, Lettering.LABEL);
        }
    }

    /** Draws a line with a head at each end. */
    static void between(Pen pen, Point a, Point b) {
        pen.line(a, b, Stroke.THIN);
        head(pen, a, b, Stroke.THIN);
        head(pen, b, a, Stroke.THIN);
    }
}
