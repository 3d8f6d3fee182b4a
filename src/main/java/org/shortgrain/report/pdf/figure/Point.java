package org.shortgrain.report.pdf.figure;

/**
 * A place on the sheet or, inside a figure's own geometry, in the thing drawn.
 *
 * @param x to the right
 * @param y downwards on the sheet
 */
public record Point(double x, double y) {

    /**
     * {@return the point moved}
     *
     * @param dx to the right
     * @param dy downwards
     */
    public Point plus(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }
}
