package org.shortgrain.reference;

import java.util.Locale;

/** Lines of plain text, none longer than 80 characters; longer text is broken at blanks and indented. */
final class TextPage {
    static final int WIDTH = 80;

    private final StringBuilder text = new StringBuilder();

    /** Adds a heading with an empty line before it. */
    TextPage heading(String words) {
        if (text.length() > 0) {
            text.append('\n');
        }
        return line(0, 0, words.toUpperCase(Locale.ROOT));
    }

    /**
     * Adds a text.
     *
     * @param indent  blanks before the first line
     * @param hanging blanks before the lines that follow
     * @param words   the text
     */
    TextPage line(int indent, int hanging, String words) {
        String rest = words.strip();
        int lead = indent;
        while (rest.length() > WIDTH - lead) {
            int cut = rest.lastIndexOf(' ', WIDTH - lead);
            if (cut <= 0) {
                cut = WIDTH - lead;
            }
            text.append(" ".repeat(lead)).append(rest.substring(0, cut).stripTrailing()).append('\n');
            rest = rest.substring(cut).stripLeading();
            lead = hanging;
        }
        text.append(" ".repeat(lead)).append(rest).append('\n');
        return this;
    }

    /**
     * Adds a text behind a label of fixed width.
     *
     * @param indent blanks before the label
     * @param width  width of the label
     * @param label  label
     * @param words  the text
     */
    TextPage labelled(int indent, int width, String label, String words) {
        String padded = label.length() >= width ? label + " " : label + " ".repeat(width - label.length());
        return line(indent, indent + width, padded + words);
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
