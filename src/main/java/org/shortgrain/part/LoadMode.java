package org.shortgrain.part;

/** How the section is loaded. */
public enum LoadMode implements Word {
    /** Tension. */
    TENSION,
    /** Bending. */
    BENDING
}
