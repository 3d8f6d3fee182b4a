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
    ACROSS_FLOW;

    /** {@return the word; L, LT and ST stand in capitals, as the trade writes them} */
    @Override
    public String word() {
        return this == L || this == LT || this == ST ? name() : Word.super.word();
    }
}
