package org.shortgrain.part;

/** Shim in a gap. */
public enum Shim implements Word {
    /** Liquid shim. */
    LIQUID,
    /** Solid shim. */
    SOLID
}
