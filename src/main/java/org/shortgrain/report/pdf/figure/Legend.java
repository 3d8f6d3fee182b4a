package org.shortgrain.report.pdf.figure;

import java.util.ArrayList;
import java.util.List;

/** Samples of lines and fills with their names, in rows. */
final class Legend {

    static final double ROW = 11;
    private static final double SAMPLE = 17;
    private static final double AFTER_SAMPLE = 4;
    private static final double AFTER_ITEM = 14;

    private final List<Item> items = new ArrayList<>();

    /** A sample with its name; drawn with a line or an area. */
    private record Item(String name, List<Stroke> strokes, List<Fill> fills) {
    }

    Legend line(String name, Stroke stroke) {
        items.add(new Item(name, List.of(stroke), List.of()));
        return this;
    }

    Legend area(String name, Fill fill) {
        items.add(new Item(name, List.of(), List.of(fill)));
        return this;
    }

    /** Rows that the names take at most, judged without a font: letters of 7 points are 4.3 points wide or less. */
    static int rows(List<String> names, double width) {
        double widestLetter = 4.3;
        double x = 0;
        int rows = 1;
        for (String name : names) {
            double item = SAMPLE + AFTER_SAMPLE + name.length() * widestLetter + AFTER_ITEM;
            if (x > 0 && x + item > width) {
                rows++;
                x = 0;
            }
            x += item;
        }
        return rows;
    }

    void draw(Pen pen, double left, double top, double width) {
        double x = left;
        double y = top;
        for (Item item : items) {
            double wide = SAMPLE + AFTER_SAMPLE + pen.width(item.name(), Lettering.LABEL) + AFTER_ITEM;
            if (x > left && x + wide - AFTER_ITEM > left + width) {
                x = left;
                y += ROW;
            }
            double middle = y + ROW / 2;
            for (Fill fill : item.fills()) {
                List<Point> box = Shapes.box(x, middle - 3.5, SAMPLE, 7);
                pen.area(box, fill);
                pen.outline(box, Stroke.THIN);
            }
            for (Stroke stroke : item.strokes()) {
                pen.line(new Point(x, middle), new Point(x + SAMPLE, middle), stroke);
            }
            pen.text(new Point(x + SAMPLE + AFTER_SAMPLE, middle + 2.5), Pen.Align.LEFT, item.name(), Lettering.LABEL);
            x += wide;
        }
    }
}
