package org.shortgrain.report.pdf.tagged;

import java.util.List;
import org.shortgrain.report.pdf.figure.Ink;

/** Sizes of the report's letters, and the setting of broken lines. */
final class Lines {

    /** Ascent of DejaVu's capitals and figures plus half of its descent: centres letters in their line. */
    private static final double CENTRING = 0.345;
    private static final double LINK_ABOVE = 0.8;

    private Lines() {
    }

    /**
     * How a block's text is set.
     *
     * @param base    face of plain letters
     * @param size    size of the letters, points
     * @param leading distance of base lines, points
     * @param ink     ink of plain letters
     */
    record Font(Face base, double size, double leading, Ink ink) {

        static final Font BODY = new Font(Face.REGULAR, 8.6, 11.8, Ink.BLACK);
        static final Font LEAD = new Font(Face.REGULAR, 10.2, 14.8, Ink.BLACK);
        static final Font SMALL = new Font(Face.REGULAR, 7.3, 9.8, Ink.GREY);
        static final Font TABLE = new Font(Face.REGULAR, 7.7, 10.2, Ink.BLACK);
        static final Font TABLE_HEADING = new Font(Face.BOLD, 7.4, 10.2, Ink.DEEP);
        static final Font FINE = new Font(Face.REGULAR, 6.9, 8.9, Ink.BLACK);
        static final Font FINE_HEADING = new Font(Face.BOLD, 6.7, 8.9, Ink.DEEP);
        static final Font LABEL = new Font(Face.REGULAR, 6.4, 8.4, Ink.GREY);
        static final Font VALUE = new Font(Face.REGULAR, 8.6, 11.2, Ink.BLACK);
        static final Font RUNNING = new Font(Face.REGULAR, 6.9, 9, Ink.GREY);

        double baseline(double top) {
            return top + leading / 2 + CENTRING * size;
        }

        Font bold() {
            return new Font(Face.BOLD, size, leading, ink);
        }
    }

    static List<Line> broken(Fonts fonts, GlyphGuard guard, Text text, Font font, double measure) {
        return LineBreaker.lines(fonts, guard, text, font.base(), font.size(), measure);
    }

    /**
     * Draws one line. Page numbers take no more room than they need, now that they are known.
     *
     * @param canvas the page
     * @param line   the line
     * @param font   the font that it was broken for
     * @param left   where it begins
     * @param top    its upper edge
     * @param node   the element that it belongs to
     */
    static void paint(Canvas canvas, Line line, Font font, double left, double top, StructNode node) {
        double baseline = font.baseline(top);
        double drawnIn = 0;
        for (Line.Fragment fragment : line.fragments()) {
            double x = left + fragment.x() - drawnIn;
            if (fragment.matter() instanceof Line.Letters letters) {
                paintLetters(canvas, fragment, letters, font, x, top, node);
            } else if (fragment.matter() instanceof Line.PageNumber number) {
                String digits = canvas.places().pageNumber(number.anchor());
                canvas.mark(node);
                canvas.text(number.face(), font.size(), font.ink(), x, baseline, digits);
                drawnIn += fragment.width() - canvas.fonts().width(number.face(), font.size(), digits);
            } else if (fragment.matter() instanceof Line.Framed framed) {
                Badges.paint(canvas, framed, x, baseline, font.size(), node);
            }
        }
    }

    private static void paintLetters(Canvas canvas, Line.Fragment fragment, Line.Letters letters, Font font, double x,
            double top, StructNode node) {
        boolean linked = letters.link().isPresent();
        StructNode owner = linked ? letters.link().get().node(node) : node;
        canvas.mark(owner);
        canvas.text(letters.face(), font.size(), linked ? Ink.DEEP : font.ink(), x, font.baseline(top), letters.text());
        if (linked) {
            canvas.link(x, top + LINK_ABOVE, fragment.width(), font.leading() - LINK_ABOVE, letters.link().get(), owner);
        }
    }
}
