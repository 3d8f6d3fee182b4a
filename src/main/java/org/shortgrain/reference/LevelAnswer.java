package org.shortgrain.reference;

import java.util.List;
import java.util.Set;

/**
 * How resistant the material is in one direction, by all schemes that speak for it.
 *
 * @param level           the level that governs: the worst that the rows allow
 * @param cleared         whether a firm row (not from memory) puts it at level 3 or 4 and no datum is open
 * @param restsOnMemory   whether no firm row speaks for it: confirm against the source
 * @param sourcesDisagree whether no level fits all rows that apply
 * @param open            data that are missing and matter
 * @param hits            every row that applies or may apply
 */
public record LevelAnswer(SccLevel level, boolean cleared, boolean restsOnMemory, boolean sourcesDisagree,
        Set<OpenDatum> open, List<RatingHit> hits) {

    /** Copies the collections. */
    public LevelAnswer {
        open = Set.copyOf(open);
        hits = List.copyOf(hits);
    }

    /** {@return what a review may conclude from it} */
    public Susceptibility susceptibility() {
        if (level == SccLevel.LEVEL_1 || level == SccLevel.LEVEL_2) {
            return Susceptibility.SUSCEPTIBLE;
        }
        return cleared ? Susceptibility.RESISTANT : Susceptibility.UNKNOWN;
    }
}
