package org.shortgrain.part;

/** When in the life of the part. */
public enum Phase implements Word {
    /** When made. */
    MANUFACTURE,
    /** At overhaul. */
    OVERHAUL,
    /** At a repair. */
    REPAIR
}
