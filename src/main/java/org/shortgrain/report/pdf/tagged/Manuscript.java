package org.shortgrain.report.pdf.tagged;

import java.util.List;
import java.util.Objects;

/**
 * A document before it is set.
 *
 * @param metadata    what it says about itself
 * @param running     head and foot of its pages
 * @param paper       size of its sheets
 * @param blocks      its content in reading order
 * @param attachments files that it carries
 */
public record Manuscript(Metadata metadata, Running running, Paper paper, List<Block> blocks,
        List<Attachment> attachments) {
    /** Copies the lists. */
    public Manuscript {
        Objects.requireNonNull(metadata, "metadata");
        Objects.requireNonNull(running, "running");
        Objects.requireNonNull(paper, "paper");
        blocks = List.copyOf(blocks);
        attachments = List.copyOf(attachments);
    }
}
