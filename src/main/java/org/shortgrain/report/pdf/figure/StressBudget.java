package org.shortgrain.report.pdf.figure;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * What makes up the sustained tension, stacked against the threshold; one bar for each place and direction.
 *
 * @param title       the conclusion
 * @param alternative what it shows, in words
 * @param note        where the numbers come from
 * @param unit        unit of stress, such as {@code MPa}
 * @param bars        the bars from top to bottom
 */
public record StressBudget(String title, String alternative, String note, String unit, List<Bar> bars)
        implements Figure {

    private static final double LABELS = 92;
    private static final double SUMS = 82;
    private static final int PLACE_LETTERS = 19;
    private static final double BAR_ROW = 44;
    private static final double BAR = 15;
    private static final double AXIS = 28;
    private static final double TOP = 4;
    private static final double HEADROOM = 1.06;
    private static final Stroke THRESHOLD = new Stroke(Ink.BLACK, 2, Stroke.Dash.SOLID);
    private static final Stroke LIMIT = new Stroke(Ink.BLACK, 1.2, Stroke.Dash.DASHED);
    /** In the order in which sources first appear; neighbours differ in pattern, not only in tone. */
    private static final List<Fill> FILLS = List.of(new Fill.Even(Ink.DEEP), new Fill.Hatch(Ink.BLACK, 45, 2.6),
            new Fill.Even(Ink.RULE), new Fill.Hatch(Ink.RUST, 135, 2.6), new Fill.Even(Ink.GREY),
            new Fill.Hatch(Ink.BLACK, 90, 2.2), new Fill.Even(Ink.PALE), new Fill.Hatch(Ink.DEEP, 0, 2.2));

    /**
     * One source of tension.
     *
     * @param source what it is, such as "quench residual after machining"
     * @param value  its best value; negative for compression
     */
    public record Part(String source, double value) {
    }

    /**
     * One bar.
     *
     * @param place     feature and direction, such as "GROOVE, ST"
     * @param parts     what adds up
     * @param low       lower end of the sum
     * @param high      upper end of the sum
     * @param threshold lowest stress at which cracks were seen in this direction, if known
     * @param limit     the project's own limit, if there is one
     */
    public record Bar(String place, List<Part> parts, double low, double high, Optional<Double> threshold,
            Optional<Double> limit) {
        /** Copies the list. */
        public Bar {
            Objects.requireNonNull(place, "place");
            Objects.requireNonNull(threshold, "threshold");
            Objects.requireNonNull(limit, "limit");
            parts = List.copyOf(parts);
        }
    }

    /** Copies the list and refuses an empty one. */
    public StressBudget {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(alternative, "alternative");
        Objects.requireNonNull(note, "note");
        bars = List.copyOf(bars);
        if (bars.isEmpty()) {
            throw new IllegalArgumentException("a budget without a bar");
        }
    }

    private List<String> sources() {
        Set<String> sources = new LinkedHashSet<>();
        for (Bar bar : bars) {
            for (Part part : bar.parts()) {
                sources.add(part.source());
            }
        }
        return List.copyOf(sources);
    }

    private List<String> names() {
        List<String> names = new ArrayList<>(sources());
        names.addAll(List.of("threshold", "limit of the project", "range of the sum"));
        return names;
    }

    @Override
    public double height(double width) {
        return TOP + bars.size() * BAR_ROW + AXIS + Legend.rows(names(), width) * Legend.ROW;
    }

    @Override
    public void draw(Pen pen, double width) {
        List<String> sources = sources();
        Axis across = Axis.covering("sustained stress, " + unit, lowest(), highest() * HEADROOM, 8);
        Axis unused = new Axis("", 0, 1, 1);
        double height = bars.size() * BAR_ROW;
        Plot plot = new Plot(pen, across, unused, LABELS, TOP, width - LABELS - SUMS, height);
        plot.verticalGrid();
        plot.horizontalAxis();
        for (int i = 0; i < bars.size(); i++) {
            bar(pen, plot, bars.get(i), TOP + i * BAR_ROW, sources);
        }
        pen.line(new Point(plot.x(0), TOP), new Point(plot.x(0), plot.bottom()), Stroke.OUTLINE);
        legend(sources).draw(pen, 0, TOP + height + AXIS, width);
    }

    private double highest() {
        double highest = 1;
        for (Bar bar : bars) {
            highest = Math.max(highest, Math.max(bar.high(), positive(bar)));
            highest = Math.max(highest, Math.max(bar.threshold().orElse(0.0), bar.limit().orElse(0.0)));
        }
        return highest;
    }

    private double lowest() {
        double lowest = 0;
        for (Bar bar : bars) {
            double negative = 0;
            for (Part part : bar.parts()) {
                negative += Math.min(0, part.value());
            }
            lowest = Math.min(lowest, Math.min(bar.low(), negative));
        }
        return lowest;
    }

    private static double positive(Bar bar) {
        double positive = 0;
        for (Part part : bar.parts()) {
            positive += Math.max(0, part.value());
        }
        return positive;
    }

    /** Tension stacks to the right of zero, compression to the left; the line below is the sum with its range. */
    private void bar(Pen pen, Plot plot, Bar bar, double top, List<String> sources) {
        double barTop = top + 9;
        place(pen, bar, barTop + 6);
        double tension = 0;
        double compression = 0;
        double sum = 0;
        for (Part part : bar.parts()) {
            double from = part.value() < 0 ? compression : tension;
            double to = from + part.value();
            List<Point> box = Shapes.box(Math.min(plot.x(from), plot.x(to)), barTop,
                    Math.abs(plot.x(to) - plot.x(from)), BAR);
            if (part.value() != 0) {
                pen.area(box, FILLS.get(sources.indexOf(part.source()) % FILLS.size()));
                pen.outline(box, Stroke.THIN);
                value(pen, part.value(), box, barTop);
            }
            if (part.value() < 0) {
                compression = to;
            } else {
                tension = to;
            }
            sum += part.value();
        }
        range(pen, plot, bar, sum, barTop + BAR + 6);
        if (bar.threshold().isPresent()) {
            limit(pen, plot, bar.threshold().get(), barTop, THRESHOLD);
        }
        if (bar.limit().isPresent()) {
            limit(pen, plot, bar.limit().get(), barTop, LIMIT);
        }
    }

    private void place(Pen pen, Bar bar, double baseline) {
        double y = baseline;
        for (String line : Words.cut(Words.wrapped(bar.place(), PLACE_LETTERS), 2)) {
            pen.text(new Point(LABELS - 8, y), Pen.Align.RIGHT, line, Lettering.STRONG);
            y += 8.5;
        }
        if (bar.threshold().isPresent()) {
            pen.text(new Point(LABELS - 8, y), Pen.Align.RIGHT,
                    "threshold " + whole(bar.threshold().get()) + " " + unit, Lettering.SMALL);
            y += 7.6;
        }
        if (bar.limit().isPresent()) {
            pen.text(new Point(LABELS - 8, y), Pen.Align.RIGHT, "limit " + whole(bar.limit().get()) + " " + unit,
                    Lettering.SMALL);
        }
    }

    private static void value(Pen pen, double value, List<Point> box, double barTop) {
        double wide = box.get(1).x() - box.get(0).x();
        String words = whole(value);
        if (pen.width(words, Lettering.SMALL) <= wide) {
            pen.text(new Point(box.get(0).x() + wide / 2, barTop - 2), Pen.Align.CENTRE, words, Lettering.SMALL);
        }
    }

    private static String whole(double value) {
        return Long.toString(Math.round(value)).replace('-', '\u2212');
    }

    private void range(Pen pen, Plot plot, Bar bar, double sum, double y) {
        pen.line(new Point(plot.x(bar.low()), y), new Point(plot.x(bar.high()), y), Stroke.OUTLINE);
        for (double end : new double[] {bar.low(), bar.high()}) {
            pen.line(new Point(plot.x(end), y - 3), new Point(plot.x(end), y + 3), Stroke.OUTLINE);
        }
        pen.area(Shapes.circle(new Point(plot.x(sum), y), 2.4), new Fill.Even(Ink.BLACK));
        String words = whole(sum) + " (" + whole(bar.low()) + " to " + whole(bar.high()) + ")";
        pen.text(new Point(plot.right() + 8, y + 2.4), Pen.Align.LEFT, words, Lettering.LABEL);
    }

    private static void limit(Pen pen, Plot plot, double value, double barTop, Stroke stroke) {
        pen.line(new Point(plot.x(value), barTop - 1), new Point(plot.x(value), barTop + BAR + 12), stroke);
    }

    private Legend legend(List<String> sources) {
        Legend legend = new Legend();
        for (int i = 0; i < sources.size(); i++) {
            legend.area(sources.get(i), FILLS.get(i % FILLS.size()));
        }
        legend.line("range of the sum", Stroke.OUTLINE);
        boolean thresholds = false;
        boolean limits = false;
        for (Bar bar : bars) {
            thresholds |= bar.threshold().isPresent();
            limits |= bar.limit().isPresent();
        }
        if (thresholds) {
            legend.line("threshold", THRESHOLD);
        }
        if (limits) {
            legend.line("limit of the project", LIMIT);
        }
        return legend;
    }
}
