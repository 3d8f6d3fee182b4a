package org.shortgrain.report.pdf.figure;

import java.util.List;

/** What a figure draws with. Lengths are points from the top left corner of the figure, y downwards. */
public interface Pen {

    /** Where a text lies against its point. */
    enum Align {
        /** The text begins at the point. */
        LEFT,
        /** The text is centred on the point. */
        CENTRE,
        /** The text ends at the point. */
        RIGHT
    }

    /**
     * Draws a line through points.
     *
     * @param points at least two points
     * @param stroke how it is drawn
     */
    void line(List<Point> points, Stroke stroke);

    /**
     * Fills the area inside a closed outline; the outline itself is not drawn.
     *
     * @param outline at least three points, closed by itself
     * @param fill    how it is filled
     */
    void area(List<Point> outline, Fill fill);

    /**
     * Sets one line of text.
     *
     * @param at        the place on the base line
     * @param align     how the text lies against the place
     * @param text      the letters
     * @param lettering how they are set
     */
    void text(Point at, Align align, String text, Lettering lettering);

    /**
     * Sets one line of text that reads upwards, centred on a place.
     *
     * @param at        the place on the base line
     * @param text      the letters
     * @param lettering how they are set
     */
    void upwards(Point at, String text, Lettering lettering);

    /**
     * {@return the width of a text, points}
     *
     * @param text      the letters
     * @param lettering how they are set
     */
    double width(String text, Lettering lettering);

    /**
     * Draws a straight line.
     *
     * @param from   start
     * @param to     end
     * @param stroke how it is drawn
     */
    default void line(Point from, Point to, Stroke stroke) {
        line(List.of(from, to), stroke);
    }

    /**
     * Draws a closed outline.
     *
     * @param outline its corners
     * @param stroke  how it is drawn
     */
    default void outline(List<Point> outline, Stroke stroke) {
        line(Shapes.closed(outline), stroke);
    }
}
