package org.shortgrain.report.pdf.figure;

import java.util.ArrayList;
import java.util.List;

/** Outlines as points. */
final class Shapes {

    /** A chord of 7.5 degrees departs from a 60 mm circle by 0.06 mm: below the width of a line. */
    private static final int SIDES = 48;

    private Shapes() {
    }

    static List<Point> box(double x, double y, double width, double height) {
        return List.of(new Point(x, y), new Point(x + width, y), new Point(x + width, y + height),
                new Point(x, y + height));
    }

    static List<Point> circle(Point centre, double radius) {
        List<Point> points = new ArrayList<>(SIDES);
        for (int i = 0; i < SIDES; i++) {
            double angle = 2 * Math.PI * i / SIDES;
            points.add(centre.plus(radius * Math.cos(angle), radius * Math.sin(angle)));
        }
        return points;
    }

    static List<Point> closed(List<Point> outline) {
        List<Point> points = new ArrayList<>(outline);
        points.add(outline.get(0));
        return points;
    }
}
