package org.shortgrain.review;

import java.util.List;
import org.shortgrain.terms.Citation;

/**
 * A crack that was found, weighed. Nothing in it claims a cause proven.
 *
 * @param id            number in this report, such as K-01
 * @param feature       where it was found; empty text if not stated
 * @param what          the crack as stated, in words
 * @param factors       for each of the three factors, what speaks for its part in the crack and what against
 * @param contributions what pulls at the place, the largest first; empty if no stress was computed
 * @param alternatives  modes of cracking, stress corrosion first, with what speaks for and against and what would decide
 * @param onPart        what to look at next on the part
 * @param onSisters     what to look at next on sister parts
 */
public record CrackFound(String id, String feature, String what, List<Evidence> factors, List<Share> contributions,
        List<Alternative> alternatives, List<Check> onPart, List<Check> onSisters) {

    /** Copies the lists. */
    public CrackFound {
        factors = List.copyOf(factors);
        contributions = List.copyOf(contributions);
        alternatives = List.copyOf(alternatives);
        onPart = List.copyOf(onPart);
        onSisters = List.copyOf(onSisters);
    }

    /**
     * What speaks for a factor and against it.
     *
     * @param factor       the factor
     * @param speaksFor    for it, one sentence each
     * @param speaksAgainst against it
     */
    public record Evidence(Factor factor, List<String> speaksFor, List<String> speaksAgainst) {

        /** Copies the lists. */
        public Evidence {
            speaksFor = List.copyOf(speaksFor);
            speaksAgainst = List.copyOf(speaksAgainst);
        }
    }

    /**
     * One source of the sustained stress with its share.
     *
     * @param source what pulls
     * @param amount how much
     * @param share  share of the best estimate of the sum, 0 to 1
     */
    public record Share(String source, Amount amount, double share) {
    }

    /**
     * A mode of cracking.
     *
     * @param name          its name
     * @param speaksFor     what of the statements speaks for it
     * @param speaksAgainst what speaks against it
     * @param decides       the laboratory observation that decides
     * @param source        where that practice comes from
     */
    public record Alternative(String name, List<String> speaksFor, List<String> speaksAgainst, String decides,
            Citation source) {

        /** Copies the lists. */
        public Alternative {
            speaksFor = List.copyOf(speaksFor);
            speaksAgainst = List.copyOf(speaksAgainst);
        }
    }

    /**
     * Something to look at.
     *
     * @param action what
     * @param source where it comes from
     */
    public record Check(String action, Citation source) {
    }
}
