package org.shortgrain.review;

import java.util.List;

/**
 * One operation of the card as the tool understood it.
 *
 * @param op        operation number; empty text if none is given
 * @param entered   the word in the description
 * @param operation what it was taken for; empty text if it is not known
 * @param at        features it is done at; empty for the whole part
 * @param effect    what it does to stress or surface, in words; empty text if nothing that matters
 * @param breaches  findings that point at this operation
 * @param proposed  place in an order of the same operations that breaks no rule of order, from 0
 */
public record RouteLine(String op, String entered, String operation, List<String> at, String effect,
        List<String> breaches, int proposed) {

    /** Copies the lists. */
    public RouteLine {
        at = List.copyOf(at);
        breaches = List.copyOf(breaches);
    }
}
