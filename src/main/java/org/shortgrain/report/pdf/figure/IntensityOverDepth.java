package org.shortgrain.report.pdf.figure;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Stress intensity of a growing crack against its depth, with K_ISCC and the fracture toughness.
 *
 * @param title       the conclusion
 * @param alternative what it shows, in words
 * @param note        where the numbers come from
 * @param depthUnit   unit of depth, such as {@code mm}
 * @param curve       stress intensity (y, MPa sqrt(m)) against depth (x), upper end of the stress
 * @param low         lower end of K_ISCC
 * @param high        upper end
 * @param toughness   fracture toughness, if known
 * @param found       depth that is found
 * @param critical    critical depth, if known
 */
public record IntensityOverDepth(String title, String alternative, String note, String depthUnit, List<Point> curve,
        double low, double high, Optional<Double> toughness, double found, Optional<Double> critical) implements Figure {

    private static final double HEIGHT = 140;
    private static final int LEGEND_ROWS = 1;
    private static final double LEFT = 46;
    private static final double BOTTOM = 26;
    /** Words that begin nearer to the right edge end there. */
    private static final double MARGIN = 40;
    private static final Stroke CURVE = new Stroke(Ink.DEEP, 1.6, Stroke.Dash.SOLID);
    private static final Stroke TOUGHNESS = new Stroke(Ink.RUST, 1.1, Stroke.Dash.DASHED);
    private static final Stroke PLACE = new Stroke(Ink.BLACK, 0.8, Stroke.Dash.DOTTED);
    private static final Fill THRESHOLD = new Fill.Hatch(Ink.RUST, 45, 3);

    /** Copies the list and refuses a curve of less than two points. */
    public IntensityOverDepth {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(alternative, "alternative");
        Objects.requireNonNull(note, "note");
        curve = List.copyOf(curve);
        if (curve.size() < 2) {
            throw new IllegalArgumentException("a curve of " + curve.size() + " points");
        }
    }

    @Override
    public double height(double width) {
        return HEIGHT + LEGEND_ROWS * Legend.ROW;
    }

    @Override
    public void draw(Pen pen, double width) {
        new Legend().line("stress intensity, upper end", CURVE).area("K_ISCC, its range", THRESHOLD)
                .draw(pen, LEFT, 0, width - LEFT);
        double deepest = curve.get(curve.size() - 1).x();
        double top = Math.max(Math.max(Extent.of(curve).maxY(), high), toughness.orElse(0.0));
        Axis across = Axis.ending("depth of the crack, " + depthUnit, 0, deepest, 8);
        Axis up = Axis.covering("stress intensity, MPa\u221am", 0, top * 1.05, 6);
        double above = LEGEND_ROWS * Legend.ROW + 14;
        Plot plot = new Plot(pen, across, up, LEFT, above, width - LEFT - 6, height(width) - above - BOTTOM);
        pen.area(Shapes.box(plot.left(), plot.y(high), plot.right() - plot.left(), Math.max(0.5, plot.y(low) - plot.y(high))),
                THRESHOLD);
        plot.axes();
        plot.curve(curve, CURVE);
        if (toughness.isPresent()) {
            plot.limit(toughness.get(), TOUGHNESS, "fracture toughness, least");
        }
        boolean close = critical.isPresent() && Math.abs(plot.x(critical.get()) - plot.x(found)) < MARGIN;
        place(pen, plot, found, "found", close && plot.x(found) > plot.left() + MARGIN ? Pen.Align.RIGHT : Pen.Align.LEFT);
        if (critical.isPresent() && critical.get() > found) {
            place(pen, plot, critical.get(), "critical",
                    plot.x(critical.get()) > plot.right() - MARGIN ? Pen.Align.RIGHT : Pen.Align.LEFT);
        }
    }

    private static void place(Pen pen, Plot plot, double depth, String words, Pen.Align align) {
        double x = Math.min(plot.x(depth), plot.right());
        pen.line(new Point(x, plot.top() - 4), new Point(x, plot.bottom()), PLACE);
        pen.text(new Point(x + (align == Pen.Align.RIGHT ? -1 : 1), plot.top() - 6), align, words, Lettering.STRONG);
    }
}
