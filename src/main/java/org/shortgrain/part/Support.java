package org.shortgrain.part;

/** How a strip is held when a gap is pulled shut. */
public enum Support implements Word {
    /** Held at one end, the other pulled. */
    CANTILEVER,
    /** Both ends kept parallel, one offset. */
    STEP,
    /** Resting on both ends, pulled between. */
    SIMPLY_SUPPORTED,
    /** Both ends held fast, pulled between. */
    CLAMPED
}
