package org.shortgrain.mechanics.threshold;

import java.util.List;
import org.hipparchus.stat.regression.SimpleRegression;

/**
 * Stress-time curve through failures only, by least squares: for a trial threshold, ln(sigma - sigma_th) is regressed
 * on ln t; the threshold with the least sum of squares is taken. Run-outs have no place in it; with run-outs use
 * {@link ThresholdFit}.
 */
public final class LeastSquaresFit {

    private static final int FEWEST = 4;
    /** Points of the search for the dip, between no threshold and the lowest failed stress. */
    private static final int GRID = 200;

    private final List<TestResult> results;
    private final double lowestStress;

    /**
     * Takes the results.
     *
     * @param results failures at two or more stresses and times
     * @throws IllegalArgumentException if there are fewer than four, or run-outs among them
     */
    public LeastSquaresFit(List<TestResult> results) {
        if (results.size() < FEWEST || results.stream().anyMatch(r -> !r.cracked())) {
            throw new IllegalArgumentException("least squares needs four or more failures and takes no run-outs");
        }
        this.results = List.copyOf(results);
        this.lowestStress = results.stream().mapToDouble(TestResult::stress).min().orElseThrow();
    }

    /**
     * {@return the sum of squares of ln(sigma - sigma_th) about its line on ln t}
     *
     * @param threshold trial threshold (Pa), from 0 to below the lowest failed stress
     */
    public double sumOfSquares(double threshold) {
        return line(threshold).getSumSquaredErrors();
    }

    /** {@return the curve with the least sum of squares} */
    public StressTimeCurve curve() {
        int best = 0;
        for (int i = 1; i < GRID; i++) {
            best = sumOfSquares(trial(i)) < sumOfSquares(trial(best)) ? i : best;
        }
        double threshold = GoldenSection.lowest(this::sumOfSquares, trial(Math.max(0, best - 1)), trial(best + 1));
        SimpleRegression line = line(threshold);
        return new StressTimeCurve(threshold, Math.exp(line.getIntercept()), -line.getSlope());
    }

    private double trial(int i) {
        return lowestStress * i / (GRID + 1);
    }

    private SimpleRegression line(double threshold) {
        SimpleRegression line = new SimpleRegression();
        for (TestResult r : results) {
            line.addData(Math.log(r.time() / StressTimeCurve.REFERENCE_TIME), Math.log(r.stress() - threshold));
        }
        return line;
    }
}
