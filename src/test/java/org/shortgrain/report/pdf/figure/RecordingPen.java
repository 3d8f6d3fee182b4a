package org.shortgrain.report.pdf.figure;

import java.util.ArrayList;
import java.util.List;

/** Keeps what a figure draws, so that a test can ask for it. */
final class RecordingPen implements Pen {

    /** An average letter of the report's font; enough to place words. */
    private static final double LETTER = 0.58;

    record Drawn(List<Point> points, Stroke stroke) {
    }

    record Filled(List<Point> outline, Fill fill) {
    }

    record Lettered(Point at, Align align, String text, double left, double right) {
    }

    private final List<Drawn> lines = new ArrayList<>();
    private final List<Filled> areas = new ArrayList<>();
    private final List<Lettered> texts = new ArrayList<>();

    static RecordingPen drawing(Figure figure, double width) {
        RecordingPen pen = new RecordingPen();
        figure.draw(pen, width);
        return pen;
    }

    @Override
    public void line(List<Point> points, Stroke stroke) {
        lines.add(new Drawn(List.copyOf(points), stroke));
    }

    @Override
    public void area(List<Point> outline, Fill fill) {
        areas.add(new Filled(List.copyOf(outline), fill));
    }

    @Override
    public void text(Point at, Align align, String text, Lettering lettering) {
        double wide = width(text, lettering);
        double left = switch (align) {
            case LEFT -> at.x();
            case CENTRE -> at.x() - wide / 2;
            case RIGHT -> at.x() - wide;
        };
        texts.add(new Lettered(at, align, text, left, left + wide));
    }

    @Override
    public void upwards(Point at, String text, Lettering lettering) {
        texts.add(new Lettered(at, Align.CENTRE, text, at.x() - lettering.size(), at.x()));
    }

    @Override
    public double width(String text, Lettering lettering) {
        return text.length() * lettering.size() * LETTER;
    }

    List<Drawn> lines() {
        return lines;
    }

    List<Filled> areas() {
        return areas;
    }

    List<Lettered> texts() {
        return texts;
    }

    Lettered text(String words) {
        return texts.stream().filter(text -> text.text().equals(words)).findFirst()
                .orElseThrow(() -> new AssertionError("'" + words + "' is not in " + texts));
    }

    List<Drawn> lines(Stroke stroke) {
        return lines.stream().filter(line -> line.stroke().equals(stroke)).toList();
    }

    List<Filled> areas(Fill fill) {
        return areas.stream().filter(area -> area.fill().equals(fill)).toList();
    }
}
