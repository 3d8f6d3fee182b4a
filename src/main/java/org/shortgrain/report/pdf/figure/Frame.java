package org.shortgrain.report.pdf.figure;

import java.util.ArrayList;
import java.util.List;

/** Maps a drawing in its own unit, y upwards, into a box of the sheet, keeping its proportions. */
record Frame(double scale, double x, double y) {

    /** {@return the frame that shows an outline as large as it goes, centred} */
    static Frame fitting(List<Point> outline, double left, double top, double width, double height) {
        Extent extent = Extent.of(outline);
        double scale = Math.min(width / extent.width(), height / extent.height());
        double x = left + (width - extent.width() * scale) / 2 - extent.minX() * scale;
        double y = top + (height + extent.height() * scale) / 2 + extent.minY() * scale;
        return new Frame(scale, x, y);
    }

    Point place(Point point) {
        return new Point(x + point.x() * scale, y - point.y() * scale);
    }

    List<Point> places(List<Point> points) {
        List<Point> places = new ArrayList<>(points.size());
        for (Point point : points) {
            places.add(place(point));
        }
        return places;
    }
}
