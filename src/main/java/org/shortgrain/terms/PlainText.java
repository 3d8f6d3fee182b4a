package org.shortgrain.terms;

import java.util.ArrayList;
import java.util.List;

/** Text for a terminal: lines of bounded length, and nothing in them that a terminal would obey. */
public final class PlainText {

    private PlainText() {
    }

    /**
     * {@return a text on lines of bounded length}
     *
     * <p>Lines break at spaces only; white space counts as one space. A word longer than a line stays whole, so that it
     * can be copied.
     *
     * @param first  what stands before the first line
     * @param indent what stands before the others
     * @param text   the text
     * @param width  most columns of a line, what stands before it included
     */
    public static List<String> lines(String first, String indent, String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder(first);
        String between = "";
        for (String word : clean(text).split(" ")) {
            if (!between.isEmpty() && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line = new StringBuilder(indent);
                between = "";
            }
            line.append(between).append(word);
            between = " ";
        }
        lines.add(line.toString().stripTrailing());
        return lines;
    }

    /**
     * {@return a text in one line without control characters: a description may come from a stranger}
     *
     * @param text the text
     */
    public static String clean(String text) {
        return text.replaceAll("[\\s\\p{Z}]+", " ").replaceAll("\\p{Cc}|\\p{Cf}", "\uFFFD").strip();
    }

    /**
     * {@return a text filled with spaces to a width}
     *
     * @param text  the text
     * @param width columns
     */
    public static String padded(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }
}
