package org.shortgrain.part;

/** What the loss of the part means. */
public enum Criticality implements Word {
    /** Its failure may cost lives or the vehicle. */
    SAFETY_CRITICAL,
    /** Primary structure. */
    PRIMARY,
    /** Secondary structure. */
    SECONDARY,
    /** Carries no load that matters. */
    NON_STRUCTURAL
}
