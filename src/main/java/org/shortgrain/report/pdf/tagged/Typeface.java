package org.shortgrain.report.pdf.tagged;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TrueTypeFont;

/** One parsed font with its advance widths at hand, in thousandths of the letter size as PDF counts them. */
final class Typeface {

    /** Glyph space units to the letter size, by ISO 32000-1, 9.2.4. */
    static final int UNITS = 1000;

    private static final int UNKNOWN = -1;
    private static final int NOT_LOOKED_UP = -2;
    private static final int NO_GLYPH = 0;
    /** Latin, Greek and Cyrillic live below; they are nearly all that a report holds. */
    private static final int COMMON = 0x500;

    private final TrueTypeFont font;
    private final CmapLookup glyphs;
    private final int[] common = new int[COMMON];
    private final Map<Integer, Integer> rare = new HashMap<>();

    Typeface(TrueTypeFont font) throws IOException {
        this.font = font;
        this.glyphs = font.getUnicodeCmapLookup();
        Arrays.fill(common, NOT_LOOKED_UP);
    }

    TrueTypeFont font() {
        return font;
    }

    boolean has(int codePoint) {
        return lookUp(codePoint) != UNKNOWN;
    }

    int width(String text) {
        int width = 0;
        for (int i = 0; i < text.length(); ) {
            int codePoint = text.codePointAt(i);
            i += Character.charCount(codePoint);
            width += Math.max(0, lookUp(codePoint));
        }
        return width;
    }

    private int lookUp(int codePoint) {
        if (codePoint >= COMMON) {
            Integer known = rare.get(codePoint);
            if (known == null) {
                known = advance(codePoint);
                rare.put(codePoint, known);
            }
            return known;
        }
        if (common[codePoint] == NOT_LOOKED_UP) {
            common[codePoint] = advance(codePoint);
        }
        return common[codePoint];
    }

    /** The rounding is that of the widths which PDFBox writes into the file, so that lines end where they are drawn. */
    private int advance(int codePoint) {
        int glyph = glyphs.getGlyphId(codePoint);
        if (glyph == NO_GLYPH) {
            return UNKNOWN;
        }
        try {
            return Math.round(font.getAdvanceWidth(glyph) * (float) UNITS / font.getUnitsPerEm());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    void close() {
        try {
            font.close();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
