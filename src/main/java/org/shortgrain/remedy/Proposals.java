package org.shortgrain.remedy;

import java.util.List;

/**
 * What one kind of change comes to for a part.
 *
 * @param candidates the changes to try
 * @param missing    what was sought and does not exist, a sentence each: no interference that stays tight within the limit
 */
record Proposals(List<Candidate> candidates, List<String> missing) {

    /** Copies the lists. */
    Proposals {
        candidates = List.copyOf(candidates);
        missing = List.copyOf(missing);
    }

    static Proposals of(List<Candidate> candidates) {
        return new Proposals(candidates, List.of());
    }

    static Proposals all(List<Proposals> several) {
        return new Proposals(several.stream().flatMap(one -> one.candidates().stream()).toList(),
                several.stream().flatMap(one -> one.missing().stream()).toList());
    }
}
