package org.shortgrain.report.pdf.figure;

import java.util.List;
import java.util.Objects;

/**
 * Own test results: stress against time to cracking, with the curve that levels off at a threshold and its interval.
 *
 * @param title       the conclusion
 * @param alternative what it shows, in words
 * @param note        where the numbers come from
 * @param stressUnit  unit of stress, such as {@code MPa}
 * @param specimens   the results
 * @param curve       stress (y) against days (x), most likely; empty if there is none
 * @param threshold   most likely threshold
 * @param low         lower end of its interval
 * @param high        upper end
 */
public record StressAgainstTime(String title, String alternative, String note, String stressUnit, List<Specimen> specimens,
        List<Point> curve, double threshold, double low, double high) implements Figure {

    private static final double HEIGHT = 200;
    private static final int LEGEND_ROWS = 2;
    private static final double LEFT = 46;
    private static final double BOTTOM = 28;
    private static final double RADIUS = 2.6;
    private static final double ARROW = 9;
    private static final Stroke CURVE = new Stroke(Ink.DEEP, 1.6, Stroke.Dash.SOLID);
    private static final Stroke LIKELY = new Stroke(Ink.RUST, 1.1, Stroke.Dash.DASHED);
    private static final Stroke MARK = new Stroke(Ink.BLACK, 0.8, Stroke.Dash.SOLID);
    private static final Stroke LAST = new Stroke(Ink.GREY, 0.8, Stroke.Dash.DOTTED);
    private static final Fill INTERVAL = new Fill.Hatch(Ink.RUST, 45, 3);

    /**
     * One specimen.
     *
     * @param days    days to cracking, or to the end of the test
     * @param stress  stress
     * @param cracked whether it cracked
     */
    public record Specimen(double days, double stress, boolean cracked) {
    }

    /** Copies the lists and refuses a figure without results, and results at no time. */
    public StressAgainstTime {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(alternative, "alternative");
        Objects.requireNonNull(note, "note");
        specimens = List.copyOf(specimens);
        curve = List.copyOf(curve);
        if (specimens.isEmpty() || specimens.stream().anyMatch(one -> !(one.days() > 0))
                || curve.stream().anyMatch(point -> !(point.x() > 0))) {
            throw new IllegalArgumentException("no specimen to draw, or one at no time");
        }
    }

    @Override
    public double height(double width) {
        return HEIGHT + LEGEND_ROWS * Legend.ROW;
    }

    @Override
    public void draw(Pen pen, double width) {
        new Legend().line("most likely curve", CURVE).line("most likely threshold", LIKELY)
                .area("its 95 % interval", INTERVAL).line("longest test", LAST).draw(pen, LEFT, 0, width - LEFT);
        double longest = specimens.stream().mapToDouble(Specimen::days).max().orElseThrow();
        double shortest = specimens.stream().mapToDouble(Specimen::days).min().orElseThrow();
        double highest = specimens.stream().mapToDouble(Specimen::stress).max().orElseThrow();
        Decades days = Decades.covering("time, days", shortest, longest * 1.05);
        Axis up = Axis.covering("stress, " + stressUnit, 0, Math.max(highest, high) * 1.05, 6);
        double top = LEGEND_ROWS * Legend.ROW + 4;
        Plot plot = new Plot(pen, days.axis(), up, LEFT, top, width - LEFT - 8, height(width) - top - BOTTOM);
        if (high > low) {
            pen.area(Shapes.box(plot.left(), plot.y(high), plot.right() - plot.left(), plot.y(low) - plot.y(high)), INTERVAL);
        }
        upwards(pen, plot, up);
        days.draw(pen, plot);
        pen.line(new Point(plot.left(), plot.y(threshold)), new Point(plot.right(), plot.y(threshold)), LIKELY);
        double end = plot.x(Decades.place(longest));
        pen.line(new Point(end, plot.top()), new Point(end, plot.bottom()), LAST);
        if (curve.size() > 1) {
            List<Point> inside = curve.stream().filter(point -> point.y() <= up.to())
                    .map(point -> plot.at(Decades.place(point.x()), point.y())).toList();
            if (inside.size() > 1) {
                pen.line(inside, CURVE);
            }
        }
        specimens.forEach(one -> specimen(pen, plot, one));
    }

    private static void upwards(Pen pen, Plot plot, Axis up) {
        for (double tick : up.ticks()) {
            pen.line(new Point(plot.left(), plot.y(tick)), new Point(plot.right(), plot.y(tick)), Stroke.HAIRLINE);
            pen.text(new Point(plot.left() - 5, plot.y(tick) + 2.2), Pen.Align.RIGHT, up.print(tick), Lettering.SMALL);
        }
        pen.upwards(new Point(plot.left() - 30, (plot.top() + plot.bottom()) / 2), up.label(), Lettering.LABEL);
        pen.line(new Point(plot.left(), plot.top()), new Point(plot.left(), plot.bottom()), Stroke.THIN);
    }

    private static void specimen(Pen pen, Plot plot, Specimen one) {
        Point at = plot.at(Decades.place(one.days()), one.stress());
        if (one.cracked()) {
            pen.area(Shapes.circle(at, RADIUS), new Fill.Even(Ink.BLACK));
            return;
        }
        pen.area(Shapes.circle(at, RADIUS), new Fill.Even(Ink.WHITE));
        pen.outline(Shapes.circle(at, RADIUS), MARK);
        pen.line(at.plus(RADIUS, 0), at.plus(ARROW, 0), MARK);
        pen.line(List.of(at.plus(ARROW - 2.5, -2), at.plus(ARROW, 0), at.plus(ARROW - 2.5, 2)), MARK);
    }
}
