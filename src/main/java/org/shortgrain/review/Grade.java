package org.shortgrain.review;

import java.util.Locale;

/** Grade of a finding, the gravest first. */
public enum Grade {
    /** Sign-off stops. */
    OBJECTION,
    /** Sign-off only with the action done. */
    CONDITION,
    /** Cannot be judged: a datum is missing or contradictory. */
    QUESTION,
    /** Good practice that weakens a factor further. */
    ADVICE;

    /** {@return the word used in rules and outputs} */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
