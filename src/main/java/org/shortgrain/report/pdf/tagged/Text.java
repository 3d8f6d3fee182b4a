package org.shortgrain.report.pdf.tagged;

import java.util.ArrayList;
import java.util.List;
import org.shortgrain.report.pdf.tagged.Inline.Style;

/**
 * Running text: pieces set one after the other.
 *
 * @param parts the pieces in reading order
 */
public record Text(List<Inline> parts) {

    /** A text without letters. */
    public static final Text EMPTY = new Text(List.of());

    /** Copies the list. */
    public Text {
        parts = List.copyOf(parts);
    }

    /**
     * {@return plain text}
     *
     * @param text the letters
     */
    public static Text of(String text) {
        return EMPTY.plain(text);
    }

    /**
     * {@return this text followed by plain letters}
     *
     * @param text the letters
     */
    public Text plain(String text) {
        return then(new Inline.Run(text, Style.PLAIN));
    }

    /**
     * {@return this text followed by bold letters}
     *
     * @param text the letters
     */
    public Text bold(String text) {
        return then(new Inline.Run(text, Style.BOLD));
    }

    /**
     * {@return this text followed by oblique letters}
     *
     * @param text the letters
     */
    public Text italic(String text) {
        return then(new Inline.Run(text, Style.ITALIC));
    }

    /**
     * {@return this text followed by letters of fixed pitch}
     *
     * @param text the letters
     */
    public Text mono(String text) {
        return then(new Inline.Run(text, Style.MONO));
    }

    /**
     * {@return this text followed by a link}
     *
     * @param text   the letters of the link
     * @param anchor where it leads
     */
    public Text link(String text, String anchor) {
        return then(new Inline.Link(text, Style.PLAIN, anchor));
    }

    /**
     * {@return this text followed by a framed word}
     *
     * @param word  the word
     * @param frame its frame
     */
    public Text badge(String word, Inline.Frame frame) {
        return then(new Inline.Badge(word, frame));
    }

    /**
     * {@return this text followed by the page number of a place}
     *
     * @param anchor the place
     */
    public Text pageOf(String anchor) {
        return then(new Inline.PageOf(anchor));
    }

    /**
     * {@return this text followed by one more piece}
     *
     * @param part the piece
     */
    public Text then(Inline part) {
        if (parts.isEmpty()) {
            return new Text(List.of(part));
        }
        List<Inline> all = new ArrayList<>(parts);
        all.add(part);
        return new Text(all);
    }

    /**
     * {@return this text followed by another}
     *
     * @param other the other text
     */
    public Text then(Text other) {
        if (parts.isEmpty()) {
            return other;
        }
        List<Inline> all = new ArrayList<>(parts);
        all.addAll(other.parts);
        return new Text(all);
    }

    /** {@return the letters alone, for bookmarks and descriptions} */
    public String letters() {
        StringBuilder letters = new StringBuilder();
        for (Inline part : parts) {
            if (part instanceof Inline.Run run) {
                letters.append(run.text());
            } else if (part instanceof Inline.Link link) {
                letters.append(link.text());
            } else if (part instanceof Inline.Badge badge) {
                letters.append(badge.word());
            }
        }
        return letters.toString();
    }
}
