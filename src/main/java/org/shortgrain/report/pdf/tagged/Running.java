package org.shortgrain.report.pdf.tagged;

import java.util.Objects;

/**
 * What stands at the head and foot of every page, so that a loose sheet can be traced.
 *
 * @param head   what the document is about, at the head on the left
 * @param banner status in capitals, framed, at the head on the right; empty for none
 * @param foot   identification of the content, at the foot on the left
 * @param middle number and date of the document, at the foot in the middle
 * @param pages  words around the page numbers, with {@code {page}} for the page and {@code {pages}} for their number
 */
public record Running(String head, String banner, String foot, String middle, String pages) {
    /** Refuses missing parts. */
    public Running {
        Objects.requireNonNull(head, "head");
        Objects.requireNonNull(banner, "banner");
        Objects.requireNonNull(foot, "foot");
        Objects.requireNonNull(middle, "middle");
        Objects.requireNonNull(pages, "pages");
    }
}
