package org.shortgrain.mechanics.crack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GrowthTest {

    private static final double MPA = 1e6;
    private static final double MM = 1e-3;
    private static final double DAY = 86_400;
    /** Half-circle, shallow, deepest point: F/sqrt(Q) of SurfaceCrackTest. */
    private static final double SEMICIRCLE = 0.6625413488689131;
    private static final double SLIGHTLY = 1 + 1e-12;

    private static IntensityCurve constantGeometry(double stress) {
        return IntensityCurve.of(0.1, a -> SEMICIRCLE * stress * MPA * Math.sqrt(Math.PI * a));
    }

    /** Own arithmetic: a = (K/(Y S))^2/pi with K 8 MPa sqrt(m); at the surface Y is 1.10 times that of the deepest point. */
    @ParameterizedTest
    @CsvSource({"50, 18.564, 15.342", "100, 4.641, 3.835", "150, 2.063, 1.705", "250, 0.743, 0.614"})
    void depthBelowWhichACrackDoesNotGrow(double stress, double deepest, double surface) {
        assertEquals(deepest, CrackLimits.depth(8 * MPA, SEMICIRCLE, stress * MPA) / MM, 5.1e-4);
        assertEquals(surface, CrackLimits.depth(8 * MPA, 1.1 * SEMICIRCLE, stress * MPA) / MM, 5.1e-4);
        assertEquals(deepest, constantGeometry(stress).depthAt(8 * MPA).orElseThrow() / MM, 5.1e-4);
    }

    /** Own arithmetic; the threshold stresses are 7 ksi and 21 ksi as 7075-T651 and a better temper might have. */
    @ParameterizedTest
    @CsvSource({"48.263, 19.92", "144.8, 2.213"})
    void crossoverBetweenThresholdStressAndThresholdIntensity(double threshold, double expected) {
        assertEquals(expected, CrackLimits.crossover(8 * MPA, SEMICIRCLE, threshold * MPA) / MM, 6e-3);
    }

    /** Own arithmetic: (10 - 1.27) mm over the velocity. */
    @ParameterizedTest
    @CsvSource({"1e-8, 10.104", "1e-9, 101.04"})
    void daysOnThePlateau(double velocity, double days) {
        GrowthLaw law = new GrowthLaw.Plateau(1, velocity);
        assertEquals(days, GrowthLife.between(constantGeometry(100), law, 1.27 * MM, 10 * MM).orElseThrow() / DAY, 5.1e-3);
    }

    /**
     * v = 1e-8 x 10^(K - 10) from 8 to 10 MPa sqrt(m), then 1e-8 m/s; 150 MPa. Region I in closed form: with
     * b = ln 10 per MPa sqrt(m) and K = k sqrt(a), t = (2/k^2) 1e8 10^10 [-(K/b + 1/b^2) exp(-b K)] from 8 to 10.
     */
    @Test
    void aRiseAndThenThePlateau() {
        IntensityCurve curve = constantGeometry(150);
        GrowthLaw law = new GrowthLaw.Rise(8 * MPA, 10 * MPA, 1e-8, 1 / MPA);
        double grows = curve.depthAt(8 * MPA).orElseThrow();
        double plateau = curve.depthAt(10 * MPA).orElseThrow();
        double last = curve.depthAt(20 * MPA).orElseThrow();
        assertEquals(2.062631, grows / MM, 1e-6);
        assertEquals(3.222861, plateau / MM, 1e-6);
        assertEquals(12.891446, last / MM, 1e-6);
        double rise = GrowthLife.between(curve, law, grows * SLIGHTLY, plateau).orElseThrow() / DAY;
        double rest = GrowthLife.between(curve, law, plateau, last).orElseThrow() / DAY;
        assertEquals(26.98887, rise, 2e-5);
        assertEquals(11.19049, rest, 1e-5);
        assertEquals(38.17936, GrowthLife.between(curve, law, grows * SLIGHTLY, last).orElseThrow() / DAY, 3e-5);
        double b = Math.log(10);
        double k2 = Math.pow(SEMICIRCLE * 150, 2) * Math.PI;
        double closed = 2 / k2 * 1e8 * Math.pow(10, 10)
                * ((8 / b + 1 / (b * b)) * Math.exp(-8 * b) - (10 / b + 1 / (b * b)) * Math.exp(-10 * b)) / DAY;
        assertEquals(closed, rise, 1e-6 * closed);
    }

    /** Closed form t = 2 (a1^(1-n/2) - a2^(1-n/2)) / ((n-2) C (Y S sqrt(pi))^n) for n other than 2. */
    @ParameterizedTest
    @CsvSource({"3", "4", "8"})
    void powerLawAgreesWithItsClosedForm(double n) {
        double constant = 1e-9 / Math.pow(10 * MPA, n);
        GrowthLaw law = new GrowthLaw.Power(0, constant, n);
        double from = 2 * MM;
        double to = 12 * MM;
        double closed = 2 * (Math.pow(from, 1 - n / 2) - Math.pow(to, 1 - n / 2))
                / ((n - 2) * constant * Math.pow(SEMICIRCLE * 150 * MPA * Math.sqrt(Math.PI), n));
        assertEquals(closed, GrowthLife.between(constantGeometry(150), law, from, to).orElseThrow(), 1e-8 * closed);
    }

    @Test
    void aCrackBelowTheThresholdDoesNotGrowAndOneThatIsThereTakesNoTime() {
        GrowthLaw law = new GrowthLaw.Plateau(8 * MPA, 1e-8);
        assertTrue(GrowthLife.between(constantGeometry(50), law, MM, 10 * MM).isEmpty());
        assertEquals(0, GrowthLife.between(constantGeometry(50), law, 10 * MM, 10 * MM).orElseThrow(), 0);
    }

    @Test
    void aCrackThatHasBegunIsNotCreditedWithStopping() {
        StressAlongDepth shallow = new StressAlongDepth(List.of(0.0, 0.002, 0.004), List.of(200e6, 200e6, -300e6));
        IntensityCurve curve = new GrowingCrack(GrowingCrack.Kind.SURFACE, 1, 0.02, Double.POSITIVE_INFINITY)
                .curve(shallow);
        double before = 0;
        for (double intensity : curve.intensities()) {
            assertTrue(intensity >= before);
            before = intensity;
        }
        assertEquals(0, shallow.at(0.01), 0, "compression counts as none");
    }

    private static final InspectionInterval.Practice HALF_A_YEAR_AT_MOST = new InspectionInterval.Practice(2, 365 * DAY,
            DAY);

    /** 101.04 days from detectable to critical give 50.52, 10.10 give 5.05: own arithmetic on the half of the window. */
    @ParameterizedTest
    @CsvSource({"1e-9, 50.52", "1e-8, 5.052"})
    void halfOfTheTimeIsTheInterval(double velocity, double days) {
        InspectionInterval interval = InspectionInterval.of(constantGeometry(100), new GrowthLaw.Plateau(1, velocity),
                1.27 * MM, 10 * MM, HALF_A_YEAR_AT_MOST);
        assertInstanceOf(InspectionInterval.ByGrowth.class, interval);
        assertEquals(days, interval.length() / DAY, 5.1e-3);
    }

    @Test
    void neverNegativeAndNeverWithoutEnd() {
        InspectionInterval critical = InspectionInterval.of(constantGeometry(100), new GrowthLaw.Plateau(1, 1e-9), 12 * MM,
                10 * MM, HALF_A_YEAR_AT_MOST);
        assertInstanceOf(InspectionInterval.AlreadyCritical.class, critical);
        assertTrue(critical.isNotInspectable());
        InspectionInterval fast = InspectionInterval.of(constantGeometry(100), new GrowthLaw.Plateau(1, 1e-6), MM, 10 * MM,
                HALF_A_YEAR_AT_MOST);
        assertInstanceOf(InspectionInterval.TooFast.class, fast);
        assertTrue(fast.isNotInspectable());
        InspectionInterval none = InspectionInterval.of(constantGeometry(100), new GrowthLaw.Plateau(50 * MPA, 1e-6), MM,
                10 * MM, HALF_A_YEAR_AT_MOST);
        assertEquals(365 * DAY, none.length(), 0);
        assertThrows(IllegalArgumentException.class, () -> new InspectionInterval.Practice(0.5, DAY, DAY));
    }

    @Test
    void lawsThatAreNoneAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new GrowthLaw.Plateau(-1, 1));
        assertThrows(IllegalArgumentException.class, () -> new GrowthLaw.Rise(2, 1, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> new GrowthLaw.Power(0, Double.NaN, 1));
        assertThrows(IllegalArgumentException.class, () -> new StressAlongDepth(List.of(0.0, 0.0), List.of(1.0, 2.0)));
    }
}
