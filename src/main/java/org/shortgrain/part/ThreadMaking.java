package org.shortgrain.part;

/** How a thread was made. */
public enum ThreadMaking implements Word {
    /** Rolled. */
    ROLLED,
    /** Cut. */
    CUT
}
