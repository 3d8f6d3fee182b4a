package org.shortgrain.mechanics.threshold;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.distribution.continuous.TDistribution;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Computed.Input;
import org.shortgrain.mechanics.Computed.Profile;
import org.shortgrain.mechanics.Computed.Step;
import org.shortgrain.mechanics.Computed.Validity;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.SourceStatus;

/**
 * Threshold from own tests with run-outs, by maximum likelihood.
 *
 * <p>Model: ln t is normal with one scatter about the {@link StressTimeCurve}; a run-out says only that its life is
 * longer than the test; a stress at or below the threshold never cracks. For each trial threshold the rest is a
 * {@link CensoredRegression}, which gives the profile likelihood; the 95 % interval holds every threshold whose
 * log-likelihood lies within {@link #drop} of the best. Half the 95 % point of chi-square, which holds for many specimens,
 * is too narrow for some tens of them; the bound of regression with unknown scatter is taken, counting the specimens that
 * cracked (likelihood regions of nonlinear regression, Bates and Watts 1988, memory).
 *
 * <p>The interval is searched between no threshold and the lowest stress that cracked, which must lie above it. An
 * interval that reaches either end says that the tests do not identify the threshold. Nothing is said of times beyond
 * the longest test.
 */
public final class ThresholdFit {

    private static final int FEWEST_CRACKED = 4;
    private static final int FEWEST_STRESSES = 3;
    /** Trial thresholds between none and the lowest stress that cracked. */
    private static final int GRID = 100;
    private static final double CONFIDENCE = 0.95;
    /** Threshold, amplitude and exponent. */
    private static final int CURVE_PARAMETERS = 3;
    /** Accuracy of the ends of the interval (Pa). */
    private static final double END_ACCURACY = 100;
    /** Points of the curve for a figure. */
    private static final int CURVE_POINTS = 60;

    private final List<TestResult> results;
    private final double lowestCracked;
    private final double best;
    private final CensoredRegression bestFit;
    private final double low;
    private final double high;

    private ThresholdFit(List<TestResult> results) {
        this.results = List.copyOf(results);
        this.lowestCracked = results.stream().filter(TestResult::cracked).mapToDouble(TestResult::stress).min()
                .orElseThrow();
        double[] profile = IntStream.range(0, GRID).mapToDouble(i -> logLikelihood(trial(i))).toArray();
        int peak = IntStream.range(0, GRID).reduce(0, (a, b) -> profile[b] > profile[a] ? b : a);
        double inside = GoldenSection.lowest(t -> -logLikelihood(t), trial(Math.max(0, peak - 1)),
                trial(Math.min(GRID - 1, peak + 1)));
        this.best = logLikelihood(inside) >= profile[peak] ? inside : trial(peak);
        this.bestFit = regression(best);
        this.low = end(-1, profile);
        this.high = end(1, profile);
    }

    /**
     * {@return the fit; empty if there are too few results: four that cracked and three different stresses are needed}
     *
     * @param results results of one alloy, temper, form, direction and environment
     */
    public static Optional<ThresholdFit> of(List<TestResult> results) {
        boolean enough = results.stream().filter(TestResult::cracked).count() >= FEWEST_CRACKED
                && results.stream().filter(TestResult::cracked).mapToDouble(TestResult::stress).distinct().count()
                        >= FEWEST_STRESSES;
        return enough ? Optional.of(new ThresholdFit(results)) : Optional.empty();
    }

    /** {@return whether both ends of the interval lie inside the range that was searched} */
    public boolean isIdentified() {
        return low > 0 && high < trial(GRID - 1);
    }

    /** {@return the most likely curve; empty if life does not fall with stress} */
    public Optional<StressTimeCurve> curve() {
        if (bestFit.slope() >= 0) {
            return Optional.empty();
        }
        double exponent = -1 / bestFit.slope();
        return Optional.of(new StressTimeCurve(best, Math.exp(bestFit.intercept() * exponent), exponent));
    }

    /** {@return the standard deviation of ln t about the curve} */
    public double scatter() {
        return bestFit.scatter();
    }

    /** {@return the threshold with its 95 % interval, {@code threshold.own-tests} (Pa), and the curve for a figure} */
    public Computed threshold() {
        long cracked = results.stream().filter(TestResult::cracked).count();
        List<Step> steps = new ArrayList<>();
        steps.add(new Step("s", "scatter of ln t", SiUnit.ONE, Band.exact(scatter())));
        curve().ifPresent(c -> {
            steps.add(new Step("A", "stress above the threshold at a life of one day", SiUnit.PASCAL,
                    Band.exact(c.amplitude())));
            steps.add(new Step("m", "exponent", SiUnit.ONE, Band.exact(c.exponent())));
        });
        List<Input> inputs = List.of(count("n_f", "specimens that cracked", cracked),
                count("n_r", "run-outs", results.size() - cracked),
                new Input("sigma_f,min", "lowest stress that cracked", SiUnit.PASCAL, Band.exact(lowestCracked),
                        "test results", Optional.empty()),
                new Input("t_max", "longest test", SiUnit.SECOND, Band.exact(longest()), "test results",
                        Optional.empty()));
        return new Computed("threshold.own-tests", "Threshold stress from own tests", SiUnit.PASCAL,
                new Band(best, low, high), "sigma = sigma_th + A (t/1 day)^-m, ln t normal about it", inputs, steps,
                "95 % interval by profile likelihood", validity(), List.of(
                        new Citation("own-derivation", "maximum likelihood with run-outs", SourceStatus.DERIVED),
                        new Citation("corrosion-1971-84", "an incubation time and a threshold stress exist, abstract",
                                SourceStatus.READ)),
                List.of(String.format(Locale.ROOT, "No statement beyond the longest test of %.0f days.",
                        longest() / StressTimeCurve.REFERENCE_TIME)), curve().map(this::profile).stream().toList());
    }

    private static Input count(String symbol, String meaning, long number) {
        return new Input(symbol, meaning, SiUnit.ONE, Band.exact(number), "test results", Optional.empty());
    }

    private Validity validity() {
        String scope = "One alloy, temper, form, direction and environment. ";
        if (curve().isEmpty()) {
            return new Validity(false, scope + "Threshold not identified: life does not fall with stress.");
        }
        if (low <= 0) {
            return new Validity(false, scope + "Threshold not identified: the interval reaches zero.");
        }
        return isIdentified() ? new Validity(true, scope + "The interval lies between the stresses tested and zero.")
                : new Validity(false, scope + "Threshold not identified: the interval reaches the lowest stress that"
                        + " cracked; its lower end still holds.");
    }

    private Profile profile(StressTimeCurve curve) {
        List<Double> times = new ArrayList<>();
        List<Double> stresses = new ArrayList<>();
        double shortest = results.stream().mapToDouble(TestResult::time).min().orElseThrow();
        for (int i = 0; i < CURVE_POINTS; i++) {
            double time = shortest * Math.pow(longest() / shortest, (double) i / (CURVE_POINTS - 1));
            times.add(time);
            stresses.add(curve.stressAt(time));
        }
        return new Profile("most likely curve", SiUnit.SECOND, SiUnit.PASCAL, times, stresses);
    }

    private double longest() {
        return results.stream().mapToDouble(TestResult::time).max().orElseThrow();
    }

    private double trial(int i) {
        return lowestCracked * i / GRID;
    }

    /** Profile log-likelihood of a threshold. */
    private double logLikelihood(double threshold) {
        return regression(threshold).logLikelihood();
    }

    private CensoredRegression regression(double threshold) {
        List<TestResult> above = results.stream().filter(r -> r.stress() > threshold).toList();
        double[] x = above.stream().mapToDouble(r -> Math.log(r.stress() - threshold)).toArray();
        double[] y = above.stream().mapToDouble(r -> Math.log(r.time() / StressTimeCurve.REFERENCE_TIME)).toArray();
        boolean[] cracked = new boolean[above.size()];
        for (int i = 0; i < cracked.length; i++) {
            cracked[i] = above.get(i).cracked();
        }
        return CensoredRegression.fit(x, y, cracked);
    }

    /**
     * By how much the log-likelihood may fall short of the best: {@code n/2 ln(1 + F/(n - 3))}, F the 95 % point with 1 and
     * n - 3 degrees of freedom, n the specimens that cracked, 3 the parameters of the curve. Tends to half the point of
     * chi-square, 1.92, with many specimens.
     */
    static double drop(long cracked) {
        double freedom = cracked - CURVE_PARAMETERS;
        double t = new TDistribution(freedom).inverseCumulativeProbability((1 + CONFIDENCE) / 2);
        return cracked / 2.0 * Math.log1p(t * t / freedom);
    }

    /**
     * Outermost end of the interval on one side (Pa): walks in from the end of the range to the first threshold inside.
     */
    private double end(int side, double[] profile) {
        double limit = bestFit.logLikelihood() - drop(results.stream().filter(TestResult::cracked).count());
        int i = side < 0 ? 0 : GRID - 1;
        if (profile[i] >= limit) {
            return trial(i);
        }
        while (profile[i] < limit && (trial(i) - best) * side > 0) {
            i -= side;
        }
        double inner = (trial(i) - best) * side > 0 ? trial(i) : best;
        double outer = trial(i + side);
        return new BracketingNthOrderBrentSolver(END_ACCURACY, 5).solve(GRID, t -> logLikelihood(t) - limit,
                Math.min(inner, outer), Math.max(inner, outer));
    }
}
