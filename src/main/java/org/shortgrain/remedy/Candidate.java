package org.shortgrain.remedy;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.shortgrain.part.reader.EditableDescription;
import org.shortgrain.part.reader.JsonPatch;
import org.shortgrain.reference.RemedyCatalogue;

/**
 * A change to try.
 *
 * @param kind    what kind of change it is
 * @param words   what is done, with places and numbers
 * @param place   the feature that it is for; empty for the whole part
 * @param price   what it costs in section and mass; empty where the metal stays
 * @param notes   what the engineer must know beside the numbers
 * @param write   the change written for a description, which another change may have altered before
 */
record Candidate(RemedyCatalogue.Kind kind, String words, Optional<String> place, Optional<Resized> price,
        List<String> notes, Function<EditableDescription, JsonPatch> write) {

    /** Copies the list. */
    Candidate {
        notes = List.copyOf(notes);
    }

    /** Whether two changes cannot be made together: they say different things about one place. */
    boolean excludes(Candidate other) {
        boolean samePlace = place.equals(other.place);
        return samePlace && (kind.equals(other.kind) || kind.edits().stream().anyMatch(other.kind.edits()::contains));
    }
}
