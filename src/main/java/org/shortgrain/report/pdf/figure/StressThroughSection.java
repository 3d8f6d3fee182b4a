package org.shortgrain.report.pdf.figure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Residual stress through a section before and after machining: what was compression inside the removed skin becomes
 * tension at the new surface.
 *
 * @param title       the conclusion
 * @param alternative what it shows, in words
 * @param note        where the numbers come from
 * @param depthUnit   unit of depth, such as {@code mm}
 * @param stressUnit  unit of stress, such as {@code MPa}
 * @param thickness   thickness of the section as quenched
 * @param before      stress (y, tension positive) against depth below the quenched surface (x), as quenched
 * @param after       the same after machining, only where metal is left
 * @param afterLow    lower end of the range after machining, at the depths of {@code after}; empty when not known
 * @param afterHigh   upper end; as long as {@code afterLow}
 * @param surfaces    depths of the new surfaces
 * @param ranges      stresses that count at single depths, with their ranges
 * @param threshold   least stress at which cracks were seen, if known
 */
public record StressThroughSection(String title, String alternative, String note, String depthUnit, String stressUnit,
        double thickness, List<Point> before, List<Point> after, List<Point> afterLow, List<Point> afterHigh,
        List<Double> surfaces, List<Whisker> ranges, Optional<Double> threshold) implements Figure {

    private static final double HEIGHT = 172;
    private static final int LEGEND_ROWS = 2;
    private static final double LEFT = 46;
    private static final double BOTTOM = 26;
    private static final double HEADROOM = 0.04;
    private static final Stroke BEFORE = new Stroke(Ink.GREY, 1.1, Stroke.Dash.DASHED);
    private static final Stroke AFTER = new Stroke(Ink.DEEP, 1.8, Stroke.Dash.SOLID);
    private static final Stroke WHISKER = new Stroke(Ink.RUST, 1.6, Stroke.Dash.SOLID);
    private static final Stroke THRESHOLD = new Stroke(Ink.BLACK, 1, Stroke.Dash.DOTTED);
    private static final Fill TENSION = new Fill.Hatch(Ink.RUST, 45, 3);
    private static final Fill REMOVED = new Fill.Even(Ink.PALE);
    private static final Fill RANGE = new Fill.Even(Ink.TINT);

    /**
     * The stress that counts at one depth, with its range.
     *
     * @param depth where
     * @param value best value
     * @param low   lower end
     * @param high  upper end
     */
    public record Whisker(double depth, double value, double low, double high) {
    }

    /** Copies the lists and refuses unequal ranges. */
    public StressThroughSection {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(alternative, "alternative");
        Objects.requireNonNull(note, "note");
        before = List.copyOf(before);
        after = List.copyOf(after);
        afterLow = List.copyOf(afterLow);
        afterHigh = List.copyOf(afterHigh);
        surfaces = List.copyOf(surfaces);
        ranges = List.copyOf(ranges);
        if (afterLow.size() != afterHigh.size()) {
            throw new IllegalArgumentException("a range of " + afterLow.size() + " and " + afterHigh.size() + " points");
        }
    }

    @Override
    public double height(double width) {
        return HEIGHT + LEGEND_ROWS * Legend.ROW;
    }

    @Override
    public void draw(Pen pen, double width) {
        legend().draw(pen, LEFT, 0, width - LEFT);
        Plot plot = plot(pen, width);
        removed(pen, plot);
        if (!afterLow.isEmpty()) {
            plot.band(afterLow, afterHigh, RANGE);
        }
        plot.positiveArea(after, TENSION);
        plot.axes();
        pen.line(new Point(plot.left(), plot.y(0)), new Point(plot.right(), plot.y(0)), Stroke.OUTLINE);
        plot.curve(before, BEFORE);
        plot.curve(after, AFTER);
        if (threshold.isPresent()) {
            plot.limit(threshold.get(), THRESHOLD, "threshold");
        }
        pen.text(new Point(plot.left() + 4, plot.y(0) - 4), Pen.Align.LEFT, "tension \u2191", Lettering.SMALL);
        pen.text(new Point(plot.left() + 4, plot.y(0) + 9), Pen.Align.LEFT, "compression \u2193", Lettering.SMALL);
        for (double depth : surfaces) {
            surface(pen, plot, depth);
        }
        for (Whisker range : ranges) {
            whisker(pen, plot, range);
        }
    }

    private Legend legend() {
        Legend legend = new Legend().line("as quenched", BEFORE).line("after machining", AFTER)
                .area("tension left after machining", TENSION);
        if (!afterLow.isEmpty()) {
            legend.area("its range", RANGE);
        }
        if (!ranges.isEmpty()) {
            legend.line("what counts there, with its range", WHISKER);
        }
        return legend.area("removed", REMOVED);
    }

    private Plot plot(Pen pen, double width) {
        List<Double> stresses = stresses();
        double low = Collections.min(stresses);
        double high = Collections.max(stresses);
        double room = (high - low) * HEADROOM;
        Axis across = Axis.ending("depth below the quenched surface, " + depthUnit, 0, thickness, 8);
        Axis up = Axis.covering("residual stress, " + stressUnit, low - room, high + room, 6);
        double top = LEGEND_ROWS * Legend.ROW + 16;
        return new Plot(pen, across, up, LEFT, top, width - LEFT - 6, height(width) - top - BOTTOM);
    }

    /** All that is drawn, and zero. */
    private List<Double> stresses() {
        List<Double> stresses = new ArrayList<>();
        stresses.add(threshold.orElse(0.0));
        stresses.add(0.0);
        for (List<Point> curve : List.of(before, after, afterLow, afterHigh)) {
            for (Point point : curve) {
                stresses.add(point.y());
            }
        }
        for (Whisker range : ranges) {
            stresses.add(range.low());
            stresses.add(range.high());
        }
        return stresses;
    }

    /** Tints what lies outside of the metal that is left. */
    private void removed(Pen pen, Plot plot) {
        if (after.isEmpty()) {
            return;
        }
        double first = after.get(0).x();
        double last = after.get(after.size() - 1).x();
        if (first > 0) {
            pen.area(Shapes.box(plot.x(0), plot.top(), plot.x(first) - plot.x(0), plot.bottom() - plot.top()), REMOVED);
        }
        if (last < thickness) {
            pen.area(Shapes.box(plot.x(last), plot.top(), plot.x(thickness) - plot.x(last),
                    plot.bottom() - plot.top()), REMOVED);
        }
    }

    private static void whisker(Pen pen, Plot plot, Whisker range) {
        Point low = plot.at(range.depth(), range.low());
        Point high = plot.at(range.depth(), range.high());
        pen.line(low, high, WHISKER);
        for (Point end : List.of(low, high)) {
            pen.line(end.plus(-4, 0), end.plus(4, 0), WHISKER);
        }
        pen.area(Shapes.circle(plot.at(range.depth(), range.value()), 2.8), new Fill.Even(Ink.RUST));
    }

    private void surface(Pen pen, Plot plot, double depth) {
        double x = plot.x(depth);
        pen.line(new Point(x, plot.top() - 4), new Point(x, plot.bottom()), Stroke.HEAVY);
        boolean rightHalf = depth > thickness / 2;
        pen.text(new Point(x, plot.top() - 7), rightHalf ? Pen.Align.RIGHT : Pen.Align.LEFT, "new surface",
                Lettering.STRONG);
    }
}
