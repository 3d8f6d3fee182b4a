package org.shortgrain.reference;

import java.util.Optional;
import java.util.OptionalDouble;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.GrainDirection;

/**
 * What one scheme says, in its own word.
 *
 * @param scheme     key of the scheme, such as {@code g64_letter}
 * @param title      title of the scheme
 * @param word       the scheme's own word
 * @param meaning    what the scheme means by it
 * @param worst      lower end on the common scale
 * @param best       upper end on the common scale; differs from {@code worst} where the scheme has fewer steps
 * @param shareOfYield share of the minimum yield strength up to which the word expects no cracking, if it names one
 * @param floor      stress below which that share does not fall (Pa), if the word names one
 * @param direction  direction that the row rates; empty where the scheme classes the material by its worst direction
 * @param reading    how the row bears on the question
 * @param row        the row's key in words
 * @param citation   source
 * @param confidence how sure a row from memory is; empty for others
 * @param remark     remark of the row
 */
public record RatingHit(String scheme, String title, String word, String meaning, SccLevel worst, SccLevel best,
        OptionalDouble shareOfYield, OptionalDouble floor, Optional<GrainDirection> direction, Reading reading, String row, Citation citation, String confidence, String remark) {

    /** How a row bears on the question. */
    public enum Reading {
        /** It speaks for exactly this. */
        APPLIES("applies"),
        /** A datum is open or the row is for a near relative: it can raise a concern but not clear one. */
        MAY_APPLY("may apply"),
        /** It classes the material by its worst direction; a row for this direction goes before it. */
        WORST_DIRECTION("worst direction");

        private final String word;

        Reading(String word) {
            this.word = word;
        }

        /** {@return how a report names it} */
        public String word() {
            return word;
        }
    }

    boolean firm() {
        return !citation.status().needsConfirmation();
    }
}
