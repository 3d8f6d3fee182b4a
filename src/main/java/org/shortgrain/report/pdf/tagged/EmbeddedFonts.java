package org.shortgrain.report.pdf.tagged;

import java.io.IOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** The faces that one document uses; a face that it does not use is not embedded. */
final class EmbeddedFonts {

    private final PDDocument document;
    private final Fonts fonts;
    private final GlyphGuard guard;
    private final Map<Face, PDFont> used = new EnumMap<>(Face.class);

    EmbeddedFonts(PDDocument document, Fonts fonts, GlyphGuard guard) {
        this.document = document;
        this.fonts = fonts;
        this.guard = guard;
    }

    Fonts fonts() {
        return fonts;
    }

    GlyphGuard guard() {
        return guard;
    }

    /** Embeds the letters used so far. The content of a page does so by itself when it is saved; that of a field does not. */
    void embed() throws IOException {
        for (PDFont font : used.values()) {
            font.subset();
        }
    }

    PDFont get(Face face) throws IOException {
        PDFont known = used.get(face);
        if (known == null) {
            known = fonts.embed(document, face);
            used.put(face, known);
        }
        return known;
    }
}
