package org.shortgrain.review;

import java.util.Locale;

/** Whether a factor is there at a feature. */
public enum FactorState {
    /** The factor is there. */
    PRESENT,
    /** The factor is shown not to be there. */
    ABSENT,
    /** Cannot be said from what is declared. */
    UNKNOWN;

    /** {@return the word used in outputs} */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
