package org.shortgrain.part;

/** Salt in the air. */
public enum Salt implements Word {
    /** On a ship deck or in spray. */
    MARINE_DECK,
    /** Near the coast. */
    COASTAL,
    /** Inland. */
    INLAND,
    /** None: sealed from the air. */
    NONE_SEALED,
    /** Salt is there, from where is not known. */
    UNKNOWN_SOURCE
}
