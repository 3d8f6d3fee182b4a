package org.shortgrain.part;

/** Cladding of sheet or plate. */
public enum Clad implements Word {
    /** One side. */
    ONE_SIDE,
    /** Both sides. */
    BOTH
}
