package org.shortgrain.reference;

/**
 * Resistance to stress corrosion on the common scale of this rulebook, to which each scheme's own words are mapped.
 *
 * <p>The words of two schemes must never be compared with each other: "high" is the best class in one and the second in
 * another. The map is the table {@code crosswalk.csv}.
 */
public enum SccLevel {
    /** The tables do not cover it. Never read as good. */
    UNKNOWN(0),
    /** Worst: letter D. */
    LEVEL_1(1),
    /** Third: letter C. */
    LEVEL_2(2),
    /** Second: letter B. */
    LEVEL_3(3),
    /** Best: letter A. */
    LEVEL_4(4);

    private final int number;

    SccLevel(int number) {
        this.number = number;
    }

    /** {@return 4 for the best to 1 for the worst; 0 for unknown} */
    public int number() {
        return number;
    }

    /** {@return how a report names it} */
    public String word() {
        return this == UNKNOWN ? "unknown" : "level " + number + " of 4";
    }

    static SccLevel of(int number) {
        return values()[number];
    }
}
