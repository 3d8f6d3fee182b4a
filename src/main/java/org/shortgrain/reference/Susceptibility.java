package org.shortgrain.reference;

/** What a review may conclude about a material in one direction. */
public enum Susceptibility {
    /** Level 3 or 4 by a row that was seen, with nothing open. */
    RESISTANT,
    /** Not covered, or covered only by rows from memory, or a datum is open. */
    UNKNOWN,
    /** Level 1 or 2 by any row that may apply. */
    SUSCEPTIBLE
}
