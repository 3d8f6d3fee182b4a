package org.shortgrain.reference;

import java.util.Optional;

/** A temper or condition, taken apart as far as its designation allows. */
public sealed interface Temper {

    /** {@return the text as the drawing gives it; empty when none is given} */
    String written();

    /** {@return the designation in one spelling, such as {@code T7351}, {@code H1025}, {@code HT-180} or {@code annealed}} */
    String normal();

    /** Which digits of a heat-treated aluminium temper are open. */
    enum OpenDigits {
        /** None: the designation is complete. */
        NONE,
        /** The digits of the stress relief, as in T73xx, or T6 on a plate. */
        RELIEF,
        /** The digit after T7 as well, as in T7x. */
        SECOND
    }

    /** Where the ageing of an aluminium temper ends. */
    enum State {
        /** Naturally aged. */
        NATURAL,
        /** Aged to about peak strength. */
        PEAK,
        /** Aged past the peak. */
        OVERAGED,
        /** Depends on the alloy. */
        VARIES,
        /** Digits that the list of tempers does not hold. */
        UNLISTED
    }

    /**
     * A T temper of aluminium, by the forms of ANSI H35.1.
     *
     * @param written   text as given
     * @param normal    normal spelling; an obsolete name is replaced by its successor
     * @param base      the digit after the T (or 10)
     * @param digits    further digits of the treatment; empty when none
     * @param relief    digits of the mechanical stress relief, 51, 510, 511, 52 or 54; empty when none
     * @param open      which digits are open
     * @param state     where the ageing ends
     * @param overAgeing order within T7, 1 for T79 to 4 for T73; 0 elsewhere
     * @param userTreated whether the user, not the mill, heat treated it (T42, T62, T72, Txx2)
     * @param formerName the obsolete name that was given, if one was
     */
    record HeatTreated(String written, String normal, String base, String digits, String relief, OpenDigits open,
            State state, int overAgeing, boolean userTreated, Optional<String> formerName) implements Temper {

        /** {@return whether it is aged past the peak} */
        public boolean overaged() {
            return state == State.OVERAGED;
        }

        /** {@return whether it carries digits of a mechanical stress relief} */
        public boolean mechanicallyRelieved() {
            return !relief.isEmpty();
        }

        HeatTreated withReliefOpen() {
            return new HeatTreated(written, normal, base, digits, relief, OpenDigits.RELIEF, state, overAgeing,
                    userTreated, formerName);
        }
    }

    /**
     * An unstable or basic temper of aluminium: F, O, O1, W, W51.
     *
     * @param written text as given
     * @param normal  normal spelling
     */
    record Basic(String written, String normal) implements Temper {
    }

    /**
     * A strain-hardened temper of aluminium, such as H116.
     *
     * @param written text as given
     * @param normal  normal spelling
     */
    record StrainHardened(String written, String normal) implements Temper {
    }

    /**
     * A condition of precipitation-hardening steel, such as H1025, SCT1000, CH900, RH950 or TH1050.
     *
     * @param written    text as given
     * @param normal     normal spelling
     * @param treatment  the letters
     * @param fahrenheit the ageing temperature in the designation, in degrees Fahrenheit
     */
    record AgedCondition(String written, String normal, String treatment, int fahrenheit) implements Temper {
    }

    /**
     * Low-alloy steel heat treated to a strength.
     *
     * @param written text as given
     * @param normal  normal spelling, such as {@code HT-180}
     * @param ksi     minimum tensile strength in ksi, as the designation has it
     */
    record HardenedTo(String written, String normal, int ksi) implements Temper {
    }

    /**
     * Copper alloy rolled cold.
     *
     * @param written text as given
     * @param normal  normal spelling, such as {@code CW37}
     * @param percent reduction in percent
     */
    record ColdWorked(String written, String normal, int percent) implements Temper {
    }

    /**
     * A condition that has a word and no code, such as annealed.
     *
     * @param written text as given
     * @param normal  the word
     */
    record Condition(String written, String normal) implements Temper {
    }

    /**
     * No temper given, or "as usual".
     *
     * @param written text as given
     */
    record NotStated(String written) implements Temper {
        @Override
        public String normal() {
            return "not stated";
        }
    }

    /**
     * A text that is no temper.
     *
     * @param written text as given
     * @param reason  what is wrong with it
     */
    record Unreadable(String written, String reason) implements Temper {
        @Override
        public String normal() {
            return written;
        }
    }
}
