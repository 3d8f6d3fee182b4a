package org.shortgrain.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Factors against NIST SP 811 (2008), appendix B, whose bold factors are exact (status: memory), and against the
 * definitions of the inch, the pound and standard gravity. Values given to seven digits there are compared to half of
 * the last digit.
 */
class UnitTest {

    private static double si(String value, String symbol) {
        return Unit.of(symbol).orElseThrow().toSi(new BigDecimal(value));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            76    | mm          | 0.076
            14.018| mm          | 0.014018
            0.1   | in          | 0.00254
            1     | ft          | 0.3048
            20    | um          | 0.00002
            48    | MPa         | 48000000
            48    | N/mm2       | 48000000
            0.6   | bar         | 60000
            25    | degC        | 25
            32    | degF        | 0
            212   | degF        | 100
            -40   | degF        | -40
            273.15| K           | 0
            24    | h           | 86400
            64    | d           | 5529600
            64    | days        | 5529600
            10    | years       | 315576000
            12    | months      | 31557600
            1.5   | kN          | 1500
            1     | lbf         | 4.4482216152605
            12    | Nm          | 12
            1.9   | kg          | 1.9
            1     | lb          | 0.45359237
            0.5   | L           | 0.0005
            120   | ml          | 0.00012
            1     | in3         | 0.000016387064
            1     | in2         | 0.00064516
            39    | %IACS       | 0.39
            29    | MS/m        | 0.5
            80    | %           | 0.8
            180   | deg         | 3.141592653589793
            25    | MPa sqrt(m) | 25000000
            """)
    void exactFactorsGiveTheNearestNumber(String value, String symbol, double si) {
        assertEquals(si, si(value, symbol));
    }

    @Test
    void poundsPerSquareInchAgreeWithTheHandbookToItsSevenDigits() {
        assertEquals(6.894757e3, si("1", "psi"), 0.0005);
        assertEquals(6.894757e6, si("1", "ksi"), 0.5);
        assertEquals(1.129848e-1, si("1", "in lbf"), 0.5e-7);
        assertEquals(1.355818, si("1", "ft lbf"), 0.5e-6);
    }

    @Test
    void thousandPoundsPerSquareInchRootInchIsSixPointEightNineTimesTheRootOfAnInch() {
        // 6.894757293168361 MPa x sqrt(0.0254 m); the relative rounding of two doubles is below 1e-15
        double expected = 6.894757293168361e6 * Math.sqrt(0.0254);
        assertEquals(expected, si("1", "ksi sqrt(in)"), expected * 1e-15);
        assertEquals(1.0988434e6, si("1", "ksi sqrt(in)"), 0.5);
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void theWayBackLeadsToTheSameNumber(Unit unit) {
        // a double holds 15 to 16 digits; the way there and back rounds twice
        assertEquals(123.456, unit.fromSi(unit.toSi(new BigDecimal("123.456"))), 1e-12);
    }

    @Test
    void noSpellingStandsForTwoUnits() {
        Set<String> seen = new HashSet<>();
        Arrays.stream(Unit.values()).flatMap(unit -> unit.symbols().stream())
                .forEach(symbol -> assertTrue(seen.add(symbol), symbol));
    }

    @Test
    void everyDimensionHasUnits() {
        for (Dimension dimension : Dimension.values()) {
            assertTrue(!Unit.of(dimension).isEmpty(), dimension.noun());
        }
    }

    @Test
    void capitalsMatter() {
        assertTrue(Unit.of("mpa").isEmpty());
        assertTrue(Unit.of("MM").isEmpty());
    }

    @Test
    void valuesArePrintedInTheUnitOfTheTradeWithoutIdleDigits() {
        assertEquals("2.54 mm", Unit.print(0.00254, Dimension.LENGTH));
        assertEquals("14.018 mm", Unit.print(0.014018, Dimension.LENGTH));
        assertEquals("48.2633 MPa", Unit.print(si("7", "ksi"), Dimension.STRESS));
        assertEquals("65.5556 degC", Unit.print(si("150", "degF"), Dimension.TEMPERATURE));
        assertEquals("1000000 mm", Unit.print(1000, Dimension.LENGTH));
        assertEquals("0 mm", Unit.print(0, Dimension.LENGTH));
        assertEquals("39 %IACS", Unit.print(0.39, Dimension.CONDUCTIVITY));
    }

    /**
     * 2,000 numbers of 1e-12 to 1e12 (seed 11), each against a division in 200 digits, more than any of them has.
     * Elsewhere than with whole factors four roundings of 1.1e-16 come in: of the factor, twice, as it is read back here, and of
     * both quotients (34 digits can end on a tie where 200 do not).
     */
    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = {"CELSIUS", "FAHRENHEIT", "KELVIN"})
    void aNumberInAnotherUnitIsTheNearestToTheQuotient(Unit unit) {
        Random random = new Random(11);
        BigDecimal factor = BigDecimal.valueOf(unit.toSi(BigDecimal.ONE));
        boolean whole = isWhole(factor) || factor.precision() == 1 && isWhole(BigDecimal.ONE.divide(factor));
        for (int i = 0; i < 2_000; i++) {
            double si = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(-12, 13));
            double expected = new BigDecimal(si).divide(factor, new MathContext(200)).doubleValue();
            assertEquals(expected, unit.fromSi(si), whole ? 0 : Math.abs(expected) * 4.5e-16, () -> "of " + si);
        }
        assertEquals(0.0, unit.fromSi(-0.0));
        assertThrows(NumberFormatException.class, () -> unit.fromSi(Double.NaN));
    }

    private static boolean isWhole(BigDecimal number) {
        return number.stripTrailingZeros().scale() <= 0;
    }
}
