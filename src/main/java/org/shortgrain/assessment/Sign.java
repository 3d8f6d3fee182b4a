package org.shortgrain.assessment;

import java.util.Optional;
import org.shortgrain.part.Location;

/**
 * One thing that speaks for or against water at a place.
 *
 * @param kind what it says
 * @param text in words, with the number that decides
 * @param ask  what to ask where it is open and no rule or missing field asks already
 */
record Sign(Kind kind, String text, Optional<Ask> ask) {

    /** What a sign says, the gravest first: the order in which signs decide. */
    enum Kind {
        /** Water stands or soaks in and does not leave. */
        STANDS,
        /** Water comes and goes. */
        COMES,
        /** It is not known. */
        OPEN,
        /** No water, by evidence. */
        DRY
    }

    /**
     * A question.
     *
     * @param text the question
     * @param why  why it is needed
     * @param at   place in the description
     */
    record Ask(String text, String why, Location at) {
    }

    static Sign stands(String text) {
        return new Sign(Kind.STANDS, text, Optional.empty());
    }

    static Sign comes(String text) {
        return new Sign(Kind.COMES, text, Optional.empty());
    }

    static Sign open(String text) {
        return new Sign(Kind.OPEN, text, Optional.empty());
    }

    static Sign open(String text, Ask ask) {
        return new Sign(Kind.OPEN, text, Optional.of(ask));
    }

    static Sign dry(String text) {
        return new Sign(Kind.DRY, text, Optional.empty());
    }
}
