package org.shortgrain.part;

/** Whether the rest of the part holds the place straight. */
public enum Restraint implements Word {
    /** The rest of the part holds it straight. */
    HELD,
    /** It can bow. */
    FREE
}
