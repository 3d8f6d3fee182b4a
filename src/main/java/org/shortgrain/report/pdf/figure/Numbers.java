package org.shortgrain.report.pdf.figure;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers in figures: at most four digits, without trailing zeros, with a true minus sign. */
final class Numbers {

    private static final MathContext DIGITS = new MathContext(4);

    private Numbers() {
    }

    static String plain(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(DIGITS).stripTrailingZeros();
        return rounded.toPlainString().replace('-', '\u2212');
    }
}
