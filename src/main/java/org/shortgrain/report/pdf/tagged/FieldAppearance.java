package org.shortgrain.report.pdf.tagged;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDAppearanceContentStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.shortgrain.report.pdf.figure.Ink;

/** Draws what is seen of a field: lines of text from its upper left corner, in embedded fonts, as the archive demands. */
final class FieldAppearance {

    private final PDDocument file;
    private final EmbeddedFonts fonts;

    FieldAppearance(PDDocument file, EmbeddedFonts fonts) {
        this.file = file;
        this.fonts = fonts;
    }

    /**
     * {@return the appearance of a field}
     *
     * @param width      width of the field, points
     * @param height     height of the field, points
     * @param paragraphs what stands in it
     * @param font       font of plain letters
     * @param inset      free space at the edges, points
     */
    PDAppearanceStream stream(double width, double height, List<Text> paragraphs, Lines.Font font, double inset)
            throws IOException {
        PDAppearanceStream stream = new PDAppearanceStream(file);
        stream.setResources(new PDResources());
        stream.setBBox(new PDRectangle((float) width, (float) height));
        try (PDAppearanceContentStream content = new PDAppearanceContentStream(stream, true)) {
            Ink ink = font.ink();
            content.setNonStrokingColor(ink.red(), ink.green(), ink.blue());
            double top = inset;
            for (Text paragraph : paragraphs) {
                for (Line line : Lines.broken(fonts.fonts(), fonts.guard(), paragraph, font, width - 2 * inset)) {
                    draw(content, line, font, inset, height - font.baseline(top));
                    top += font.leading();
                }
            }
        }
        return stream;
    }

    private void draw(PDAppearanceContentStream content, Line line, Lines.Font font, double left, double baseline)
            throws IOException {
        for (Line.Fragment fragment : line.fragments()) {
            if (fragment.matter() instanceof Line.Letters letters) {
                content.beginText();
                content.setFont(fonts.get(letters.face()), (float) font.size());
                content.newLineAtOffset((float) (left + fragment.x()), (float) baseline);
                content.showText(letters.text());
                content.endText();
            }
        }
    }

    /** {@return how many lines some paragraphs take} */
    int lines(List<Text> paragraphs, Lines.Font font, double measure) {
        int lines = 0;
        for (Text text : paragraphs) {
            lines += Lines.broken(fonts.fonts(), fonts.guard(), text, font, measure).size();
        }
        return lines;
    }
}
