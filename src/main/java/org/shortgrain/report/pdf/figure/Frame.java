package org.shortgrain.report.pdf.figure;

import java.util.List;

/** Maps a drawing in its own unit, y upwards, into a box of the sheet, keeping its proportions. */
record Frame(double scale, double x, double y) {

    /** {@return the frame that shows an outline as large as it goes, centred} */
    static Frame fitting(List<Point> outline, double left, double top, double width, double height) {
        double minX = outline.stream().mapToDouble(Point::x).min().orElseThrow();
        double maxX = outline.stream().mapToDouble(Point::x).max().orElseThrow();
        double minY = outline.stream().mapToDouble(Point::y).min().orElseThrow();
        double maxY = outline.stream().mapToDouble(Point::y).max().orElseThrow();
        double scale = Math.min(width / (maxX - minX), height / (maxY - minY));
        double x = left + (width - (maxX - minX) * scale) / 2 - minX * scale;
        double y = top + (height + (maxY - minY) * scale) / 2 + minY * scale;
        return new Frame(scale, x, y);
    }

    Point place(Point point) {
        return new Point(x + point.x() * scale, y - point.y() * scale);
    }

    List<Point> places(List<Point> points) {
        return points.stream().map(this::place).toList();
    }
}
