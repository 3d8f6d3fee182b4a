package org.shortgrain.review;

/** Running numbers of a report: findings F-01, F-02, and so on. */
public final class ReportNumber {

    private ReportNumber() {
    }

    /**
     * {@return a number of at least two digits behind its letter}
     *
     * @param letter what is counted
     * @param number which one it is, from 1
     */
    public static String of(char letter, int number) {
        return letter + (number < 10 ? "-0" : "-") + number;
    }
}
