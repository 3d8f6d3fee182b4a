package org.shortgrain.report.pdf.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The grain at a feature: the three directions, the direction that is pulled, and the plane in which a crack would
 * open. A sketch of directions, not to scale.
 *
 * @param title       the conclusion
 * @param alternative what it shows, in words
 * @param note        where the directions come from
 * @param axes        names of the part's axes along L, LT and ST, such as "X", "Y", "Z"; empty names where not stated
 * @param stressed    the direction that is pulled, if it is known
 * @param parting     words for the parting line of a forging, if there is one
 */
public record GrainSketch(String title, String alternative, String note, List<String> axes,
        Optional<Direction> stressed, Optional<String> parting) implements Figure {

    private static final double HEIGHT = 144;
    private static final double COS = Math.cos(Math.toRadians(30));
    private static final double SIN = Math.sin(Math.toRadians(30));
    /** Size of the block along L, LT and ST, points. */
    private static final double LONG = 92;
    private static final double WIDE = 66;
    private static final double THICK = 44;
    private static final double PULL = 26;
    /** Size of a grain as drawn, points. */
    private static final double GRAIN_LONG = 24;
    private static final double GRAIN_WIDE = 10;
    private static final double GRAIN_THICK = 4.6;
    /** Where the lower near corner of the block stands. */
    private static final Point CORNER = new Point(112, 88);
    private static final Stroke GRAIN = new Stroke(Ink.GREY, 0.5, Stroke.Dash.SOLID);
    private static final Stroke FORCE = new Stroke(Ink.RUST, 2.2, Stroke.Dash.SOLID);
    private static final Stroke CRACK = new Stroke(Ink.RUST, 1.3, Stroke.Dash.DASHED);

    /** A direction of the grain. */
    public enum Direction {
        /** Along the flow. */
        L,
        /** Across the flow, along the larger dimension of the grain. */
        LT,
        /** Across the flow, along the smaller dimension of the grain. */
        ST
    }

    /** Copies the list and refuses any number of axes but three. */
    public GrainSketch {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(alternative, "alternative");
        Objects.requireNonNull(note, "note");
        Objects.requireNonNull(stressed, "stressed");
        Objects.requireNonNull(parting, "parting");
        axes = List.copyOf(axes);
        if (axes.size() != Direction.values().length) {
            throw new IllegalArgumentException(axes.size() + " axes");
        }
    }

    @Override
    public double height(double width) {
        return HEIGHT;
    }

    /** Isometric view: L to the lower right, LT to the upper right, ST upwards. */
    private static Point at(double along, double across, double up) {
        return CORNER.plus((along + across) * COS, (along - across) * SIN - up);
    }

    @Override
    public void draw(Pen pen, double width) {
        faces(pen);
        grains(pen);
        if (parting.isPresent()) {
            partingLine(pen, parting.get());
        }
        if (stressed.isPresent()) {
            pull(pen, stressed.get());
        }
        triad(pen);
    }

    private static void faces(Pen pen) {
        List<Point> top = List.of(at(0, 0, THICK), at(LONG, 0, THICK), at(LONG, WIDE, THICK), at(0, WIDE, THICK));
        List<Point> front = List.of(at(0, 0, 0), at(LONG, 0, 0), at(LONG, 0, THICK), at(0, 0, THICK));
        List<Point> end = List.of(at(LONG, 0, 0), at(LONG, WIDE, 0), at(LONG, WIDE, THICK), at(LONG, 0, THICK));
        pen.area(top, new Fill.Even(Ink.WHITE));
        pen.area(front, new Fill.Even(Ink.PALE));
        pen.area(end, new Fill.Even(Ink.TINT));
        for (List<Point> face : List.of(top, front, end)) {
            pen.outline(face, Stroke.OUTLINE);
        }
    }

    /** Pancake grains: long along L, less so along LT, thin along ST. Rows are shifted as bricks are. */
    private static void grains(Pen pen) {
        List<List<Point>> lenses = new ArrayList<>();
        lenses.addAll(lenses(LONG, WIDE, GRAIN_LONG, GRAIN_WIDE, (u, v) -> at(u, v, THICK)));
        lenses.addAll(lenses(LONG, THICK, GRAIN_LONG, GRAIN_THICK, (u, v) -> at(u, 0, v)));
        lenses.addAll(lenses(WIDE, THICK, GRAIN_WIDE, GRAIN_THICK, (u, v) -> at(LONG, u, v)));
        for (List<Point> lens : lenses) {
            pen.outline(lens, GRAIN);
        }
    }

    /** Places a point of a face, given along its two edges. */
    private interface Face {
        Point at(double u, double v);
    }

    private static List<List<Point>> lenses(double width, double height, double lensWidth, double lensHeight,
            Face face) {
        List<List<Point>> lenses = new ArrayList<>();
        double gap = 1.2;
        int rows = (int) ((height - gap) / (lensHeight + gap));
        double firstRow = (height - rows * (lensHeight + gap) + gap) / 2;
        for (int row = 0; row < rows; row++) {
            double v = firstRow + row * (lensHeight + gap);
            int count = (int) ((width - lensWidth / 2 - gap) / (lensWidth + gap));
            double spare = width - count * (lensWidth + gap) + gap;
            double start = row % 2 == 0 ? gap : Math.min(gap + lensWidth / 2, spare - gap);
            for (int i = 0; i < count; i++) {
                double u = start + i * (lensWidth + gap);
                double middle = v + lensHeight / 2;
                double slope = lensWidth * 0.22;
                lenses.add(List.of(face.at(u, middle), face.at(u + slope, v), face.at(u + lensWidth - slope, v),
                        face.at(u + lensWidth, middle), face.at(u + lensWidth - slope, v + lensHeight),
                        face.at(u + slope, v + lensHeight)));
            }
        }
        return lenses;
    }

    private static void partingLine(Pen pen, String words) {
        double half = THICK / 2;
        pen.line(List.of(at(0, 0, half), at(LONG, 0, half), at(LONG, WIDE, half)), Stroke.CENTRE.in(Ink.BLACK));
        Point end = at(LONG, WIDE, half);
        pen.line(end, end.plus(16, 0), Stroke.THIN);
        pen.text(end.plus(19, 2.4), Pen.Align.LEFT, words, Lettering.LABEL);
    }

    /** Two arrows that pull the block apart, and the plane that opens across them. */
    private static void pull(Pen pen, Direction direction) {
        double l = LONG / 2;
        double t = WIDE / 2;
        double s = THICK / 2;
        List<Point> plane;
        Point labelAt;
        switch (direction) {
            case L -> {
                plane = List.of(at(l, 0, 0), at(l, 0, THICK), at(l, WIDE, THICK));
                Arrows.arrow(pen, at(LONG, t, s), at(LONG + PULL, t, s), FORCE);
                Arrows.arrow(pen, at(0, 0, s), at(-PULL, 0, s), FORCE);
                labelAt = at(l, WIDE, THICK).plus(0, -6);
            }
            case LT -> {
                plane = List.of(at(0, t, THICK), at(LONG, t, THICK), at(LONG, t, 0));
                Arrows.arrow(pen, at(l, 0, s), at(l, -PULL, s), FORCE);
                Arrows.arrow(pen, at(l, WIDE, THICK), at(l, WIDE + PULL, THICK), FORCE);
                labelAt = at(LONG, t, 0).plus(10, 10);
            }
            default -> {
                plane = List.of(at(0, 0, s), at(LONG, 0, s), at(LONG, WIDE, s));
                Arrows.arrow(pen, at(l, t, THICK), at(l, t, THICK + PULL), FORCE);
                Arrows.arrow(pen, at(l, 0, 0), at(l, 0, -PULL), FORCE);
                labelAt = at(LONG, WIDE, s).plus(14, -10);
            }
        }
        pen.line(plane, CRACK);
        pen.text(labelAt, Pen.Align.LEFT, "a crack opens in this plane", Lettering.STRONG.in(Ink.RUST));
    }

    private void triad(Pen pen) {
        Point origin = new Point(30, 120);
        double arm = 28;
        arm(pen, origin, origin.plus(arm * COS, arm * SIN), 0, new Point(5, 6));
        arm(pen, origin, origin.plus(arm * COS, -arm * SIN), 1, new Point(4, 0));
        arm(pen, origin, origin.plus(0, -arm), 2, new Point(-6, -5));
    }

    private void arm(Pen pen, Point from, Point to, int index, Point shift) {
        boolean pulled = stressed.isPresent() && stressed.get().ordinal() == index;
        Arrows.arrow(pen, from, to, pulled ? FORCE : Stroke.OUTLINE);
        String axis = axes.get(index);
        String words = Direction.values()[index] + (axis.isEmpty() ? "" : " (" + axis + ")");
        pen.text(to.plus(shift.x(), shift.y()), Pen.Align.LEFT, words,
                pulled ? Lettering.STRONG.in(Ink.RUST) : Lettering.STRONG);
    }
}
