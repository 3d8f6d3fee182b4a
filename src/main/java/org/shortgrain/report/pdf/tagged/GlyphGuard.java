package org.shortgrain.report.pdf.tagged;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Keeps out of the page what the fonts cannot show or what would show something else than it is.
 *
 * <p>Text of the user's files reaches the page through here. A character that a face lacks is set in the regular face;
 * a character that this lacks as well, a control character, or an invisible direction mark (which could turn a part
 * number round before the reader's eyes) becomes U+FFFD, and the replacement is reported.
 */
final class GlyphGuard {

    private static final int REPLACEMENT = 0xFFFD;
    private static final char FIRST_PRINTABLE = ' ';
    private static final char LAST_PRINTABLE = '~';

    private final Fonts fonts;
    private final SortedSet<String> warnings = new TreeSet<>();

    GlyphGuard(Fonts fonts) {
        this.fonts = fonts;
    }

    /** Letters that one face has all of. */
    record Span(Face face, String text) {
    }

    /** {@return what was replaced, each character once} */
    List<String> warnings() {
        return List.copyOf(warnings);
    }

    /**
     * {@return the text in spans of one face each; line feeds are kept}
     *
     * @param face the face wanted
     * @param text any text
     */
    List<Span> spans(Face face, String text) {
        if (isPlain(text)) {
            return text.isEmpty() ? List.of() : List.of(new Span(face, text));
        }
        List<Span> spans = new ArrayList<>();
        StringBuilder open = new StringBuilder();
        Face openFace = face;
        String composed = isComposed(text) ? text : Normalizer.normalize(text, Normalizer.Form.NFC);
        for (int i = 0; i < composed.length(); ) {
            int codePoint = composed.codePointAt(i);
            i += Character.charCount(codePoint);
            int shown = shown(codePoint);
            Face shownIn = shown == '\n' || fonts.has(face, shown) ? face : Face.REGULAR;
            if (shownIn != openFace && !open.isEmpty()) {
                spans.add(new Span(openFace, open.toString()));
                open.setLength(0);
            }
            openFace = shownIn;
            open.appendCodePoint(shown);
        }
        if (!open.isEmpty()) {
            spans.add(new Span(openFace, open.toString()));
        }
        return spans;
    }

    /**
     * {@return the text with nothing in it that one face lacks}
     *
     * @param face the face
     * @param text any text
     */
    String only(Face face, String text) {
        if (isPlain(text)) {
            return text.replace('\n', ' ');
        }
        StringBuilder kept = new StringBuilder();
        for (Span span : spans(face, text)) {
            String letters = span.text();
            for (int i = 0; i < letters.length(); ) {
                int codePoint = letters.codePointAt(i);
                i += Character.charCount(codePoint);
                boolean lacks = codePoint != '\n' && !fonts.has(face, codePoint);
                kept.appendCodePoint(codePoint == '\n' ? ' ' : lacks ? '?' : codePoint);
            }
        }
        return kept.toString();
    }

    /**
     * {@return whether a text holds only characters that composing (NFC) leaves as they are whatever stands beside them}
     *
     * <p>Those that reports are made of: Latin letters, Greek and Cyrillic ones from alpha on, dashes, arrows and the signs
     * of mathematics (Unicode, NFC_Quick_Check yes and combining class 0). The tables for all others take long to load.
     */
    static boolean isComposed(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean letter = c < '\u0300' || c >= '\u0388' && c <= '\u0482';
            boolean sign = c >= '\u2002' && c <= '\u20cf' || c >= '\u212c' && c <= '\u2328';
            if (!letter && !sign) {
                return false;
            }
        }
        return true;
    }

    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if ((c < FIRST_PRINTABLE || c > LAST_PRINTABLE) && c != '\n') {
                return false;
            }
        }
        return true;
    }

    private int shown(int codePoint) {
        if (codePoint == '\n') {
            return codePoint;
        }
        if (codePoint == '\t' || codePoint == '\r') {
            return ' ';
        }
        int kind = Character.getType(codePoint);
        boolean invisible = kind == Character.CONTROL || kind == Character.FORMAT || kind == Character.SURROGATE
                || kind == Character.LINE_SEPARATOR || kind == Character.PARAGRAPH_SEPARATOR;
        if (!invisible && fonts.has(Face.REGULAR, codePoint)) {
            return codePoint;
        }
        warnings.add(String.format(Locale.ROOT, "U+%04X cannot be printed and stands as %s", codePoint,
                Character.toString(REPLACEMENT)));
        return REPLACEMENT;
    }
}
