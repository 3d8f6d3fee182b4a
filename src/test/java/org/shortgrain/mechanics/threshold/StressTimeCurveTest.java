package org.shortgrain.mechanics.threshold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StressTimeCurveTest {

    private static final double MPA = 1e6;
    private static final double DAY = StressTimeCurve.REFERENCE_TIME;

    /** Exact points of sigma_th 50 MPa, A 400 MPa, m 0.5, t in days; own arithmetic. */
    private static final StressTimeCurve CURVE = new StressTimeCurve(50 * MPA, 400 * MPA, 0.5);

    private static final double[][] EXACT = {{300, 2.56}, {200, 400.0 / 150 * 400 / 150}, {150, 16}, {100, 64}, {75, 256}};

    private static List<TestResult> exact() {
        List<TestResult> results = new ArrayList<>();
        for (double[] point : EXACT) {
            results.add(new TestResult(point[0] * MPA, point[1] * DAY, true));
        }
        return results;
    }

    @ParameterizedTest
    @CsvSource({"300, 2.56", "200, 7.111111", "150, 16", "100, 64", "75, 256", "55, 6400"})
    void lifeOnTheCurve(double stress, double days) {
        assertEquals(days, CURVE.timeAt(stress * MPA) / DAY, 5e-7 * Math.max(1, days));
        assertEquals(stress, CURVE.stressAt(days * DAY) / MPA, 1e-5);
    }

    @Test
    void atTheThresholdNothingEverCracks() {
        assertEquals(Double.POSITIVE_INFINITY, CURVE.timeAt(50 * MPA), 0);
        assertEquals(Double.POSITIVE_INFINITY, CURVE.timeAt(10 * MPA), 0);
    }

    @Test
    void leastSquaresRecoversAnExactCurve() {
        StressTimeCurve fitted = new LeastSquaresFit(exact()).curve();
        assertEquals(50, fitted.threshold() / MPA, 1e-6 * 50);
        assertEquals(400, fitted.amplitude() / MPA, 1e-6 * 400);
        assertEquals(0.5, fitted.exponent(), 1e-6);
    }

    @ParameterizedTest
    @CsvSource({"0, 0.0191632", "20, 0.0141873", "40, 0.0040878", "60, 0.0182924", "70, 0.3165851"})
    void sumOfSquaresAboutTheLine(double threshold, double expected) {
        assertEquals(expected, new LeastSquaresFit(exact()).sumOfSquares(threshold * MPA), 5e-7);
    }

    @Test
    void leastSquaresTakesNoRunOuts() {
        List<TestResult> results = exact();
        results.add(new TestResult(55 * MPA, 84 * DAY, false));
        assertThrows(IllegalArgumentException.class, () -> new LeastSquaresFit(results));
    }

    /**
     * 304 stainless in boiling 42 % magnesium chloride, tapered bars (doi 10.13374/j.issn1001-053x.2008.05.012,
     * abstract): t_init = 4310 exp(-0.0097 sigma), t_fail = 6964 exp(-0.0095 sigma); lives by own arithmetic, units as
     * printed.
     */
    @ParameterizedTest
    @CsvSource({"100, 1633.848, 2693.264, 0.6066", "200, 619.364, 1041.596, 0.5946", "300, 234.790, 402.828, 0.5829",
        "400, 89.005, 155.790, 0.5713"})
    void exponentialLifeOfSteelInMagnesiumChloride(double stress, double start, double failure, double ratio) {
        double starts = new ExponentialLife(4310, 0.0097).timeAt(stress);
        double fails = new ExponentialLife(6964, 0.0095).timeAt(stress);
        assertEquals(start, starts, 5e-4);
        assertEquals(failure, fails, 5e-4);
        assertEquals(ratio, starts / fails, 5e-5);
    }
}
