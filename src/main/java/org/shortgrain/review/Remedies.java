package org.shortgrain.review;

import java.util.List;

/**
 * A study of remedies.
 *
 * @param part       the part
 * @param input      the description that it is of
 * @param verdict    verdict of the part as described
 * @param objections objections of the part as described
 * @param conditions number of its conditions
 * @param tried      how many changed descriptions were reviewed
 * @param cleared    whether a change was found with which sign-off is possible
 * @param remedies   the changes worth a look, the best first; where none clears, the closest
 * @param missing    changes that were sought and do not exist, a sentence each with its numbers
 */
public record Remedies(Review.PartId part, Review.InputId input, Verdict verdict, List<String> objections, int conditions,
        int tried, boolean cleared, List<Remedy> remedies, List<String> missing) {

    /** Copies the lists. */
    public Remedies {
        objections = List.copyOf(objections);
        remedies = List.copyOf(remedies);
        missing = List.copyOf(missing);
    }
}
