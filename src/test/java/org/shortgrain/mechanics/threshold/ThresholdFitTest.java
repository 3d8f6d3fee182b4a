package org.shortgrain.mechanics.threshold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.random.MersenneTwister;
import org.hipparchus.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;

class ThresholdFitTest {

    private static final double MPA = 1e6;
    private static final double DAY = StressTimeCurve.REFERENCE_TIME;
    private static final StressTimeCurve TRUE = new StressTimeCurve(50 * MPA, 400 * MPA, 0.5);
    private static final double END_OF_TEST = 84 * DAY;
    private static final double[] LEVELS = {45, 55, 65, 75, 90, 110, 140, 180, 240, 300};

    /** A test programme drawn from the true curve with a scatter of ln t, ended after 84 days. */
    private static List<TestResult> programme(RandomGenerator random, double scatter, int perLevel, double... levels) {
        return endedAfter(END_OF_TEST, random, scatter, perLevel, levels);
    }

    private static List<TestResult> endedAfter(double endOfTest, RandomGenerator random, double scatter, int perLevel,
            double... levels) {
        List<TestResult> results = new ArrayList<>();
        for (double level : levels) {
            for (int i = 0; i < perLevel; i++) {
                double life = TRUE.timeAt(level * MPA) * Math.exp(scatter * random.nextGaussian());
                boolean cracked = life <= endOfTest;
                results.add(new TestResult(level * MPA, cracked ? life : endOfTest, cracked));
            }
        }
        return results;
    }

    private static ThresholdFit fit(long seed, double scatter, int perLevel, double... levels) {
        return ThresholdFit.of(programme(new MersenneTwister(seed), scatter, perLevel, levels)).orElseThrow();
    }

    /**
     * The 95 % interval must hold the true threshold in 92 to 98 of 100 programmes: 200 programmes have a standard
     * error of 1.5 %, so two of them either side.
     */
    @Test
    void theIntervalHoldsTheTrueThresholdAsOftenAsItClaims() {
        int programmes = 200;
        int held = 0;
        for (int seed = 1; seed <= programmes; seed++) {
            Band threshold = fit(seed, 0.4, 5, LEVELS).threshold().value();
            held += threshold.low() <= TRUE.threshold() && TRUE.threshold() <= threshold.high() ? 1 : 0;
        }
        double coverage = (double) held / programmes;
        System.out.printf("coverage of the 95 %% interval of the threshold over %d programmes: %.3f%n", programmes, coverage);
        assertTrue(coverage >= 0.92 && coverage <= 0.98, "coverage " + coverage);
    }

    /** Run for 1000 days, so that specimens crack close to the threshold: 65 MPa takes 711 days. */
    @Test
    void aLongWellSpacedProgrammeIdentifiesTheThreshold() {
        ThresholdFit fit = ThresholdFit.of(endedAfter(1000 * DAY, new MersenneTwister(3), 0.2, 5, LEVELS)).orElseThrow();
        Computed threshold = fit.threshold();
        assertTrue(fit.isIdentified());
        assertTrue(threshold.validity().inside());
        assertEquals(50, threshold.value().value() / MPA, 5);
        assertEquals(0.2, fit.scatter(), 0.06);
        assertEquals(60, threshold.profiles().get(0).x().size());
        assertTrue(threshold.notes().get(0).contains("1000 days"));
    }

    @Test
    void runOutsCountAsLivesBeyondTheEndOfTheTest() {
        List<TestResult> results = programme(new MersenneTwister(5), 0.3, 4, LEVELS);
        List<TestResult> asFailures = results.stream().map(r -> new TestResult(r.stress(), r.time(), true)).toList();
        double right = ThresholdFit.of(results).orElseThrow().threshold().value().value();
        double wrong = ThresholdFit.of(asFailures).orElseThrow().threshold().value().value();
        assertTrue(Math.abs(right - TRUE.threshold()) < Math.abs(wrong - TRUE.threshold()),
                () -> "run-outs as run-outs: " + right + ", as failures at the end of the test: " + wrong);
    }

    @Test
    void moreSpecimensNarrowTheInterval() {
        Band few = fit(11, 0.4, 3, LEVELS).threshold().value();
        Band many = fit(11, 0.4, 30, LEVELS).threshold().value();
        assertTrue(many.high() - many.low() < few.high() - few.low());
    }

    @Test
    void highStressesAloneDoNotIdentifyAThreshold() {
        ThresholdFit fit = fit(2, 0.5, 3, 200, 250, 300);
        Computed threshold = fit.threshold();
        assertFalse(fit.isIdentified());
        assertFalse(threshold.validity().inside());
        assertTrue(threshold.validity().statement().contains("Threshold not identified"));
        assertEquals(0, threshold.value().low(), 0);
    }

    @Test
    void lifeThatDoesNotFallWithStressHasNoCurve() {
        List<TestResult> results = new ArrayList<>();
        for (double stress : new double[] {100, 150, 200, 250}) {
            results.add(new TestResult(stress * MPA, stress * DAY / 10, true));
            results.add(new TestResult(stress * MPA, stress * DAY / 9, true));
        }
        ThresholdFit fit = ThresholdFit.of(results).orElseThrow();
        assertTrue(fit.curve().isEmpty());
        assertFalse(fit.threshold().validity().inside());
    }

    /** Without run-outs, ln of the likelihood ratio of normal regression is n/2 ln(1 + t^2/(n - p)); half of 3.8415 in the end. */
    @Test
    void theBoundOfTheIntervalTendsToThatOfChiSquare() {
        assertEquals(3.8415 / 2, ThresholdFit.drop(100_000), 1e-3);
        assertEquals(13.0 * Math.log1p(2.0687 * 2.0687 / 23), ThresholdFit.drop(26), 1e-3, "t of 23 degrees: 2.0687, tables");
        assertTrue(ThresholdFit.drop(8) > ThresholdFit.drop(16));
    }

    @Test
    void tooFewResultsGiveNoFit() {
        assertTrue(ThresholdFit.of(programme(new MersenneTwister(1), 0.3, 2, 45, 300)).isEmpty());
    }

    /** Closed forms: Mills ratio and log of the normal distribution at 0; the tail expansion joins at -30. */
    @Test
    void theNormalTailIsKeptToItsFarEnd() {
        assertEquals(Math.log(0.5), CensoredRegression.logNormal(0), 1e-15);
        assertEquals(Math.sqrt(2 / Math.PI), CensoredRegression.mills(0, CensoredRegression.logNormal(0)), 1e-12);
        assertEquals(CensoredRegression.logNormal(-29.999999), CensoredRegression.logNormal(-30.000001), 1e-4);
        assertEquals(50.02, CensoredRegression.mills(-50, CensoredRegression.logNormal(-50)), 0.001);
    }

    /** Without run-outs the censored line is the least-squares line. */
    @Test
    void withoutRunOutsTheLineIsThatOfLeastSquares() {
        CensoredRegression line = CensoredRegression.fit(new double[] {0, 1, 2, 3}, new double[] {1, 2.5, 2.5, 4},
                new boolean[] {true, true, true, true});
        assertEquals(0.9, line.slope(), 1e-6);
        assertEquals(1.15, line.intercept(), 1e-6);
        assertEquals(Math.sqrt(0.45 / 4), line.scatter(), 1e-6, "maximum likelihood divides by n");
    }
}
