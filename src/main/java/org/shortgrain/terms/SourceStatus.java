package org.shortgrain.terms;

import java.util.Locale;

/** How a cited fact was seen by the authors of the rulebook. Order: the firmest first. */
public enum SourceStatus {
    /** Seen in the document itself, or in its published abstract where the clause says so. */
    READ("read"),
    /** Seen quoted or reproduced in another document. */
    SECONDARY("secondary"),
    /** Own algebra or arithmetic from facts that are cited beside it. */
    DERIVED("derived"),
    /** A habit of the trade with no document behind it. */
    COMMON_PRACTICE("common practice"),
    /** Not seen: confirm against the source before anything rests on it. */
    MEMORY("memory");

    private final String word;

    SourceStatus(String word) {
        this.word = word;
    }

    /** {@return the word used in tables, rules and reports} */
    public String word() {
        return word;
    }

    /** {@return whether a checker must confirm the fact before a verdict rests on it alone} */
    public boolean needsConfirmation() {
        return this == MEMORY || this == COMMON_PRACTICE;
    }

    /**
     * {@return the status that a word stands for}
     *
     * @param word a status word, upper or lower case
     * @throws IllegalArgumentException if the word is no status word
     */
    public static SourceStatus of(String word) {
        for (SourceStatus status : values()) {
            if (status.word.equals(word.strip().toLowerCase(Locale.ROOT))) {
                return status;
            }
        }
        throw new IllegalArgumentException("'" + word + "' is no source status; expected read, secondary, derived,"
                + " common practice or memory");
    }
}
