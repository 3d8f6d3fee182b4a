package org.shortgrain.signoff;

/** A file is none of our reports, or too damaged to be read as one. The message says why, in one line. */
public final class NotAReportException extends Exception {

    private static final long serialVersionUID = 1L;

    NotAReportException(String message) {
        super(message);
    }
}
