package org.shortgrain.review;

import java.util.Locale;

/** Which of the three factors of stress-corrosion cracking a rule or finding is about. */
public enum Factor {
    /** A susceptible material. */
    MATERIAL,
    /** A sustained tensile stress. */
    STRESS,
    /** An aggressive environment. */
    ENVIRONMENT,
    /** The three together. */
    COMBINED,
    /** The papers: drawing, card, evidence. */
    RECORD;

    /** {@return the word used in rules and outputs} */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
