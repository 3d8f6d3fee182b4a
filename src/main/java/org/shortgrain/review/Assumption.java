package org.shortgrain.review;

import java.util.List;
import org.shortgrain.terms.Citation;

/**
 * Something the review took for granted because the description does not say.
 *
 * @param id      number in this report, such as A-01
 * @param text    what is assumed
 * @param effect  whether it counts against the part
 * @param sources where the assumed value comes from
 */
public record Assumption(String id, String text, Effect effect, List<Citation> sources) {

    /** Which way an assumption leans. */
    public enum Effect {
        /** It counts against the part. */
        CONSERVATIVE,
        /** It favours neither side. */
        NEUTRAL,
        /** Which way it leans is not known. */
        UNKNOWN
    }

    /** Copies the list. */
    public Assumption {
        sources = List.copyOf(sources);
    }
}
