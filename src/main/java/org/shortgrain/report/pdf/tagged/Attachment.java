package org.shortgrain.report.pdf.tagged;

import java.util.Objects;

/**
 * A file carried by the document.
 *
 * @param name         file name
 * @param mimeType     media type
 * @param description  what it is, for the reader's list of attachments
 * @param relationship what it is to the document
 * @param bytes        its content; not copied, not to be changed afterwards
 */
public record Attachment(String name, String mimeType, String description, Relationship relationship, byte[] bytes) {

    /** What an attached file is to the document (ISO 19005-3, annex E). */
    public enum Relationship {
        /** The document was made from it. */
        SOURCE("Source"),
        /** It holds the numbers shown in the document. */
        DATA("Data"),
        /** It adds to the document. */
        SUPPLEMENT("Supplement");

        private final String word;

        Relationship(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    /** Refuses missing parts. */
    public Attachment {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(mimeType, "mimeType");
        Objects.requireNonNull(description, "description");
        Objects.requireNonNull(relationship, "relationship");
        Objects.requireNonNull(bytes, "bytes");
    }
}
