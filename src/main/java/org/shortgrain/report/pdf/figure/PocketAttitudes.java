package org.shortgrain.report.pdf.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A pocket in the attitudes of the part, with the water that cannot run off: up to the lower lip of its opening, or to
 * the drain hole where that is shown to be open.
 *
 * @param title       the conclusion
 * @param alternative what it shows, in words
 * @param note        where the dimensions come from
 * @param length      length of the pocket's floor along the pitch plane
 * @param depth       depth of the pocket, in the unit of {@code length}
 * @param opening     where it opens with the part level
 * @param drain       its drain hole, if it has one
 * @param attitudes   the attitudes, at least one
 */
public record PocketAttitudes(String title, String alternative, String note, double length, double depth,
        Opening opening, Optional<Drain> drain, List<Attitude> attitudes) implements Figure {

    private static final double CELL_HEIGHT = 122;
    private static final double DRAWING_HEIGHT = 92;
    private static final double CELL_GAP = 14;
    private static final double SMALLEST_CELL = 140;
    private static final double WALL_SHARE = 0.07;
    private static final double HOLE_SHARE = 0.035;
    private static final double QUARTER_TURN = 90;
    private static final Fill METAL = new Fill.Hatch(Ink.GREY, 45, 3);
    private static final Fill WATER = new Fill.Hatch(Ink.DEEP, 0, 1.8);
    private static final Fill GROUND = new Fill.Even(Ink.TINT);

    /** Where the pocket opens with the part level. */
    public enum Opening {
        /** Upwards. */
        UP(0),
        /** Sideways, towards the rear. */
        SIDE(1),
        /** Downwards. */
        DOWN(2),
        /** Nowhere. */
        CLOSED(0);

        private final int quarterTurns;

        Opening(int quarterTurns) {
            this.quarterTurns = quarterTurns;
        }
    }

    /**
     * A hole through the floor.
     *
     * @param position distance of its middle from the rear end of the floor
     * @param open     whether water is shown to leave through it
     */
    public record Drain(double position, boolean open) {
    }

    /**
     * How the part is held for long.
     *
     * @param name  such as "on the ground"
     * @param pitch rotation that raises the forward end (at the right), degrees
     * @param holds what the calculation found, such as "holds 41 ml"
     * @param depth greatest depth of water as computed, square to the floor, in the unit of the pocket; empty where it
     *              follows from the drawing alone
     */
    public record Attitude(String name, double pitch, String holds, Optional<Double> depth) {
        /** Refuses missing parts. */
        public Attitude {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(holds, "holds");
            Objects.requireNonNull(depth, "depth");
        }

        /**
         * An attitude in which lip and drain alone say how high water stands.
         *
         * @param name  its name
         * @param pitch rotation that raises the forward end, degrees
         * @param holds what is said of it
         */
        public Attitude(String name, double pitch, String holds) {
            this(name, pitch, holds, Optional.empty());
        }
    }

    /** Copies the list and refuses a pocket without size. */
    public PocketAttitudes {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(alternative, "alternative");
        Objects.requireNonNull(note, "note");
        Objects.requireNonNull(opening, "opening");
        Objects.requireNonNull(drain, "drain");
        attitudes = List.copyOf(attitudes);
        if (!(length > 0) || !(depth > 0) || attitudes.isEmpty()) {
            throw new IllegalArgumentException("no pocket " + length + " x " + depth + " in " + attitudes.size()
                    + " attitudes");
        }
    }

    /** The pocket turned into an attitude: x to the right, y upwards, in its own unit. */
    private final class Turned {
        private final double cos;
        private final double sin;
        private final double wall;

        private final Optional<Double> computed;

        Turned(Attitude attitude) {
            this.computed = opening == Opening.UP ? attitude.depth() : Optional.empty();
            double angle = Math.toRadians(opening.quarterTurns * QUARTER_TURN + attitude.pitch());
            this.cos = Math.cos(angle);
            this.sin = Math.sin(angle);
            this.wall = WALL_SHARE * Math.max(length, depth);
        }

        Point at(double along, double above) {
            return new Point(along * cos - above * sin, along * sin + above * cos);
        }

        List<Point> outside() {
            double top = opening == Opening.CLOSED ? depth + wall : depth;
            return List.of(at(-wall, -wall), at(length + wall, -wall), at(length + wall, top), at(-wall, top));
        }

        List<Point> cavity() {
            return List.of(at(0, 0), at(length, 0), at(length, depth), at(0, depth));
        }

        /** The height that water cannot exceed; in a closed pocket nothing limits it but the drain. */
        Optional<Double> level() {
            if (computed.isPresent()) {
                return Optional.of(Math.min(at(0, 0).y(), at(length, 0).y()) + computed.get() * cos);
            }
            Optional<Double> lip = opening == Opening.CLOSED ? Optional.empty()
                    : Optional.of(Math.min(at(0, depth).y(), at(length, depth).y()));
            if (drain.isEmpty() || !drain.get().open()) {
                return lip;
            }
            double hole = at(drain.get().position(), 0).y();
            return Optional.of(lip.isPresent() ? Math.min(lip.get(), hole) : hole);
        }

        /** The part of the cavity below a height. */
        List<Point> below(double height) {
            List<Point> kept = new ArrayList<>();
            List<Point> corners = cavity();
            for (int i = 0; i < corners.size(); i++) {
                Point here = corners.get(i);
                Point next = corners.get((i + 1) % corners.size());
                if (here.y() <= height) {
                    kept.add(here);
                }
                if (here.y() < height != next.y() < height && here.y() != next.y()) {
                    double share = (height - here.y()) / (next.y() - here.y());
                    kept.add(new Point(here.x() + share * (next.x() - here.x()), height));
                }
            }
            return kept;
        }
    }

    /**
     * {@return the outline of the water that stays, x to the right and y upwards in the pocket's own unit; empty when
     * none does or when nothing says how high it stands}
     *
     * @param attitude one of the attitudes
     */
    public List<Point> water(Attitude attitude) {
        Turned turned = new Turned(attitude);
        Optional<Double> level = turned.level();
        List<Point> outline = level.isPresent() ? turned.below(level.get()) : List.of();
        return outline.size() > 2 ? outline : List.of();
    }

    private int perRow(double width) {
        int fitting = (int) Math.max(1, Math.floor((width + CELL_GAP) / (SMALLEST_CELL + CELL_GAP)));
        return Math.min(fitting, attitudes.size());
    }

    @Override
    public double height(double width) {
        int rows = (attitudes.size() + perRow(width) - 1) / perRow(width);
        return rows * CELL_HEIGHT;
    }

    @Override
    public void draw(Pen pen, double width) {
        int perRow = perRow(width);
        double cell = (width - (perRow - 1) * CELL_GAP) / perRow;
        for (int i = 0; i < attitudes.size(); i++) {
            draw(pen, attitudes.get(i), i % perRow * (cell + CELL_GAP), (double) (i / perRow) * CELL_HEIGHT, cell);
        }
    }

    private void draw(Pen pen, Attitude attitude, double left, double top, double cell) {
        Turned turned = new Turned(attitude);
        Frame frame = Frame.fitting(turned.outside(), left + 8, top + 6, cell - 16, DRAWING_HEIGHT - 12);
        double ground = top + DRAWING_HEIGHT;
        pen.area(Shapes.box(left, ground, cell, 2.5), GROUND);
        pen.line(new Point(left, ground), new Point(left + cell, ground), Stroke.THIN);
        metal(pen, turned, frame);
        List<Point> water = water(attitude);
        if (!water.isEmpty()) {
            List<Point> there = frame.places(water);
            pen.area(there, WATER);
            surface(pen, turned, frame, water);
        }
        hole(pen, turned, frame);
        pen.text(new Point(left, ground + 12), Pen.Align.LEFT, attitude.name(), Lettering.STRONG);
        pen.text(new Point(left, ground + 21), Pen.Align.LEFT, attitude.holds(), Lettering.LABEL);
    }

    private void metal(Pen pen, Turned turned, Frame frame) {
        if (opening == Opening.CLOSED) {
            pen.area(frame.places(turned.outside()), METAL);
            pen.area(frame.places(turned.cavity()), new Fill.Even(Ink.WHITE));
            pen.outline(frame.places(turned.outside()), Stroke.OUTLINE);
            pen.outline(frame.places(turned.cavity()), Stroke.OUTLINE);
            return;
        }
        List<Point> outer = turned.outside();
        List<Point> inner = turned.cavity();
        List<Point> walls = frame.places(List.of(outer.get(3), outer.get(0), outer.get(1), outer.get(2), inner.get(2),
                inner.get(1), inner.get(0), inner.get(3)));
        pen.area(walls, METAL);
        pen.outline(walls, Stroke.OUTLINE);
    }

    private void surface(Pen pen, Turned turned, Frame frame, List<Point> water) {
        double level = turned.level().orElseThrow();
        List<Point> edge = new ArrayList<>();
        for (Point point : water) {
            if (Math.abs(point.y() - level) < length * 1e-9) {
                edge.add(point);
            }
        }
        Extent extent = Extent.of(edge);
        Point start = frame.place(new Point(extent.minX(), level));
        Point end = frame.place(new Point(extent.maxX(), level));
        pen.line(start, end, Stroke.HEAVY.in(Ink.DEEP));
        Point mark = new Point((start.x() + end.x()) / 2, start.y());
        pen.outline(List.of(mark, mark.plus(-3, -5), mark.plus(3, -5)), Stroke.THIN);
    }

    private void hole(Pen pen, Turned turned, Frame frame) {
        if (drain.isEmpty()) {
            return;
        }
        Drain hole = drain.get();
        double half = HOLE_SHARE * length / 2;
        List<Point> gap = frame.places(List.of(turned.at(hole.position() - half, 0),
                turned.at(hole.position() + half, 0), turned.at(hole.position() + half, -turned.wall),
                turned.at(hole.position() - half, -turned.wall)));
        pen.area(gap, new Fill.Even(Ink.WHITE));
        pen.outline(gap, Stroke.OUTLINE);
        if (!hole.open()) {
            pen.line(gap.get(0), gap.get(2), Stroke.OUTLINE);
            pen.line(gap.get(1), gap.get(3), Stroke.OUTLINE);
        }
    }
}
