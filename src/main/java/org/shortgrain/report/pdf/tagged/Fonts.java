package org.shortgrain.report.pdf.tagged;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The parsed fonts of the report. Parsing costs more than a page of text, so the caller keeps one object for all its
 * documents. Not safe for use by two threads at a time: a batch owns one per thread.
 *
 * <p>Glyph substitution is switched off: ligatures would break the search for words such as "fit", and looking for
 * them takes four fifths of the writing time.
 */
public final class Fonts implements AutoCloseable {

    private final Map<Face, Typeface> typefaces = new EnumMap<>(Face.class);

    private Fonts() {
    }

    /**
     * Parses the four faces from the class path.
     *
     * @return fonts to be closed by the caller
     * @throws UncheckedIOException if a font is missing or damaged, which means a broken build
     */
    public static Fonts load() {
        Fonts fonts = new Fonts();
        try {
            for (Face face : Face.values()) {
                fonts.typefaces.put(face, new Typeface(parse(face)));
            }
            return fonts;
        } catch (IOException broken) {
            fonts.close();
            throw new UncheckedIOException("the fonts of the report cannot be read", broken);
        }
    }

    private static TrueTypeFont parse(Face face) throws IOException {
        try (InputStream file = Fonts.class.getResourceAsStream("/fonts/" + face.file())) {
            if (file == null) {
                throw new IOException("no /fonts/" + face.file() + " on the class path");
            }
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file));
            font.setEnableGsub(false);
            return font;
        }
    }

    /**
     * {@return whether a face has a glyph for a character}
     *
     * @param face      the face
     * @param codePoint a Unicode code point
     */
    boolean has(Face face, int codePoint) {
        return typefaces.get(face).has(codePoint);
    }

    /**
     * {@return the width of a text on one line, points}
     *
     * @param face the face
     * @param size the size of the letters, points
     * @param text a text whose characters the face has
     */
    double width(Face face, double size, String text) {
        return typefaces.get(face).width(text) * size / Typeface.UNITS;
    }

    /**
     * {@return a face made ready for one document, embedded as a subset when the document is saved}
     *
     * @param document the document
     * @param face     the face
     */
    PDType0Font embed(PDDocument document, Face face) throws IOException {
        return PDType0Font.load(document, typefaces.get(face).font(), true);
    }

    @Override
    public void close() {
        for (Typeface typeface : typefaces.values()) {
            typeface.close();
        }
    }
}
