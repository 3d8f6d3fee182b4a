package org.shortgrain.review;

import java.util.List;
import java.util.Optional;
import org.shortgrain.part.Location;
import org.shortgrain.terms.Citation;

/**
 * One finding: one requirement, its evidence and what would mend it.
 *
 * @param id                number in this report, such as F-01
 * @param rule              id of the rule
 * @param grade             its grade
 * @param factor            the factor it is about
 * @param feature           the feature it is about; empty if it is about the whole part
 * @param title             the rule's title
 * @param statement         what is wrong here, in one or two sentences
 * @param evidence          what in the description or the computation shows it
 * @param why               why it matters
 * @param remedies          what would mend it, in order of preference
 * @param sources           where the rule comes from
 * @param at                places in the description
 * @param foldedIn          rules with the same cause that this finding stands for
 * @param needsConfirmation whether the rule rests only on sources that nobody here has seen
 */
public record Finding(String id, String rule, Grade grade, Factor factor, Optional<String> feature, String title,
        String statement, List<String> evidence, String why, List<String> remedies, List<Citation> sources,
        List<Location> at, List<String> foldedIn, boolean needsConfirmation) {

    /** Copies the lists. */
    public Finding {
        evidence = List.copyOf(evidence);
        remedies = List.copyOf(remedies);
        sources = List.copyOf(sources);
        at = List.copyOf(at);
        foldedIn = List.copyOf(foldedIn);
    }
}
