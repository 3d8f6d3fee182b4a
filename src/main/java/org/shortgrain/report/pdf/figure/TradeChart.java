package org.shortgrain.report.pdf.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Changes of a part weighed against each other: the strength that each keeps against the use that it leaves of the
 * threshold. What lies below the line and far to the right is wanted.
 *
 * @param title       the conclusion
 * @param alternative what it shows, in words
 * @param note        where the numbers come from
 * @param across      words of the horizontal axis
 * @param up          words of the vertical axis
 * @param limit       words at the line of a full use
 * @param changes     the changes, at least one
 */
public record TradeChart(String title, String alternative, String note, String across, String up, String limit,
        List<Change> changes) implements Figure {

    private static final double HEIGHT = 170;
    private static final double TOP = 8;
    private static final double LEFT = 46;
    private static final double RIGHT = 64;
    private static final double BOTTOM = 28;
    private static final double RADIUS = 2.8;
    /** From one label to the next, so that none is written over another. */
    private static final double LINE = 8;
    /** No label is wider. */
    private static final double WIDE = 64;
    /** A full use of the threshold. */
    private static final double FULL = 1;
    private static final Stroke LIMIT = new Stroke(Ink.RUST, 1.1, Stroke.Dash.DASHED);
    private static final Stroke RIM = new Stroke(Ink.BLACK, 0.8, Stroke.Dash.SOLID);

    /**
     * A change.
     *
     * @param id       its number
     * @param strength strength kept, percent
     * @param use      greatest utilisation of the threshold, upper end
     * @param possible whether sign-off is possible with it
     */
    public record Change(String id, double strength, double use, boolean possible) {
    }

    /** Copies the list and refuses a chart of nothing. */
    public TradeChart {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(alternative, "alternative");
        Objects.requireNonNull(note, "note");
        changes = List.copyOf(changes);
        if (changes.isEmpty()) {
            throw new IllegalArgumentException("no change to draw");
        }
    }

    @Override
    public double height(double width) {
        return HEIGHT;
    }

    @Override
    public void draw(Pen pen, double width) {
        double weakest = changes.stream().mapToDouble(Change::strength).min().orElseThrow();
        double strongest = changes.stream().mapToDouble(Change::strength).max().orElseThrow();
        double most = changes.stream().mapToDouble(Change::use).max().orElseThrow();
        Plot plot = new Plot(pen, Axis.covering(across, Math.min(weakest, 90), Math.max(strongest, 100), 6),
                Axis.covering(up, 0, Math.max(most, FULL) * 1.1, 5), LEFT, TOP, width - LEFT - RIGHT, HEIGHT - TOP - BOTTOM);
        plot.axes();
        plot.limit(FULL, LIMIT, limit);
        Map<Point, List<Change>> places = new LinkedHashMap<>();
        changes.forEach(one -> places.computeIfAbsent(plot.at(one.strength(), one.use()), at -> new ArrayList<>()).add(one));
        List<Point> written = new ArrayList<>();
        for (Map.Entry<Point, List<Change>> place : places.entrySet().stream()
                .sorted(Comparator.comparingDouble(one -> one.getKey().y())).toList()) {
            Point at = place.getKey();
            boolean possible = place.getValue().stream().anyMatch(Change::possible);
            pen.area(Shapes.circle(at, RADIUS), new Fill.Even(possible ? Ink.BLACK : Ink.WHITE));
            pen.outline(Shapes.circle(at, RADIUS), RIM);
            Point label = free(at.plus(RADIUS + 3, 2.2), written);
            written.add(label);
            pen.text(label, Pen.Align.LEFT, label(place.getValue()), Lettering.SMALL);
        }
    }

    /** The place itself, or as far below as the labels near by need. */
    private static Point free(Point wanted, List<Point> written) {
        Point place = wanted;
        for (Point other : written) {
            if (Math.abs(other.x() - place.x()) < WIDE && Math.abs(other.y() - place.y()) < LINE) {
                place = new Point(place.x(), other.y() + LINE);
            }
        }
        return place;
    }

    /** Their numbers; the first and how many more where there are many. */
    private static String label(List<Change> changes) {
        String first = changes.get(0).id();
        return changes.size() == 1 ? first : changes.size() == 2 ? first + ", " + changes.get(1).id()
                : first + " and " + (changes.size() - 1) + " more";
    }
}
