package org.shortgrain.report.pdf.tagged;

import java.time.OffsetDateTime;
import java.util.Objects;

/**
 * What a document says about itself.
 *
 * @param title     title, shown in the window of a reader
 * @param author    who prepared it, or the tool
 * @param subject   one sentence
 * @param keywords  words separated by commas
 * @param language  language tag by BCP 47, such as {@code en-GB}
 * @param tool      name and version of the program
 * @param date      date of making, never taken from the clock here
 * @param contentId digest of what the document was made from, hexadecimal; two documents of the same content get the
 *                  same identifier
 */
public record Metadata(String title, String author, String subject, String keywords, String language, String tool,
        OffsetDateTime date, String contentId) {

    private static final int HEX = 16;
    private static final int HEX_DIGITS_OF_A_LONG = 15;

    /** Refuses missing parts. */
    public Metadata {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(author, "author");
        Objects.requireNonNull(subject, "subject");
        Objects.requireNonNull(keywords, "keywords");
        Objects.requireNonNull(language, "language");
        Objects.requireNonNull(tool, "tool");
        Objects.requireNonNull(date, "date");
        if (!contentId.matches("[0-9a-f]{16,}")) {
            throw new IllegalArgumentException("not a hexadecimal digest: " + contentId);
        }
    }

    /** {@return the number from which the file identifier is derived} */
    long seed() {
        return Long.parseLong(contentId.substring(0, HEX_DIGITS_OF_A_LONG), HEX);
    }
}
