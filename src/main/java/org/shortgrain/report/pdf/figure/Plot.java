package org.shortgrain.report.pdf.figure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A rectangle of the sheet in which values are places: axes, ticks, curves, bands, limits. */
final class Plot {

    private static final double TICK = 3;
    private static final double TICK_LABEL_GAP = 9;

    private final Pen pen;
    private final Axis across;
    private final Axis up;
    private final double left;
    private final double top;
    private final double width;
    private final double height;

    /**
     * @param pen    what to draw with
     * @param across horizontal axis
     * @param up     vertical axis
     * @param left   left edge of the field of values
     * @param top    its upper edge
     * @param width  its width
     * @param height its height
     */
    Plot(Pen pen, Axis across, Axis up, double left, double top, double width, double height) {
        this.pen = pen;
        this.across = across;
        this.up = up;
        this.left = left;
        this.top = top;
        this.width = width;
        this.height = height;
    }

    double x(double value) {
        return left + across.share(value) * width;
    }

    double y(double value) {
        return top + height - up.share(value) * height;
    }

    Point at(double xValue, double yValue) {
        return new Point(x(xValue), y(yValue));
    }

    double left() {
        return left;
    }

    double right() {
        return left + width;
    }

    double top() {
        return top;
    }

    double bottom() {
        return top + height;
    }

    /** Draws grid, frame, ticks and labels of both axes. */
    void axes() {
        for (double tick : up.ticks()) {
            pen.line(new Point(left, y(tick)), new Point(left + width, y(tick)), Stroke.HAIRLINE);
            pen.text(new Point(left - TICK - 2, y(tick) + 2.2), Pen.Align.RIGHT, up.print(tick), Lettering.SMALL);
        }
        double labelWidth = 0;
        for (double tick : up.ticks()) {
            labelWidth = Math.max(labelWidth, pen.width(up.print(tick), Lettering.SMALL));
        }
        pen.upwards(new Point(left - TICK - 6 - labelWidth, top + height / 2), up.label(), Lettering.LABEL);
        horizontalAxis();
        pen.line(new Point(left, top), new Point(left, bottom()), Stroke.THIN);
    }

    /** Draws ticks and labels of the horizontal axis alone. */
    void horizontalAxis() {
        pen.line(new Point(left, bottom()), new Point(left + width, bottom()), Stroke.THIN);
        for (double tick : across.ticks()) {
            pen.line(new Point(x(tick), bottom()), new Point(x(tick), bottom() + TICK), Stroke.THIN);
            pen.text(new Point(x(tick), bottom() + TICK + TICK_LABEL_GAP - 2), Pen.Align.CENTRE, across.print(tick),
                    Lettering.SMALL);
        }
        pen.text(new Point(left + width / 2, bottom() + TICK + 2 * TICK_LABEL_GAP), Pen.Align.CENTRE, across.label(),
                Lettering.LABEL);
    }

    void verticalGrid() {
        for (double tick : across.ticks()) {
            pen.line(new Point(x(tick), top), new Point(x(tick), bottom()), Stroke.HAIRLINE);
        }
    }

    void curve(List<Point> values, Stroke stroke) {
        pen.line(places(values), stroke);
    }

    void band(List<Point> lower, List<Point> upper, Fill fill) {
        List<Point> outline = new ArrayList<>(places(upper));
        List<Point> back = new ArrayList<>(places(lower));
        Collections.reverse(back);
        outline.addAll(back);
        pen.area(outline, fill);
    }

    /** Fills what lies between a curve and the zero line where the curve is positive. */
    void positiveArea(List<Point> values, Fill fill) {
        List<Point> run = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            Point here = values.get(i);
            if (i > 0) {
                Point before = values.get(i - 1);
                if (before.y() < 0 != here.y() < 0) {
                    double share = before.y() / (before.y() - here.y());
                    run.add(new Point(before.x() + share * (here.x() - before.x()), 0));
                }
            }
            if (here.y() >= 0) {
                run.add(here);
            } else {
                fillToZero(run, fill);
                run.clear();
            }
        }
        fillToZero(run, fill);
    }

    private void fillToZero(List<Point> run, Fill fill) {
        if (run.size() < 2) {
            return;
        }
        List<Point> outline = new ArrayList<>(run);
        outline.add(new Point(run.get(run.size() - 1).x(), 0));
        outline.add(new Point(run.get(0).x(), 0));
        pen.area(places(outline), fill);
    }

    /** Draws a limit across the field, its words at the right end above the line. */
    void limit(double value, Stroke stroke, String words) {
        pen.line(new Point(left, y(value)), new Point(right(), y(value)), stroke);
        double wide = pen.width(words, Lettering.STRONG);
        pen.area(Shapes.box(right() - wide - 5, y(value) - 10, wide + 4, 8.6), new Fill.Even(Ink.WHITE));
        pen.text(new Point(right() - 3, y(value) - 3.4), Pen.Align.RIGHT, words, Lettering.STRONG.in(stroke.ink()));
    }

    private List<Point> places(List<Point> values) {
        List<Point> places = new ArrayList<>(values.size());
        for (Point value : values) {
            places.add(at(value.x(), value.y()));
        }
        return places;
    }
}
