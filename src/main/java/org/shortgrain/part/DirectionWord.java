package org.shortgrain.part;

/** Grain direction of the stress, as a word. */
public enum DirectionWord implements Word {
    /** Along the grain. */
    L,
    /** Long transverse. */
    LT,
    /** Short transverse. */
    ST,
    /** LT or ST, not said which. */
    TRANSVERSE,
    /** Several directions. */
    MIXED,
    /** Across the flow lines. */
    ACROSS_FLOW
}
