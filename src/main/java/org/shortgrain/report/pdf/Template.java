package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shortgrain.report.pdf.tagged.Inline;
import org.shortgrain.report.pdf.tagged.Inline.Style;
import org.shortgrain.report.pdf.tagged.Text;

/** One entry of the wording: paragraphs of letters and places for values. */
final class Template {

    private static final String BOLD = "**";
    private static final char MONO = '`';
    private static final char VALUE = '$';

    private final List<List<Piece>> paragraphs;

    private Template(List<List<Piece>> paragraphs) {
        this.paragraphs = paragraphs;
    }

    /** Letters, or the place of a value when {@code slot} is set. */
    private record Piece(String text, Style style, boolean slot) {
    }

    /**
     * Reads an entry.
     *
     * @param where        file and line, for messages
     * @param paragraphs   its text
     * @param placeholders the values that it must use
     * @throws IllegalArgumentException if it misses one, knows another, or leaves a mark open
     */
    static Template read(String where, List<String> paragraphs, List<String> placeholders) {
        Set<String> used = new HashSet<>();
        List<List<Piece>> read = new ArrayList<>();
        for (String paragraph : paragraphs.isEmpty() ? List.of("") : paragraphs) {
            read.add(pieces(where, paragraph, placeholders, used));
        }
        for (String placeholder : placeholders) {
            if (!used.contains(placeholder)) {
                throw new IllegalArgumentException(where + ": the placeholder ${" + placeholder + "} is missing");
            }
        }
        return new Template(read);
    }

    private static List<Piece> pieces(String where, String paragraph, List<String> placeholders, Set<String> used) {
        List<Piece> pieces = new ArrayList<>();
        Style style = Style.PLAIN;
        int from = 0;
        int at = nextMark(paragraph, 0);
        while (at < paragraph.length()) {
            addLetters(pieces, paragraph.substring(from, at), style);
            if (paragraph.startsWith(BOLD, at)) {
                style = style == Style.BOLD ? Style.PLAIN : Style.BOLD;
                from = at + BOLD.length();
            } else if (paragraph.charAt(at) == MONO) {
                style = style == Style.MONO ? Style.PLAIN : Style.MONO;
                from = at + 1;
            } else {
                String name = placeholder(where, paragraph, at, placeholders);
                used.add(name);
                pieces.add(new Piece(name, style, true));
                from = at + "${}".length() + name.length();
            }
            at = nextMark(paragraph, from);
        }
        addLetters(pieces, paragraph.substring(from), style);
        if (style != Style.PLAIN) {
            throw new IllegalArgumentException(where + ": a mark ** or ` is opened and not closed");
        }
        return pieces;
    }

    /** {@return where the next mark begins; the end of the paragraph when there is none} */
    private static int nextMark(String paragraph, int from) {
        int next = paragraph.length();
        for (int mark : new int[] {paragraph.indexOf(BOLD, from), paragraph.indexOf(MONO, from),
                paragraph.indexOf(VALUE, from)}) {
            next = mark < 0 ? next : Math.min(next, mark);
        }
        return next;
    }

    private static String placeholder(String where, String paragraph, int at, List<String> placeholders) {
        int end = paragraph.indexOf('}', at);
        if (!paragraph.startsWith("${", at) || end < 0) {
            throw new IllegalArgumentException(where + ": a placeholder is written ${name}");
        }
        String name = paragraph.substring(at + "${".length(), end);
        if (!placeholders.contains(name)) {
            throw new IllegalArgumentException(where + ": the placeholder ${" + name + "} is not known here; known are "
                    + placeholders);
        }
        return name;
    }

    private static void addLetters(List<Piece> pieces, String letters, Style style) {
        if (!letters.isEmpty()) {
            pieces.add(new Piece(letters, style, false));
        }
    }

    /** {@return the paragraphs with values in their places} */
    List<Text> filled(Map<String, Text> values) {
        List<Text> texts = new ArrayList<>();
        for (List<Piece> paragraph : paragraphs) {
            List<Inline> parts = new ArrayList<>();
            for (Piece piece : paragraph) {
                if (piece.slot()) {
                    for (Inline part : values.get(piece.text()).parts()) {
                        parts.add(styled(part, piece.style()));
                    }
                } else {
                    parts.add(new Inline.Run(piece.text(), piece.style()));
                }
            }
            texts.add(new Text(parts));
        }
        return texts;
    }

    private static Inline styled(Inline part, Style style) {
        if (style != Style.PLAIN && part instanceof Inline.Run run && run.style() == Style.PLAIN) {
            return new Inline.Run(run.text(), style);
        }
        if (style != Style.PLAIN && part instanceof Inline.Link link && link.style() == Style.PLAIN) {
            return new Inline.Link(link.text(), style, link.anchor());
        }
        return part;
    }
}
