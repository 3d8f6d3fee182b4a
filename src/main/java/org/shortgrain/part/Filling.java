package org.shortgrain.part;

/** What fills a cavity. */
public enum Filling implements Word {
    /** Closed-cell foam. */
    CLOSED_CELL_FOAM,
    /** Open-cell foam. */
    OPEN_CELL_FOAM,
    /** Sealant. */
    SEALANT,
    /** Corrosion-inhibiting or potting compound. */
    COMPOUND
}
