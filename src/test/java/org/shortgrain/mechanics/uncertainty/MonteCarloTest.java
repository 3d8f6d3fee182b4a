package org.shortgrain.mechanics.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.uncertainty.Distribution.Normal;
import org.shortgrain.mechanics.uncertainty.Distribution.Rectangular;
import org.shortgrain.mechanics.uncertainty.Distribution.Shape;
import org.shortgrain.mechanics.uncertainty.Distribution.Triangular;
import org.shortgrain.mechanics.uncertainty.MonteCarlo.Outcome;

/**
 * The worked examples of JCGM 101:2008 clause 9 (from memory, confirmed by the closed forms beside them).
 *
 * <p>Tolerance: of a million draws the standard deviation is known to 0.07 % and the ends of a 95 % interval to some
 * 0.27 % of the standard deviation (one standard error, normal); three to four of these are allowed.
 */
class MonteCarloTest {

    private static final MonteCarlo MILLION = new MonteCarlo(1_000_000, 20260115);

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }

    private static void assertOutcome(Outcome outcome, double u, double end) {
        assertEquals(u, outcome.standardDeviation(), 0.003 * u);
        assertEquals(end, outcome.quantile(0.975), 0.01 * u);
        assertEquals(-end, outcome.quantile(0.025), 0.01 * u);
    }

    /** 9.2.2: printed u 2.00 and [-3.92, 3.92]; exact 2 and 3.919928. */
    @Test
    void sumOfFourNormals() {
        assertOutcome(MILLION.run(MonteCarloTest::sum, Collections.nCopies(4, new Normal(0, 1))), 2, 3.919928);
    }

    /** 9.2.3: printed [-3.88, 3.88]; exact (Irwin-Hall) 3.879407. */
    @Test
    void sumOfFourRectangulars() {
        double a = Math.sqrt(3);
        assertOutcome(MILLION.run(MonteCarloTest::sum, Collections.nCopies(4, new Rectangular(-a, a))), 2, 3.879407);
    }

    /** 9.2.4: printed u 10.1 and [-17.0, 17.0], where the law of propagation would give 19.9; u is sqrt(103). */
    @Test
    void oneRectangularThatDominates() {
        double a = Math.sqrt(3);
        List<Distribution> inputs = List.of(new Rectangular(-a, a), new Rectangular(-a, a), new Rectangular(-a, a),
                new Rectangular(-10 * a, 10 * a));
        Outcome outcome = MILLION.run(MonteCarloTest::sum, inputs);
        assertOutcome(outcome, 10.148892, 17.02);
        LawOfPropagation law = new LawOfPropagation(MonteCarloTest::sum, new double[4], new double[] {1, 1, 1, 10});
        assertEquals(19.8918, 1.96 * law.combined(), 5e-5);
        assertEquals(100.0 / 103, outcome.varianceShare(3), 0.001);
    }

    /** 9.4: Y = X1^2 + X2^2 in units of 1e-6, mean and standard deviation exact for normal inputs. */
    @ParameterizedTest
    @CsvSource({"0, 50, 50", "0.010, 150, 111.803", "0.050, 2550, 502.494"})
    void massCalibration(double x1, double mean, double u) {
        Outcome outcome = MILLION.run(v -> v[0] * v[0] + v[1] * v[1],
                List.of(new Normal(x1, 0.005), new Normal(0, 0.005)));
        assertEquals(mean, outcome.mean() * 1e6, 0.004 * u);
        assertEquals(u, outcome.standardDeviation() * 1e6, 0.006 * u);
    }

    /** Bush in a lug, triangular interference 0.010 - 0.025 - 0.040 mm at 2847.0634 MPa/mm; own arithmetic. */
    @Test
    void interferenceOfABushInALug() {
        Outcome outcome = MILLION.run(v -> 2847.0634 * v[0], List.of(new Triangular(0.010, 0.025, 0.040)));
        assertEquals(71.1766, outcome.mean(), 0.07);
        assertEquals(17.43463, outcome.standardDeviation(), 0.06);
        assertEquals(38.1, outcome.quantile(0.025), 0.15);
        assertEquals(104.3, outcome.quantile(0.975), 0.15);
        assertEquals(17.43463, 2847.0634 * new Triangular(0.010, 0.025, 0.040).standardDeviation(), 5e-6);
    }

    /** Limits -a to a: u = a/sqrt(3), a/sqrt(6) and a/1.96. */
    @Test
    void standardUncertaintiesOfLimits() {
        Band limits = new Band(0, -1, 1);
        assertEquals(1 / Math.sqrt(3), Shape.RECTANGULAR.over(limits).standardDeviation(), 1e-15);
        assertEquals(1 / Math.sqrt(6), Shape.TRIANGULAR.over(limits).standardDeviation(), 1e-15);
        assertEquals(1 / 1.96, Shape.NORMAL.over(limits).standardDeviation(), 1e-4);
        assertEquals(0, Shape.NORMAL.over(Band.exact(3)).standardDeviation(), 0);
    }

    @ParameterizedTest
    @CsvSource({"RECTANGULAR", "TRIANGULAR", "NORMAL"})
    void drawsHaveTheMeanAndSpreadOfTheirDistribution(Shape shape) {
        Distribution distribution = shape.over(new Band(2, 1, 6));
        Outcome outcome = MILLION.run(v -> v[0], List.of(distribution));
        double u = distribution.standardDeviation();
        assertEquals(distribution.mean(), outcome.mean(), 0.004 * u);
        assertEquals(u, outcome.standardDeviation(), 0.004 * u);
    }

    @Test
    void theSameSeedGivesTheSameDraws() {
        List<Distribution> inputs = List.of(new Triangular(0, 1, 3), new Normal(0, 1));
        MonteCarlo once = new MonteCarlo(1000, 7);
        assertEquals(once.run(MonteCarloTest::sum, inputs).quantile(0.3), once.run(MonteCarloTest::sum, inputs)
                .quantile(0.3), 0);
        assertNotEquals(once.run(MonteCarloTest::sum, inputs).quantile(0.3),
                new MonteCarlo(1000, 8).run(MonteCarloTest::sum, inputs).quantile(0.3));
    }

    @Test
    void theShareAboveALimitCountsDraws() {
        Outcome outcome = new MonteCarlo(100_000, 1).run(v -> v[0], List.of(new Rectangular(0, 1)));
        assertEquals(0.25, outcome.shareAbove(0.75), 0.005);
        assertEquals(1, outcome.shareAbove(-1), 0);
        assertEquals(0, outcome.shareAbove(1), 0);
    }

    @Test
    void sharesOfALinearModelAddUpToOneAndGoWithTheSquaresOfTheContributions() {
        Outcome outcome = MILLION.run(v -> v[0] + 2 * v[1], List.of(new Normal(5, 1), new Normal(-3, 1)));
        assertEquals(0.2, outcome.varianceShare(0), 0.003);
        assertEquals(0.8, outcome.varianceShare(1), 0.003);
    }
}
