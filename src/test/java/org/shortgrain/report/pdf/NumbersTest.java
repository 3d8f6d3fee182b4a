package org.shortgrain.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.review.Amount;

class NumbersTest {

    private static final Numbers SI = new Numbers(Units.SI);
    private static final Numbers US = new Numbers(Units.US);
    private static final Numbers BOTH = new Numbers(Units.BOTH);

    @ParameterizedTest
    @CsvSource({"96.04, 3, 96", "0.02504, 4, 0.02504", "-173.665, 4, \u2212173.7", "0, 4, 0", "1234567, 3, 1230000",
        "12345678, 3, 1.23\u00d710\u2077", "0.0000123, 3, 1.23\u00d710\u207b\u2075", "0.00012, 3, 0.00012",
        "-0.5, 2, \u22120.5", "99.96, 3, 100", "1e-12, 2, 1\u00d710\u207b\u00b9\u00b2"})
    void digits_are_significant_and_read_the_same_everywhere(double value, int significant, String printed) {
        assertEquals(printed, Digits.print(value, significant));
    }

    @Test
    void an_endless_range_has_its_sign() {
        assertEquals("\u221e", Digits.print(Double.POSITIVE_INFINITY, 3));
    }

    @ParameterizedTest
    @CsvSource({"48e6, PASCAL, 48\u00a0MPa", "7.17e10, PASCAL, 71.7\u00a0GPa", "0.0254, METRE, 25.4\u00a0mm",
        "23.6e-6, PER_KELVIN, 23.6\u00a010\u207b\u2076/K", "4.1e-5, CUBIC_METRE, 41\u00a0ml",
        "7200, SECOND, 2\u00a0h", "90, SECOND, 90\u00a0s", "0.33, ONE, 0.33", "25, DEGREE_CELSIUS, 25\u00a0\u00b0C",
        "0.7853981633974483, RADIAN, 45\u00b0"})
    void si_values_are_printed_in_the_units_of_the_trade(double value, SiUnit unit, String printed) {
        assertEquals(printed, SI.value(value, unit));
    }

    /** 25 ksi = 172.4 MPa; 1 in = 25.4 mm; 212 degF = 100 degC: definitions, NIST SP 811. */
    @ParameterizedTest
    @CsvSource({"172368932, PASCAL, 25\u00a0ksi", "0.0254, METRE, 1\u00a0in", "100, DEGREE_CELSIUS, 212\u00a0\u00b0F",
        "0.33, ONE, 0.33"})
    void customary_values_follow_from_the_definitions(double value, SiUnit unit, String printed) {
        assertEquals(printed, US.value(value, unit));
    }

    @Test
    void both_units_stand_side_by_side() {
        assertEquals("25.4\u00a0mm [1\u00a0in]", BOTH.value(0.0254, SiUnit.METRE));
        assertEquals("0.5", BOTH.value(0.5, SiUnit.ONE));
    }

    @Test
    void a_range_shows_both_ends_and_an_exact_number_none() {
        assertEquals("40 to 100\u00a0MPa", SI.range(new Band(70e6, 40e6, 100e6), SiUnit.PASCAL));
        assertEquals("", SI.range(Band.exact(70e6), SiUnit.PASCAL));
        assertEquals("2.5 to 5.5", SI.range(new Amount("1", 4, 2.5, 5.5)));
    }
}
