package org.shortgrain.mechanics.uncertainty;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.stat.StatUtils;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The worked examples of the GUM. H.1 as reproduced in the manual of the R package propagate (secondary); data and
 * results of H.2 from memory, consistent with one another. Printed values first, recomputed ones beside them.
 */
class LawOfPropagationTest {

    /** H.1, end gauge calibration: lengths in nm, temperatures in degC. */
    private static final LawOfPropagation END_GAUGE = new LawOfPropagation(
            v -> v[0] + v[1] - v[0] * (v[2] * v[3] + v[4] * v[5]),
            new double[] {50_000_623, 215, 0, -0.1, 11.5e-6, 0}, new double[] {25, 9.7, 0.58e-6, 0.41, 1.2e-6, 0.029});

    @Test
    void endGaugeOfGumH1() {
        assertEquals(50_000_838, END_GAUGE.value(), 0.5, "printed");
        double[] contributions = Arrays.stream(END_GAUGE.contributions()).map(Math::abs).toArray();
        assertArrayEquals(new double[] {25, 9.7, 2.9000, 0, 0, 16.6752}, contributions, 5e-5);
        assertEquals(32, END_GAUGE.combined(), 0.5, "printed");
        assertEquals(31.71061, END_GAUGE.combined(), 5e-6);
    }

    @Test
    void secondOrderTermsOfGumH17() {
        assertEquals(34, END_GAUGE.combinedSecondOrder(), 0.5, "printed");
        assertEquals(12.0168, Math.sqrt(END_GAUGE.secondOrderVariance()), 5e-5);
        assertEquals(33.91115, END_GAUGE.combinedSecondOrder(), 5e-6);
    }

    /** H.1.6 prints 16, cut off from 16.7; with the rounded u_c of 32 it would be 17. */
    @Test
    void effectiveDegreesOfFreedomOfGumH16DependOnRounding() {
        LawOfPropagation sum = new LawOfPropagation(v -> v[0] + v[1] + v[2] + v[3], new double[4],
                new double[] {25, 9.7, 2.9, 16.6});
        double[] degreesOfFreedom = {18, 25.6, 50, 2};
        assertEquals(31.67112, sum.combined(), 5e-6);
        double effective = sum.effectiveDegreesOfFreedom(degreesOfFreedom);
        assertEquals(16.7646, effective, 5e-5);
        assertEquals(16, Math.floor(effective), 0, "printed");
        assertEquals(17.4718, effective * Math.pow(32 / sum.combined(), 4), 5e-5);
    }

    @Test
    void expandedUncertaintyOfGumH1() {
        double factor = LawOfPropagation.coverageFactor(0.99, 16);
        assertEquals(2.920782, factor, 5e-7);
        assertEquals(93, factor * END_GAUGE.combined(), 0.5, "printed");
        assertEquals(92.62, factor * END_GAUGE.combined(), 0.005);
        assertEquals(93.47, factor * 32, 0.01);
    }

    private static final double[][] H2_SETS = {{5.007, 19.663e-3, 1.0456}, {4.994, 19.639e-3, 1.0438},
        {5.005, 19.640e-3, 1.0468}, {4.990, 19.685e-3, 1.0428}, {4.999, 19.678e-3, 1.0433}};
    private static final ToDoubleFunction<double[]> RESISTANCE = v -> v[0] / v[1] * Math.cos(v[2]);
    private static final ToDoubleFunction<double[]> REACTANCE = v -> v[0] / v[1] * Math.sin(v[2]);
    private static final ToDoubleFunction<double[]> IMPEDANCE = v -> v[0] / v[1];

    private static LawOfPropagation h2(ToDoubleFunction<double[]> model, boolean correlated) {
        RealMatrix sets = MatrixUtils.createRealMatrix(H2_SETS);
        double[] means = new double[3];
        double[] uncertainties = new double[3];
        for (int i = 0; i < 3; i++) {
            means[i] = StatUtils.mean(sets.getColumn(i));
            uncertainties[i] = Math.sqrt(StatUtils.variance(sets.getColumn(i)) / H2_SETS.length);
        }
        RealMatrix correlation = correlated ? new PearsonsCorrelation(sets).getCorrelationMatrix()
                : MatrixUtils.createRealIdentityMatrix(3);
        return new LawOfPropagation(model, means, uncertainties, correlation);
    }

    /** Approach 1 of H.2: means and their correlation. V in V, I in A, phi in rad. */
    @Test
    void correlatedInputsOfGumH2() {
        LawOfPropagation r = h2(RESISTANCE, true);
        LawOfPropagation x = h2(REACTANCE, true);
        LawOfPropagation z = h2(IMPEDANCE, true);
        double printed = 0.0006;
        assertEquals(127.732, r.value(), printed);
        assertEquals(219.847, x.value(), printed);
        assertEquals(254.260, z.value(), printed);
        assertEquals(0.071, r.combined(), printed);
        assertEquals(0.295, x.combined(), printed);
        assertEquals(0.236, z.combined(), printed);
        assertEquals(-0.588, r.correlationWith(x), printed);
        assertEquals(-0.485, r.correlationWith(z), printed);
        assertEquals(0.993, x.correlationWith(z), printed);
        double recomputed = 1e-5;
        assertEquals(127.73217, r.value(), recomputed);
        assertEquals(219.84651, x.value(), recomputed);
        assertEquals(254.25970, z.value(), recomputed);
        assertEquals(0.07107, r.combined(), recomputed);
        assertEquals(0.29558, x.combined(), recomputed);
        assertEquals(0.23634, z.combined(), recomputed);
        assertEquals(-0.58843, r.correlationWith(x), recomputed);
        assertEquals(-0.48526, r.correlationWith(z), recomputed);
        assertEquals(0.99251, x.correlationWith(z), recomputed);
    }

    @Test
    void leavingTheCorrelationOutOfGumH2GivesOtherUncertainties() {
        assertEquals(0.195, h2(RESISTANCE, false).combined(), 0.0006, "printed");
        assertEquals(0.19454, h2(RESISTANCE, false).combined(), 1e-5);
        assertEquals(0.20091, h2(REACTANCE, false).combined(), 1e-5);
        assertEquals(0.20408, h2(IMPEDANCE, false).combined(), 1e-5);
    }

    /**
     * Approach 2 of H.2: each set of readings turned into a result, then averaged; differs in the fourth digit only.
     */
    @Test
    void averagingTheResultsOfGumH2AgreesWithTheLawOfPropagation() {
        assertApproach2(RESISTANCE, 127.73163, 0.07127);
        assertApproach2(REACTANCE, 219.84689, 0.29549);
        assertApproach2(IMPEDANCE, 254.26005, 0.23625);
        assertEquals(-0.58828, correlation(RESISTANCE, REACTANCE), 1e-5);
        assertEquals(-0.48506, correlation(RESISTANCE, IMPEDANCE), 1e-5);
        assertEquals(0.99251, correlation(REACTANCE, IMPEDANCE), 1e-5);
    }

    private static double correlation(ToDoubleFunction<double[]> one, ToDoubleFunction<double[]> other) {
        return new PearsonsCorrelation().correlation(Arrays.stream(H2_SETS).mapToDouble(one).toArray(),
                Arrays.stream(H2_SETS).mapToDouble(other).toArray());
    }

    private static void assertApproach2(ToDoubleFunction<double[]> model, double mean, double uncertainty) {
        double[] results = Arrays.stream(H2_SETS).mapToDouble(model).toArray();
        assertEquals(mean, StatUtils.mean(results), 1e-5);
        assertEquals(uncertainty, Math.sqrt(StatUtils.variance(results) / results.length), 1e-5);
        LawOfPropagation approach1 = h2(model, true);
        assertEquals(mean, approach1.value(), 0.01 * uncertainty);
        assertEquals(uncertainty, approach1.combined(), 0.005 * uncertainty);
    }

    /** JCGM 101 9.4 (memory): Y = X1^2 + X2^2, u = 0.005 each; first-order u_c in units of 1e-6. */
    @ParameterizedTest
    @CsvSource({"0, 0", "0.010, 100", "0.050, 500"})
    void firstOrderMissesTheSpreadOfASquareAtItsMinimum(double x1, double printed) {
        LawOfPropagation law = new LawOfPropagation(v -> v[0] * v[0] + v[1] * v[1], new double[] {x1, 0},
                new double[] {0.005, 0.005});
        assertEquals(printed, law.combined() * 1e6, 1e-9);
    }

    /** Exact for normal inputs: u = 50, 111.803, 502.494 in units of 1e-6. */
    @ParameterizedTest
    @CsvSource({"0, 50", "0.010, 111.803", "0.050, 502.494"})
    void secondOrderRecoversIt(double x1, double exact) {
        LawOfPropagation law = new LawOfPropagation(v -> v[0] * v[0] + v[1] * v[1], new double[] {x1, 0},
                new double[] {0.005, 0.005});
        assertEquals(exact, law.combinedSecondOrder() * 1e6, 5e-4);
    }

    @Test
    void unequalNumbersOfInputsAreRefused() {
        assertThrows(IllegalArgumentException.class,
                () -> new LawOfPropagation(v -> v[0], new double[] {1}, new double[] {1, 2}));
    }
}
