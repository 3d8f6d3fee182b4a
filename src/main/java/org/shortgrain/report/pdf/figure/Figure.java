package org.shortgrain.report.pdf.figure;

/** A drawing with the sentence that it proves. */
public interface Figure {

    /** {@return the conclusion that a reader should take from the figure, one sentence} */
    String title();

    /** {@return what the figure shows with its main numbers, for readers who cannot see it} */
    String alternative();

    /** {@return where the drawn numbers come from, and what was left out} */
    String note();

    /**
     * {@return the height that the figure needs, points}
     *
     * @param width the width that it has, points
     */
    double height(double width);

    /**
     * Draws the figure inside its width and height.
     *
     * @param pen   what it is drawn with
     * @param width the width that it has, points
     */
    void draw(Pen pen, double width);
}
