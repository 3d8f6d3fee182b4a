package org.shortgrain.report.pdf.tagged;

import org.shortgrain.report.pdf.figure.Ink;
import org.shortgrain.report.pdf.figure.Stroke;

/** Framed words. The frame says the grade a second time, in a way that survives a grey copy. */
final class Badges {

    /** Letters of a badge against those around it. */
    private static final double SCALE = 0.82;
    private static final double SIDE = 3.2;
    private static final double ABOVE = 1.9;
    private static final double BELOW = 1.7;
    private static final double CAPITAL_HEIGHT = 0.73;
    private static final Stroke THIN = new Stroke(Ink.BLACK, 0.6, Stroke.Dash.SOLID);
    private static final Stroke HEAVY = new Stroke(Ink.BLACK, 1.5, Stroke.Dash.SOLID);
    private static final Stroke DASHED = new Stroke(Ink.BLACK, 0.9, Stroke.Dash.DOTTED);

    private Badges() {
    }

    static double width(Fonts fonts, String word, double size) {
        return fonts.width(Face.BOLD, size * SCALE, word) + 2 * SIDE;
    }

    /**
     * Draws the frame and the word.
     *
     * @param canvas   the page
     * @param framed   the word
     * @param left     left edge of the frame
     * @param baseline base line of the text around it
     * @param size     size of the letters around it
     * @param node     the element that the word belongs to
     */
    static void paint(Canvas canvas, Line.Framed framed, double left, double baseline, double size, StructNode node) {
        double letters = size * SCALE;
        double width = width(canvas.fonts(), framed.word(), size);
        double lift = (size - letters) * CAPITAL_HEIGHT / 2;
        double top = baseline - lift - letters * CAPITAL_HEIGHT - ABOVE;
        double height = letters * CAPITAL_HEIGHT + ABOVE + BELOW;
        canvas.artifact();
        if (framed.frame() == Inline.Frame.SOLID) {
            canvas.fillBox(left, top, width, height, Ink.BLACK);
        } else {
            canvas.strokeBox(left, top, width, height, stroke(framed.frame()));
        }
        canvas.mark(node);
        Ink ink = framed.frame() == Inline.Frame.SOLID ? Ink.WHITE : Ink.BLACK;
        canvas.text(Face.BOLD, letters, ink, left + SIDE, baseline - lift, framed.word());
    }

    static Stroke stroke(Inline.Frame frame) {
        return switch (frame) {
            case SOLID, HEAVY -> HEAVY;
            case THIN -> THIN;
            case DASHED -> DASHED;
        };
    }
}
