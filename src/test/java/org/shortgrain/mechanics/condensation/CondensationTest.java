package org.shortgrain.mechanics.condensation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Given;

/** Vapour pressures against published tables; everything else by own arithmetic from the formulas, to half of the last
 * digit. */
class CondensationTest {

    private static final double GRAM = 1e-3;
    private static final double LITRE = 1e-3;

    private static Given given(double value) {
        return Given.exact(value, "test");
    }

    private static CavityCondensation cavity(double litres, double air, double humidity, double coldest) {
        return new CavityCondensation(given(litres * LITRE), given(air), given(humidity), given(coldest));
    }

    /** ASHRAE Handbook, Fundamentals 2017, chapter 1, table 3 (Pa; secondary, from the tests of an open library): Magnus
     * within 0.5 %, Sonntag within 0.05 %. */
    @ParameterizedTest
    @CsvSource({"5, 872.6", "25, 3169.7", "50, 12351.3"})
    void saturationPressureOverWaterIsThatOfThePublishedTable(double celsius, double pascals) {
        assertEquals(pascals, Saturation.MAGNUS_WATER.pressure(celsius), 0.005 * pascals);
        assertEquals(pascals, Saturation.SONNTAG_WATER.pressure(celsius), 0.0005 * pascals);
    }

    /** The same table over ice: the Magnus form meets it within 0.05 %. */
    @ParameterizedTest
    @CsvSource({"-20, 103.24", "-5, 401.74"})
    void saturationPressureOverIceIsThatOfThePublishedTable(double celsius, double pascals) {
        assertEquals(pascals, Saturation.MAGNUS_ICE.pressure(celsius), 0.0005 * pascals);
    }

    /** WMO and Smithsonian tables have 2339 Pa at 20 degC (memory); Magnus is 0.3 % low there. */
    @Test
    void magnusIsThreePerMilleLowAtRoomTemperature() {
        assertEquals(-0.0029, Saturation.MAGNUS_WATER.pressure(20) / 2339 - 1, 0.0003);
        assertEquals(2339, Saturation.SONNTAG_WATER.pressure(20), 0.0005 * 2339);
    }

    @ParameterizedTest
    @CsvSource({"0, 611.2, 611.21", "5, 871.74, 872.54", "20, 2332.60, 2339.25", "25, 3160.06, 3169.90",
        "50, 12345.16, 12352.74"})
    void formulasOverWater(double celsius, double magnus, double sonntag) {
        assertEquals(magnus, Saturation.MAGNUS_WATER.pressure(celsius), 0.005);
        assertEquals(sonntag, Saturation.SONNTAG_WATER.pressure(celsius), 0.005);
    }

    @ParameterizedTest
    @CsvSource({"-20, 103.261", "-5, 401.738", "0, 611.2"})
    void formulaOverIce(double celsius, double magnus) {
        assertEquals(magnus, Saturation.MAGNUS_ICE.pressure(celsius), 0.0005);
    }

    /** The set of constants 6.116441, 7.591386, 240.7263 of a maker of hygrometers (secondary): an independent fit, 0.083 %
     * from -20 to 50 degC as its author says. */
    @Test
    void aSecondFitOfTheSameQuantityAgrees() {
        assertEquals(872.905, independent(5), 0.0005);
        assertEquals(2337.894, independent(20), 0.0005);
        assertEquals(3167.450, independent(25), 0.0005);
        assertEquals(12361.997, independent(50), 0.0005);
        assertEquals(422.161, independent(-5), 0.0005, "over undercooled water");
        for (double celsius = -20; celsius <= 50; celsius += 5) {
            assertEquals(1, Saturation.SONNTAG_WATER.pressure(celsius) / independent(celsius), 0.002, celsius + " degC");
        }
    }

    private static double independent(double celsius) {
        return 611.6441 * Math.pow(10, 7.591386 * celsius / (celsius + 240.7263));
    }

    /** Dew points; the independent fit has 9.263 degC at 20 degC and 50 %, 21.308 degC at 25 degC and 80 %. */
    @ParameterizedTest
    @CsvSource({"20, 0.5, 9.255", "25, 0.5, 13.852", "25, 0.8, 21.307", "30, 0.8, 26.169", "5, 0.6, -2.130"})
    void dewPointOfMoistAir(double celsius, double humidity, double dewPoint) {
        assertEquals(dewPoint, new MoistAir(celsius, humidity).dewPoint(), 5e-4);
        Computed computed = new DewPoint(given(celsius), given(humidity)).computed();
        assertEquals(dewPoint, computed.value().value(), 5e-4);
        assertTrue(computed.validity().inside());
    }

    @Test
    void theIndependentFitGivesTheSameDewPoints() {
        assertEquals(9.263, new MoistAir(20, 0.5).dewPoint(), 0.01);
        assertEquals(21.308, new MoistAir(25, 0.8).dewPoint(), 0.01);
    }

    @ParameterizedTest
    @CsvSource({"-30", "-5", "0", "20", "55"})
    void theDewPointOfSaturatedAirIsItsTemperature(double celsius) {
        assertEquals(celsius, new MoistAir(celsius, 1).dewPoint(), 1e-10);
    }

    @Test
    void airWithoutVapourHasNoDewPoint() {
        assertEquals(Double.NEGATIVE_INFINITY, new MoistAir(20, 0).dewPoint(), 0);
        assertThrows(IllegalArgumentException.class, () -> new DewPoint(given(20), given(0)));
        assertThrows(IllegalArgumentException.class, () -> new MoistAir(20, 1.01));
    }

    @Test
    void frostComesBeforeDewBelowFreezing() {
        MoistAir cold = new MoistAir(-5, 0.7);
        assertTrue(cold.frostPoint() > cold.dewPoint());
        assertEquals(cold.vapourPressure(), Saturation.MAGNUS_ICE.pressure(cold.frostPoint()), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"0, 4.848", "5, 6.791", "20, 17.241", "25, 22.966", "30, 30.261"})
    void vapourInSaturatedAir(double celsius, double gramsPerCubicMetre) {
        assertEquals(gramsPerCubicMetre, MoistAir.saturatedDensity(celsius) / GRAM, 5e-4);
    }

    /** ASHRAE has 0.020173 kg of water to a kilogram of dry air at 25 degC and 101.325 kPa, with the enhancement factor
     * (secondary); without it own arithmetic gives 0.0200843, 0.44 % less. */
    @Test
    void humidityRatioOfSaturatedAir() {
        double pressure = 3169.7;
        double ratio = 0.621945 * pressure / (101325 - pressure);
        assertEquals(0.0200843, ratio, 5e-8);
        double formula = Saturation.SONNTAG_WATER.pressure(25);
        assertEquals(0.020173, 0.621945 * formula / (101325 - formula), 0.0045 * 0.020173);
    }

    /** 10 L closed at t1 and humidity, cooled to t2; below 0 degC it is frost. */
    @ParameterizedTest
    @CsvSource({"25, 0.8, 5, 0.115816", "25, 0.8, -20, 0.174886", "20, 0.5, 5, 0.018297"})
    void waterThatCondensesInATenLitreHollow(double air, double humidity, double coldest, double grams) {
        CavityCondensation cavity = cavity(10, air, humidity, coldest);
        assertEquals(grams, cavity.perCycle().value().value() / GRAM, 5e-7);
        assertEquals(coldest < 0, cavity.mayFreeze());
    }

    @Test
    void aDailyChangeOfAirAddsUpOverAYear() {
        Computed year = cavity(10, 25, 0.8, 5).perYear(given(365));
        assertEquals(42.27, year.value().value() / GRAM, 5e-3);
        assertEquals("condensation.per-year", year.id());
    }

    @Test
    void aWallAboveTheFirstDewStaysFreeOfIt() {
        CavityCondensation warm = cavity(10, 25, 0.5, 15);
        assertFalse(warm.mayCondense());
        assertEquals(0, warm.perCycle().value().high(), 0);
    }

    /** e1 T2/T1 = e_sat(T2): the pressure of the vapour falls with the temperature before anything condenses. */
    @Test
    void theFirstDewInAClosedVolumeComesBelowTheDewPointOfTheOpenAir() {
        double first = cavity(10, 25, 0.8, 5).firstDew().orElseThrow();
        MoistAir air = new MoistAir(25, 0.8);
        assertTrue(first < air.dewPoint());
        double fallen = air.vapourPressure() * (first + 273.15) / (25 + 273.15);
        assertEquals(Saturation.MAGNUS_WATER.pressure(first), fallen, 1e-6);
        assertTrue(cavity(10, 25, 0, 5).firstDew().isEmpty(), "dry air has none");
        assertEquals(25, cavity(10, 25, 1, 5).firstDew().orElseThrow(), 1e-6, "saturated air has it at once");
        assertEquals(-10, cavity(10, -10, 1, -20).firstDew().orElseThrow(), 1e-6, "saturated over ice before");
    }

    @Test
    void theUpperEndIsThatOfTheWarmestMoistestAirAndTheColdestWall() {
        CavityCondensation ranged = new CavityCondensation(given(10 * LITRE), Given.limits(20, 30, "test"),
                Given.limits(0.5, 0.8, "test"), Given.limits(-10, 5, "test"));
        assertEquals(cavity(10, 30, 0.8, -10).perCycle().value().value(), ranged.perCycle().value().high(), 1e-15);
        assertEquals(cavity(10, 20, 0.5, 5).perCycle().value().value(), ranged.perCycle().value().low(), 1e-15);
    }

    @Test
    void outsideTheRangeOfTheFormulasTheResultSaysSo() {
        assertFalse(cavity(10, 70, 0.8, 5).perCycle().validity().inside());
        assertFalse(cavity(10, 25, 0.8, -70).perCycle().validity().inside());
        assertTrue(cavity(10, 25, 0.8, -55).perCycle().validity().inside());
        assertThrows(IllegalArgumentException.class, () -> Saturation.MAGNUS_WATER.pressure(-250));
    }
}
