package org.shortgrain.report.pdf.figure;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A bush in its lug, seen along the bore, with the hoop tension through the lug's wall where that was computed.
 *
 * @param title        the conclusion
 * @param alternative  what it shows, in words
 * @param note         where the dimensions come from
 * @param lengthUnit   unit of the lengths
 * @param stressUnit   unit of the stresses
 * @param bore         bore of the bush; zero for a solid pin
 * @param hole         diameter of the hole in the lug
 * @param outer        width of the lug around the hole
 * @param interference the range of interference in words, such as "interference 0.03 to 0.06 mm"
 * @param hoop         hoop stress (y) against radius (x) through the lug's wall; empty when not computed
 * @param threshold    least stress at which cracks were seen, if known
 */
public record BushSection(String title, String alternative, String note, String lengthUnit, String stressUnit,
        double bore, double hole, double outer, String interference, List<Point> hoop, Optional<Double> threshold)
        implements Figure {

    private static final double HEIGHT = 164;
    private static final double VIEW = 104;
    private static final double VIEW_LEFT = 10;
    private static final double PLOT_LEFT = 232;
    private static final Fill LUG = new Fill.Hatch(Ink.GREY, 45, 3.4);
    private static final Fill BUSH = new Fill.Hatch(Ink.BLACK, 135, 2);
    private static final Stroke CURVE = new Stroke(Ink.RUST, 1.8, Stroke.Dash.SOLID);
    private static final Stroke THRESHOLD = new Stroke(Ink.BLACK, 1, Stroke.Dash.DOTTED);
    private static final double HEADROOM = 1.1;

    /** Copies the list and refuses rings that do not fit into one another. */
    public BushSection {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(alternative, "alternative");
        Objects.requireNonNull(note, "note");
        Objects.requireNonNull(interference, "interference");
        Objects.requireNonNull(threshold, "threshold");
        hoop = List.copyOf(hoop);
        if (!(0 <= bore && bore < hole && hole < outer)) {
            throw new IllegalArgumentException("no bush " + bore + " in " + hole + " in " + outer);
        }
    }

    @Override
    public double height(double width) {
        return HEIGHT;
    }

    @Override
    public void draw(Pen pen, double width) {
        Point centre = new Point(VIEW_LEFT + VIEW / 2, 12 + VIEW / 2);
        double scale = VIEW / outer;
        ring(pen, centre, outer * scale / 2, LUG);
        ring(pen, centre, hole * scale / 2, BUSH);
        if (bore > 0) {
            ring(pen, centre, bore * scale / 2, new Fill.Even(Ink.WHITE));
        }
        pen.outline(Shapes.circle(centre, hole * scale / 2), Stroke.HEAVY);
        centreLines(pen, centre);
        dimensions(pen, centre, scale);
        if (!hoop.isEmpty()) {
            hoopPlot(pen, width);
        }
    }

    private static void ring(Pen pen, Point centre, double radius, Fill fill) {
        List<Point> circle = Shapes.circle(centre, radius);
        pen.area(circle, new Fill.Even(Ink.WHITE));
        pen.area(circle, fill);
        pen.outline(circle, Stroke.OUTLINE);
    }

    private static void centreLines(Pen pen, Point centre) {
        double half = VIEW / 2 + 6;
        pen.line(centre.plus(-half, 0), centre.plus(half, 0), Stroke.CENTRE);
        pen.line(centre.plus(0, -half), centre.plus(0, half), Stroke.CENTRE);
    }

    private void dimensions(Pen pen, Point centre, double scale) {
        double below = centre.y() + VIEW / 2 + 14;
        Arrows.across(pen, centre.plus(-outer * scale / 2, 0), centre.plus(outer * scale / 2, 0), below + 14,
                length(outer));
        Arrows.across(pen, centre.plus(-hole * scale / 2, 0), centre.plus(hole * scale / 2, 0), below,
                "\u2300 " + length(hole));
        double side = centre.x() + VIEW / 2 + 8;
        pen.text(new Point(side, centre.y() - 40), Pen.Align.LEFT, "wall " + length((outer - hole) / 2),
                Lettering.LABEL);
        leader(pen, new Point(side - 2, centre.y() - 42), centre, (outer + hole) * scale / 4, -0.62);
        if (bore > 0) {
            pen.text(new Point(side, centre.y() - 54), Pen.Align.LEFT, "bore \u2300 " + length(bore), Lettering.LABEL);
            leader(pen, new Point(side - 2, centre.y() - 56), centre, bore * scale / 2, -0.95);
        }
        pen.text(new Point(VIEW_LEFT, HEIGHT - 3), Pen.Align.LEFT, interference, Lettering.STRONG);
    }

    private static void leader(Pen pen, Point from, Point centre, double radius, double angle) {
        Arrows.arrow(pen, from, centre.plus(radius * Math.cos(angle), radius * Math.sin(angle)), Stroke.THIN);
    }

    private String length(double value) {
        return Numbers.plain(value) + " " + lengthUnit;
    }

    private void hoopPlot(Pen pen, double width) {
        Extent extent = Extent.of(hoop);
        Axis across = Axis.ending("radius, " + lengthUnit, hoop.get(0).x(), hoop.get(hoop.size() - 1).x(), 5);
        Axis up = Axis.covering("hoop stress in the lug, " + stressUnit, Math.min(0, extent.minY()),
                Math.max(extent.maxY(), threshold.orElse(0.0)) * HEADROOM, 5);
        Plot plot = new Plot(pen, across, up, PLOT_LEFT + 44, 14, width - PLOT_LEFT - 54, HEIGHT - 14 - 40);
        plot.positiveArea(hoop, new Fill.Hatch(Ink.RUST, 45, 3.2));
        plot.axes();
        plot.curve(hoop, CURVE);
        if (threshold.isPresent()) {
            plot.limit(threshold.get(), THRESHOLD, "threshold");
        }
    }
}
