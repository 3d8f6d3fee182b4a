package org.shortgrain.mechanics.crack;

/**
 * Cracks through the whole thickness: what multiplies {@code S sqrt(pi a)} under uniform tension S.
 *
 * <p>Sources: polynomial of the edge crack, Bowie's fits, Feddersen and Koiter as an open-source library of crack growth
 * has them (secondary); Tada's edge crack likewise, within 0.5 % for any depth.
 */
public final class ThroughCrack {

    /** Greatest share of the width for which the polynomial of the edge crack holds. */
    public static final double GREATEST_EDGE = 0.6;

    private ThroughCrack() {
    }

    /**
     * {@return the factor of an edge crack by the polynomial in the share of the width}
     *
     * @param share crack length over width, 0 to 0.6
     * @throws IllegalArgumentException outside this range
     */
    public static double edge(double share) {
        if (!(share >= 0 && share <= GREATEST_EDGE)) {
            throw new IllegalArgumentException("edge crack through " + share + " of the width");
        }
        return 1.12 + share * (-0.231 + share * (10.55 + share * (-21.72 + share * 30.39)));
    }

    /**
     * {@return the factor of an edge crack by Tada}
     *
     * @param share crack length over width, 0 or more and below 1
     * @throws IllegalArgumentException outside this range
     */
    public static double edgeByTada(double share) {
        requireShare(share);
        double half = Math.PI * share / 2;
        double shape = share > 0 ? Math.sqrt(Math.tan(half) / half) : 1;
        return shape * (0.752 + 2.02 * share + 0.37 * Math.pow(1 - Math.sin(half), 3)) / Math.cos(half);
    }

    /**
     * {@return the factor of a centre crack by Feddersen}
     *
     * @param share crack length over width, 0 or more and below 1
     * @throws IllegalArgumentException outside this range
     */
    public static double centre(double share) {
        requireShare(share);
        return 1 / Math.sqrt(Math.cos(Math.PI * share / 2));
    }

    /**
     * {@return the factor of a centre crack by Koiter and Tada}
     *
     * @param share crack length over width, 0 or more and below 1
     * @throws IllegalArgumentException outside this range
     */
    public static double centreByKoiter(double share) {
        requireShare(share);
        return (1 - 0.5 * share + 0.370 * share * share - 0.044 * Math.pow(share, 3)) / Math.sqrt(1 - share);
    }

    /**
     * {@return Bowie's factor of one crack from a hole, the crack counted from the bore; within 4 % of his table}
     *
     * @param ratio crack length over radius of the hole
     */
    public static double oneFromHole(double ratio) {
        return 0.6762 + 0.8734 / (0.3246 + ratio);
    }

    /**
     * {@return Bowie's factor of two cracks from a hole, each counted from the bore; within 4 % of his table}
     *
     * @param ratio crack length over radius of the hole
     */
    public static double twoFromHole(double ratio) {
        return 0.9439 + 0.6865 / (0.2772 + ratio);
    }

    private static void requireShare(double share) {
        if (!(share >= 0 && share < 1)) {
            throw new IllegalArgumentException("crack through " + share + " of the width");
        }
    }
}
