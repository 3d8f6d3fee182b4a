package org.shortgrain.report.pdf.figure;

/**
 * How a line is drawn.
 *
 * @param ink   its ink
 * @param width its width, points
 * @param dash  solid, broken or dotted
 */
public record Stroke(Ink ink, double width, Dash dash) {

    /** Pattern of a line. */
    public enum Dash {
        /** Unbroken. */
        SOLID,
        /** Strokes. */
        DASHED,
        /** Dots. */
        DOTTED,
        /** Long and short strokes: centre lines, parting lines. */
        CHAIN
    }

    /** Grids and rules. */
    public static final Stroke HAIRLINE = new Stroke(Ink.RULE, 0.4, Dash.SOLID);
    /** Dimension lines and ticks. */
    public static final Stroke THIN = new Stroke(Ink.BLACK, 0.5, Dash.SOLID);
    /** Outlines. */
    public static final Stroke OUTLINE = new Stroke(Ink.BLACK, 0.9, Dash.SOLID);
    /** What the figure is about. */
    public static final Stroke HEAVY = new Stroke(Ink.BLACK, 1.7, Dash.SOLID);
    /** Symmetry and parting lines. */
    public static final Stroke CENTRE = new Stroke(Ink.BLACK, 0.5, Dash.CHAIN);

    /**
     * {@return the same line in another ink}
     *
     * @param other the ink
     */
    public Stroke in(Ink other) {
        return new Stroke(other, width, dash);
    }

    /**
     * {@return the same line in another pattern}
     *
     * @param other the pattern
     */
    public Stroke with(Dash other) {
        return new Stroke(ink, width, other);
    }
}
