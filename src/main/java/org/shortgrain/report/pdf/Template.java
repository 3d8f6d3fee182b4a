package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shortgrain.report.pdf.tagged.Inline;
import org.shortgrain.report.pdf.tagged.Inline.Style;
import org.shortgrain.report.pdf.tagged.Text;

/** One entry of the wording: paragraphs of letters and places for values. */
final class Template {

    private static final Pattern TOKEN = Pattern.compile("\\*\\*|`|\\$\\{([^}]*)}|\\$");
    /** Most entries are plain words: without one of these there is nothing to read. */
    private static final String MARKS = "*`$";
    private static final Pattern PARAGRAPH_END = Pattern.compile("\\n\\s*\\n");

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
     * @param text         its text
     * @param placeholders the values that it must use
     * @throws IllegalArgumentException if it misses one, knows another, or leaves a mark open
     */
    static Template read(String where, String text, List<String> placeholders) {
        Set<String> used = new HashSet<>();
        List<List<Piece>> paragraphs = new ArrayList<>();
        for (String paragraph : PARAGRAPH_END.split(text.strip())) {
            paragraphs.add(pieces(where, paragraph, placeholders, used));
        }
        for (String placeholder : placeholders) {
            if (!used.contains(placeholder)) {
                throw new IllegalArgumentException(where + ": the placeholder ${" + placeholder + "} is missing");
            }
        }
        return new Template(paragraphs);
    }

    private static List<Piece> pieces(String where, String paragraph, List<String> placeholders, Set<String> used) {
        if (!isMarked(paragraph)) {
            return List.of(new Piece(paragraph, Style.PLAIN, false));
        }
        List<Piece> pieces = new ArrayList<>();
        Style style = Style.PLAIN;
        Matcher token = TOKEN.matcher(paragraph);
        int from = 0;
        while (token.find()) {
            addLetters(pieces, paragraph.substring(from, token.start()), style);
            from = token.end();
            switch (token.group()) {
                case "**" -> style = style == Style.BOLD ? Style.PLAIN : Style.BOLD;
                case "`" -> style = style == Style.MONO ? Style.PLAIN : Style.MONO;
                case "$" -> throw new IllegalArgumentException(where + ": a placeholder is written ${name}");
                default -> {
                    String name = token.group(1);
                    if (!placeholders.contains(name)) {
                        throw new IllegalArgumentException(where + ": the placeholder ${" + name
                                + "} is not known here; known are " + placeholders);
                    }
                    used.add(name);
                    pieces.add(new Piece(name, style, true));
                }
            }
        }
        addLetters(pieces, paragraph.substring(from), style);
        if (style != Style.PLAIN) {
            throw new IllegalArgumentException(where + ": a mark ** or ` is opened and not closed");
        }
        return pieces;
    }

    private static boolean isMarked(String paragraph) {
        for (int i = 0; i < paragraph.length(); i++) {
            if (MARKS.indexOf(paragraph.charAt(i)) >= 0) {
                return true;
            }
        }
        return false;
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
