package org.shortgrain.report.pdf.tagged;

import java.util.Objects;

/** A piece of running text. */
public sealed interface Inline {

    /** How letters are set. */
    enum Style {
        /** As the surrounding block. */
        PLAIN,
        /** Bold. */
        BOLD,
        /** Oblique. */
        ITALIC,
        /** Fixed pitch: hashes, paths, input text. */
        MONO
    }

    /** The frame around a badge. The four can be told apart without colour. */
    enum Frame {
        /** White letters on black. */
        SOLID,
        /** A thick frame. */
        HEAVY,
        /** A thin frame. */
        THIN,
        /** A broken frame. */
        DASHED
    }

    /**
     * Letters of one style. A line feed in the text ends the line.
     *
     * @param text  any text; what the font lacks is replaced and reported
     * @param style how it is set
     */
    record Run(String text, Style style) implements Inline {
        /** Refuses missing parts. */
        public Run {
            Objects.requireNonNull(text, "text");
            Objects.requireNonNull(style, "style");
        }
    }

    /**
     * Letters that lead to another place of the document.
     *
     * @param text   the letters
     * @param style  how they are set
     * @param anchor the name of the place
     */
    record Link(String text, Style style, String anchor) implements Inline {
        /** Refuses missing parts. */
        public Link {
            Objects.requireNonNull(text, "text");
            Objects.requireNonNull(style, "style");
            Objects.requireNonNull(anchor, "anchor");
        }
    }

    /**
     * The number of the page on which an anchor lies, for readers of the printed sheet.
     *
     * @param anchor the name of the place
     */
    record PageOf(String anchor) implements Inline {
        /** Refuses missing parts. */
        public PageOf {
            Objects.requireNonNull(anchor, "anchor");
        }
    }

    /**
     * A framed word, such as a grade.
     *
     * @param word  the word
     * @param frame the frame
     */
    record Badge(String word, Frame frame) implements Inline {
        /** Refuses missing parts. */
        public Badge {
            Objects.requireNonNull(word, "word");
            Objects.requireNonNull(frame, "frame");
        }
    }
}
