package org.shortgrain.part;

/** Access for inspection. */
public enum Access implements Word {
    /** Open. */
    OPEN,
    /** Partly. */
    PARTIAL,
    /** Only after disassembly. */
    NONE_WITHOUT_DISASSEMBLY
}
