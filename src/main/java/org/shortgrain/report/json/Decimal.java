package org.shortgrain.report.json;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * How a computed number is printed: six significant digits, without trailing zeros, the same on every Java runtime.
 *
 * <p>Six digits are more than any stress is known to, and few enough to hide the last bits in which the mathematical
 * functions of two processors may differ.
 */
final class Decimal {

    private static final int DIGITS = 6;
    private static final MathContext SIX_DIGITS = new MathContext(DIGITS, RoundingMode.HALF_EVEN);
    private static final double LEAST_OF_SIX_DIGITS = 1e5;
    /** Ten to this power is the largest that a double holds exactly. */
    private static final int LARGEST_EXACT_POWER = 22;
    /** More than three units in the last place of a number below a million, each 1.2e-10: one of the power, half of the product. */
    private static final double OFF = 1e-9;
    /** From this power of ten on, and below its inverse, zeros tell a reader less than an exponent. */
    private static final int LONGEST = 12;

    private Decimal() {
    }

    /**
     * {@return the text of a number}
     *
     * @param value a number
     * @throws IllegalArgumentException if it is not finite
     */
    static String of(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(value + " is no number that a review can state");
        }
        BigDecimal rounded = rounded(value).stripTrailingZeros();
        int magnitude = rounded.precision() - rounded.scale();
        return rounded.signum() == 0 ? "0"
                : Math.abs(magnitude) <= LONGEST ? rounded.toPlainString() : rounded.toString();
    }

    /**
     * The exact value of a double has up to a thousand digits, which take long to round. Scaled to six digits before the
     * point in double arithmetic it is off by less than {@link #OFF}; only so near to a tie do the other digits matter.
     */
    private static BigDecimal rounded(double value) {
        int places = DIGITS - 1 - (int) Math.floor(Math.log10(Math.abs(value)));
        if (Math.abs(places) <= LARGEST_EXACT_POWER) {
            double scaled = places < 0 ? value / Math.pow(10, -places) : value * Math.pow(10, places);
            double whole = Math.rint(scaled);
            double size = Math.abs(whole);
            boolean six = size >= LEAST_OF_SIX_DIGITS && size < 10 * LEAST_OF_SIX_DIGITS;
            if (six && Math.abs(scaled - whole) < 0.5 - OFF) {
                return BigDecimal.valueOf((long) whole, places);
            }
        }
        return new BigDecimal(value).round(SIX_DIGITS);
    }
}
