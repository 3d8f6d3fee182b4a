package org.shortgrain.part;

/** Whether joined faces were primed. */
public enum FayingPrimed implements Word {
    /** Before assembly. */
    YES_BEFORE_ASSEMBLY,
    /** After assembly. */
    AFTER,
    /** Not at all. */
    NO
}
