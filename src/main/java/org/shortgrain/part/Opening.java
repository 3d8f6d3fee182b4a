package org.shortgrain.part;

/** Where an opening faces. */
public enum Opening implements Word {
    /** Up. */
    UP,
    /** Sideways. */
    SIDE,
    /** Down. */
    DOWN,
    /** Nowhere: closed. */
    CLOSED
}
