package org.shortgrain.report.json;

/** A file that holds no review that this tool can read. The message says why, in one line. */
public final class UnreadableReviewException extends Exception {

    private static final long serialVersionUID = 1L;

    UnreadableReviewException(String message) {
        super(message);
    }
}
