package org.shortgrain.part;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What people decide on a finding, in the words of the trade. */
public enum Decision {
    /** The design is changed. */
    REDESIGN("the design is changed"),
    /** Operations or their order are changed. */
    ROUTE_CHANGE("operations or their order are changed"),
    /** Leave to depart from the requirement, given before making (ISO 9000, 3.12.6). */
    DEVIATION_PERMIT("leave to depart from the requirement, given before making"),
    /** Leave to use what was made and does not conform (ISO 9000, 3.12.5). */
    CONCESSION("leave to use what was made and does not conform"),
    /** A material usage agreement: acceptable though it does not meet the standard. */
    MUA("a material usage agreement"),
    /** Accepted; no requirement is broken. */
    ACCEPT_NO_BREACH("accepted, since no requirement is broken"),
    /** Left as it is and watched. */
    INSPECT_AND_MONITOR("left as it is and watched"),
    /** The datum asked for will be supplied. */
    DATA_TO_BE_SUPPLIED("the datum asked for will be supplied"),
    /** The reviewer overrules the rule: judged not applicable here. */
    REJECTED_BY_REVIEWER("overruled: the rule is judged not applicable here");

    private final String meaning;

    Decision(String meaning) {
        this.meaning = meaning;
    }

    /** {@return the word of files and outputs} */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** {@return what it means} */
    public String meaning() {
        return meaning;
    }

    /**
     * {@return the decision that a word stands for}
     *
     * @param word a word of a file
     */
    public static Optional<Decision> of(String word) {
        return Arrays.stream(values()).filter(one -> one.word().equals(word)).findFirst();
    }
}
