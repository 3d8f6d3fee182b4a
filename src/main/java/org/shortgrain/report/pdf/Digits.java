package org.shortgrain.report.pdf;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Prints numbers with so many significant digits, the same in every locale. */
final class Digits {

    /** Beyond these, a power of ten reads more easily than zeros. */
    private static final int LARGEST_PLAIN_EXPONENT = 6;
    private static final int SMALLEST_PLAIN_EXPONENT = -4;
    private static final String MINUS = "\u2212";
    private static final String RAISED = "\u2070\u00b9\u00b2\u00b3\u2074\u2075\u2076\u2077\u2078\u2079";
    private static final String RAISED_MINUS = "\u207b";

    private Digits() {
    }

    static String print(double value, int significant) {
        if (Double.isInfinite(value)) {
            return value > 0 ? "\u221e" : MINUS + "\u221e";
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(significant, RoundingMode.HALF_UP));
        int exponent = rounded.precision() - rounded.scale() - 1;
        if (exponent > LARGEST_PLAIN_EXPONENT || exponent < SMALLEST_PLAIN_EXPONENT) {
            return plain(rounded.scaleByPowerOfTen(-exponent)) + "\u00d710" + raised(exponent);
        }
        return plain(rounded);
    }

    private static String plain(BigDecimal value) {
        return value.stripTrailingZeros().toPlainString().replace("-", MINUS);
    }

    private static String raised(int exponent) {
        StringBuilder raised = new StringBuilder(exponent < 0 ? RAISED_MINUS : "");
        for (char digit : Integer.toString(Math.abs(exponent)).toCharArray()) {
            raised.append(RAISED.charAt(digit - '0'));
        }
        return raised.toString();
    }
}
