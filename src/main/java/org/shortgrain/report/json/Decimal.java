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

    private static final MathContext SIX_DIGITS = new MathContext(6, RoundingMode.HALF_EVEN);
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
        BigDecimal rounded = new BigDecimal(value).round(SIX_DIGITS).stripTrailingZeros();
        int magnitude = rounded.precision() - rounded.scale();
        return rounded.signum() == 0 ? "0"
                : Math.abs(magnitude) <= LONGEST ? rounded.toPlainString() : rounded.toString();
    }
}
