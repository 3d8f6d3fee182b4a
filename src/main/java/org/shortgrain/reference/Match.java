package org.shortgrain.reference;

/** Whether a row of a table speaks for what is asked. */
enum Match {
    /** It does not. */
    NO,
    /** It may: a datum is missing, or the row speaks for a near relative. Such a row can raise a concern, never clear. */
    MAYBE,
    /** It does. */
    YES;

    Match and(Match other) {
        return compareTo(other) <= 0 ? this : other;
    }

    Match or(Match other) {
        return compareTo(other) >= 0 ? this : other;
    }

    static Match of(boolean yes) {
        return yes ? YES : NO;
    }
}
