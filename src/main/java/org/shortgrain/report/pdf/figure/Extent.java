package org.shortgrain.report.pdf.figure;

import java.util.List;

/**
 * How far some points reach.
 *
 * @param minX least x
 * @param maxX greatest x
 * @param minY least y
 * @param maxY greatest y
 */
public record Extent(double minX, double maxX, double minY, double maxY) {

    /**
     * {@return how far some points reach}
     *
     * @param points the points, at least one
     */
    public static Extent of(List<Point> points) {
        Point first = points.get(0);
        double minX = first.x();
        double maxX = first.x();
        double minY = first.y();
        double maxY = first.y();
        for (Point point : points) {
            minX = Math.min(minX, point.x());
            maxX = Math.max(maxX, point.x());
            minY = Math.min(minY, point.y());
            maxY = Math.max(maxY, point.y());
        }
        return new Extent(minX, maxX, minY, maxY);
    }

    /** {@return the breadth} */
    public double width() {
        return maxX - minX;
    }

    /** {@return the height} */
    public double height() {
        return maxY - minY;
    }
}
