package org.shortgrain.report.pdf.tagged;

import java.util.List;
import java.util.Optional;

/**
 * One line of text, broken and measured.
 *
 * @param fragments its pieces from left to right
 * @param width     its width without the space at its end, points
 */
record Line(List<Fragment> fragments, double width) {

    /** What stands in a fragment. */
    sealed interface Matter {
    }

    /** Letters of one face. */
    record Letters(Face face, String text, Optional<LinkMark> link) implements Matter {
    }

    /** A page number that is known only when all pages are. */
    record PageNumber(Face face, String anchor) implements Matter {
    }

    /** A framed word. */
    record Framed(String word, Inline.Frame frame) implements Matter {
    }

    /**
     * A piece of a line.
     *
     * @param matter what stands there
     * @param x      its left edge from the beginning of the line, points
     * @param width  its width, points
     */
    record Fragment(Matter matter, double x, double width) {
    }

    /** A link of a text; its fragments share one structure element. */
    static final class LinkMark {
        private final Inline.Link link;
        private Optional<StructNode> node = Optional.empty();

        LinkMark(Inline.Link link) {
            this.link = link;
        }

        String anchor() {
            return link.anchor();
        }

        String text() {
            return link.text();
        }

        StructNode node(StructNode parent) {
            if (node.isEmpty()) {
                node = Optional.of(parent.child("Link"));
            }
            return node.get();
        }
    }
}
