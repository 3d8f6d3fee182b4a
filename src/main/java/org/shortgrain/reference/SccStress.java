package org.shortgrain.reference;

import java.util.Locale;
import java.util.OptionalDouble;
import org.shortgrain.terms.Citation;

/**
 * A stress at which a material did or did not crack, or up to which a scheme expects it not to.
 *
 * @param kind       what kind of number it is
 * @param low        lower end (Pa); empty for tests told only in percent of yield
 * @param high       upper end (Pa); empty as {@code low}
 * @param statement  what was done or meant, in words
 * @param mayApply   whether the row only may apply: a datum is open, or it is for a near relative
 * @param row        the row's key in words
 * @param citation   source
 * @param confidence how sure a row from memory is; empty for others
 * @param remark     remark of the row
 */
public record SccStress(Kind kind, OptionalDouble low, OptionalDouble high, String statement, boolean mayApply,
        String row, Citation citation, String confidence, String remark) {

    /** Kinds of number; they must not be mixed up in a report. */
    public enum Kind {
        /** Threshold found by tests. */
        THRESHOLD("threshold", true),
        /** Highest stress tried without failure: the threshold lies at or above it. */
        HIGHEST_TRIED("no failure at highest stress tried", true),
        /** Stress at which specimens of a qualification test must not fail. Not a design value. */
        QUALIFICATION("qualification", true),
        /** Share of the minimum yield strength up to which a letter expects no cracking. */
        SHARE_OF_YIELD("share of yield by letter", true),
        /** What materials of this level commonly show; only where nothing else is published. */
        TYPICAL_OF_LEVEL("typical of the level", true),
        /** Tests passed at a percentage of yield. */
        PASSED_SHARE("no failure at percent of yield", false),
        /** Some tests failed at a percentage of yield. */
        FAILED_SHARE("some failures at percent of yield", false),
        /** Another kind of test; not comparable. */
        OTHER_TEST("other test", false),
        /** A claim in a patent. */
        PATENT_CLAIM("patent claim", false);

        private final String word;
        private final boolean limits;

        Kind(String word, boolean limits) {
            this.word = word;
            this.limits = limits;
        }

        /** {@return the word of the tables and reports} */
        public String word() {
            return word;
        }

        /** {@return whether the sustained stress may be compared with it} */
        public boolean limits() {
            return limits;
        }

        static Kind of(Row row) {
            String text = row.text("kind").toLowerCase(Locale.ROOT);
            for (Kind kind : values()) {
                if (kind.word.equals(text)) {
                    return kind;
                }
            }
            row.fault("kind '" + text + "' is unknown");
            return OTHER_TEST;
        }
    }

    boolean firm() {
        return !citation.status().needsConfirmation();
    }
}
