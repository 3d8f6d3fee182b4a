package org.shortgrain.part;

/** A level in words. */
public enum Level implements Word {
    /** None. */
    NONE,
    /** Low. */
    LOW,
    /** Moderate. */
    MODERATE,
    /** High. */
    HIGH
}
