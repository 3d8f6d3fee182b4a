package org.shortgrain.reference;

import java.util.Optional;
import org.shortgrain.terms.Citation;

/**
 * Something to say about a temper designation.
 *
 * @param kind      what about
 * @param statement the remark in words
 * @param source    source, where there is one
 */
public record TemperRemark(Kind kind, String statement, Optional<Citation> source) {

    /** What a remark is about. */
    public enum Kind {
        /** The text is no temper. */
        UNREADABLE(true),
        /** The digits are not in the list of tempers. */
        UNLISTED(true),
        /** The alloy does not come in this temper. */
        NO_SUCH_PAIR(true),
        /** The form cannot carry these stress relief digits. */
        FORM_CONTRADICTS_DIGITS(true),
        /** The ageing steps on the card do not lead to this temper. */
        AGEING_CONTRADICTS(true),
        /** Nothing of the alloy in this temper stands in any table. */
        NO_ROW(false),
        /** Digits that this form carries hardly ever. */
        DIGITS_TO_QUERY(false),
        /** Digits are missing. */
        DIGITS_OPEN(false),
        /** No mechanical stress relief: the quench stress is still there. */
        UNRELIEVED(false),
        /** The user heat treated it: mill properties need proof. */
        USER_TREATED(false),
        /** An old name. */
        OLD_NAME(false),
        /** Not among the tempers that the forging specification lists for the alloy. */
        NOT_ON_FORGING_LIST(false);

        private final boolean contradiction;

        Kind(boolean contradiction) {
            this.contradiction = contradiction;
        }

        /** {@return whether drawing or card contradict themselves; else a remark asks or informs} */
        public boolean contradiction() {
            return contradiction;
        }
    }
}
