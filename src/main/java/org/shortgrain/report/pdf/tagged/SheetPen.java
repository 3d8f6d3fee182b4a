package org.shortgrain.report.pdf.tagged;

import java.util.ArrayList;
import java.util.List;
import org.shortgrain.report.pdf.figure.Extent;
import org.shortgrain.report.pdf.figure.Fill;
import org.shortgrain.report.pdf.figure.Lettering;
import org.shortgrain.report.pdf.figure.Pen;
import org.shortgrain.report.pdf.figure.Point;
import org.shortgrain.report.pdf.figure.Stroke;

/** The pen of a figure on a page. */
final class SheetPen implements Pen {

    private final Canvas canvas;
    private final double left;
    private final double top;

    SheetPen(Canvas canvas, double left, double top) {
        this.canvas = canvas;
        this.left = left;
        this.top = top;
    }

    @Override
    public void line(List<Point> points, Stroke stroke) {
        canvas.line(moved(points), stroke);
    }

    @Override
    public void area(List<Point> outline, Fill fill) {
        if (fill instanceof Fill.Even even) {
            canvas.area(moved(outline), even.ink());
        } else if (fill instanceof Fill.Hatch hatch) {
            List<Point> there = moved(outline);
            canvas.clip(there);
            hatch(there, hatch);
            canvas.unclip();
        }
    }

    /** Lines across the bounding circle of the outline; the clip leaves what lies inside. */
    private void hatch(List<Point> outline, Fill.Hatch hatch) {
        Extent extent = Extent.of(outline);
        double radius = Math.hypot(extent.width(), extent.height()) / 2;
        Point centre = new Point((extent.minX() + extent.maxX()) / 2, (extent.minY() + extent.maxY()) / 2);
        double angle = Math.toRadians(hatch.degrees());
        double alongX = Math.cos(angle);
        double alongY = -Math.sin(angle);
        Stroke stroke = new Stroke(hatch.ink(), 0.45, Stroke.Dash.SOLID);
        for (double offset = -radius; offset <= radius; offset += hatch.spacing()) {
            Point middle = centre.plus(-alongY * offset, alongX * offset);
            canvas.line(List.of(middle.plus(-alongX * radius, -alongY * radius),
                    middle.plus(alongX * radius, alongY * radius)), stroke);
        }
    }

    @Override
    public void text(Point at, Align align, String text, Lettering lettering) {
        double shift = switch (align) {
            case LEFT -> 0;
            case CENTRE -> width(text, lettering) / 2;
            case RIGHT -> width(text, lettering);
        };
        Face face = face(lettering);
        canvas.text(face, lettering.size(), lettering.ink(), left + at.x() - shift, top + at.y(),
                canvas.guard().only(face, text));
    }

    @Override
    public void upwards(Point at, String text, Lettering lettering) {
        Face face = face(lettering);
        canvas.upwardText(face, lettering.size(), lettering.ink(), left + at.x(),
                top + at.y() + width(text, lettering) / 2, canvas.guard().only(face, text));
    }

    @Override
    public double width(String text, Lettering lettering) {
        Face face = face(lettering);
        return canvas.fonts().width(face, lettering.size(), canvas.guard().only(face, text));
    }

    private static Face face(Lettering lettering) {
        return lettering.bold() ? Face.BOLD : Face.REGULAR;
    }

    private List<Point> moved(List<Point> points) {
        List<Point> moved = new ArrayList<>(points.size());
        for (Point point : points) {
            moved.add(point.plus(left, top));
        }
        return moved;
    }
}
