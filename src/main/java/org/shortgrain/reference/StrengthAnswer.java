package org.shortgrain.reference;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Optional;
import java.util.Set;

/**
 * Minimum strengths in one direction.
 *
 * @param governing row of the lowest yield strength among the minima
 * @param ftu       lowest of the minimum tensile strengths (Pa)
 * @param fty       lowest of the minimum yield strengths (Pa)
 * @param open      data that are missing and matter
 * @param hits      every row that applies or may apply, minima or not
 */
public record StrengthAnswer(Optional<Strength> governing, OptionalDouble ftu, OptionalDouble fty,
        Set<OpenDatum> open, List<Strength> hits) {

    /** Copies the collections. */
    public StrengthAnswer {
        open = Set.copyOf(open);
        hits = List.copyOf(hits);
    }
}
