package org.shortgrain.part;

/** A level in words; {@code none} is no level but the state none. */
public enum Level implements Word {
    /** Low. */
    LOW,
    /** Moderate. */
    MODERATE,
    /** High. */
    HIGH
}
