package org.shortgrain.report.pdf.tagged;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.shortgrain.report.pdf.figure.Ink;

/**
 * What is seen in a signature field once it is signed: a bold line and the lines below it, in letters as large as the
 * field has room for. The fonts are embedded in the update that signing appends.
 */
public final class SignatureAppearance {

    private static final double INSET = 5;
    private static final double LEADING = 1.3;
    private static final double LARGEST = 6.2;
    /** Letters smaller than this (points) are not readable on paper. */
    private static final double SMALLEST = 4.6;
    private static final double STEP = 0.1;

    private SignatureAppearance() {
    }

    /**
     * {@return the appearance of a signed field}
     *
     * @param file   the document that is being signed
     * @param fonts  parsed fonts, for this thread alone
     * @param width  width of the field, points
     * @param height height of the field, points
     * @param first  the bold line
     * @param others the other lines
     * @throws IOException              if a font cannot be embedded
     * @throws IllegalArgumentException if the text has no room in readable letters
     */
    public static PDAppearanceStream of(PDDocument file, Fonts fonts, double width, double height, String first,
            List<String> others) throws IOException {
        List<Text> paragraphs = new ArrayList<>(List.of(Text.EMPTY.bold(first)));
        others.forEach(line -> paragraphs.add(Text.of(line)));
        EmbeddedFonts embedded = new EmbeddedFonts(file, fonts, new GlyphGuard(fonts));
        FieldAppearance field = new FieldAppearance(file, embedded);
        for (double size = LARGEST; size >= SMALLEST; size -= STEP) {
            Lines.Font font = new Lines.Font(Face.REGULAR, size, size * LEADING, Ink.BLACK);
            int lines = field.lines(paragraphs, font, width - 2 * INSET);
            if (lines * font.leading() + 2 * INSET <= height) {
                PDAppearanceStream stream = field.stream(width, height, paragraphs, font, INSET);
                embedded.embed();
                return stream;
            }
        }
        throw new IllegalArgumentException("name, organisation and statement are too long for the field of the signature");
    }
}
