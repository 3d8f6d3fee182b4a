package org.shortgrain.report.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DecimalTest {

    @ParameterizedTest
    @CsvSource({"0, 0", "-0.0, 0", "96.0, 96", "0.1, 0.1", "1e-3, 0.001", "48263301.05, 48263300", "1.23456789, 1.23457",
        "-2.5e-7, -0.00000025", "1e12, 1E+12", "123456.5, 123456", "1.5e20, 1.5E+20", "2e-300, 2E-300"})
    void aNumberIsPrintedWithSixSignificantDigits(double value, String text) {
        assertEquals(text, Decimal.of(value));
    }

    @Property
    void whatIsPrintedIsPrintedTheSameAgain(@ForAll double value) {
        assertEquals(Decimal.of(value), Decimal.of(Double.parseDouble(Decimal.of(value))));
    }

    /** Also where the digits beyond the sixth are a tie, or nearly: what is left out of the sum must not decide. */
    @Property
    void whatIsPrintedIsTheExactValueOfTheNumberRounded(@ForAll @LongRange(min = -99_999_995, max = 99_999_995) long digits,
            @ForAll @IntRange(min = -40, max = 40) int power, @ForAll @IntRange(min = -2, max = 2) int off) {
        double value = Double.parseDouble(digits + "e" + power);
        value += off * Math.ulp(value);
        assertEquals(new BigDecimal(value).round(new MathContext(6, RoundingMode.HALF_EVEN)).stripTrailingZeros(),
                new BigDecimal(Decimal.of(value)).stripTrailingZeros());
    }

    /** Half a unit in the sixth digit of a number that begins with 1 is 5 parts in a million. */
    @Property
    void whatIsPrintedIsNearTheNumber(@ForAll double value) {
        if (Math.abs(value) > Double.MIN_NORMAL && Math.abs(value) < Double.MAX_VALUE / 2) {
            assertEquals(value, Double.parseDouble(Decimal.of(value)), 5.0001e-6 * Math.abs(value));
        }
    }
}
