package org.shortgrain.mechanics.uncertainty;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hipparchus.random.MersenneTwister;
import org.hipparchus.random.RandomGenerator;

/**
 * Propagation of distributions by drawing from them (JCGM 101:2008).
 *
 * <p>The same seed gives the same draws on every machine. JCGM 101 7.2 asks for 10^4/(1 - p) draws, 200,000 for 95 %,
 * where the ends of the interval are to be reported to two digits; the 10,000 of a review leave a few per cent on them
 * (the note of each result says so), which is small against what is known of its inputs.
 *
 * @param draws number of draws
 * @param seed  seed of the random numbers (Mersenne Twister)
 */
public record MonteCarlo(int draws, long seed) {

    /** Refuses fewer than two draws. */
    public MonteCarlo {
        if (draws < 2) {
            throw new IllegalArgumentException("draws: " + draws);
        }
    }

    /**
     * {@return the outcome of a model over independent inputs}
     *
     * @param model  the model, as a function of its inputs in the given order; must not keep the array
     * @param inputs the inputs
     */
    public Outcome run(ToDoubleFunction<double[]> model, List<Distribution> inputs) {
        RandomGenerator random = new MersenneTwister(seed);
        Distribution[] distributions = inputs.toArray(Distribution[]::new);
        Moments moments = new Moments(distributions.length);
        double[] point = new double[distributions.length];
        double[] results = new double[draws];
        for (int draw = 0; draw < draws; draw++) {
            for (int i = 0; i < point.length; i++) {
                point[i] = distributions[i].draw(random);
            }
            results[draw] = model.applyAsDouble(point);
            moments.add(point, results[draw]);
        }
        return new Outcome(results, moments.mean(), moments.standardDeviation(), moments.squaredCorrelations());
    }

    /** What the draws came to. */
    public static final class Outcome {

        /** Rising. */
        private final double[] results;
        private final double mean;
        private final double standardDeviation;
        private final double[] squaredCorrelations;

        /** Keeps the array and sorts it: one sort is less work than a search for each quantile. */
        private Outcome(double[] results, double mean, double standardDeviation, double[] squaredCorrelations) {
            this.results = results;
            Arrays.sort(results);
            this.mean = mean;
            this.standardDeviation = standardDeviation;
            this.squaredCorrelations = squaredCorrelations;
        }

        /** {@return the average of the results} */
        public double mean() {
            return mean;
        }

        /** {@return the standard deviation of the results, their standard uncertainty} */
        public double standardDeviation() {
            return standardDeviation;
        }

        /**
         * {@return the value that a share of the results does not exceed}
         *
         * @param share the share, above 0 and below 1
         */
        public double quantile(double share) {
            if (!(share > 0 && share < 1)) {
                throw new IllegalArgumentException("share " + share);
            }
            return results[(int) (share * results.length)];
        }

        /**
         * {@return the share of the results above a limit}
         *
         * @param limit the limit
         */
        public double shareAbove(double limit) {
            int above = 0;
            for (double result : results) {
                if (result > limit) {
                    above++;
                }
            }
            return (double) above / results.length;
        }

        /** {@return the number of draws} */
        public int draws() {
            return results.length;
        }

        /**
         * {@return the share of the variance of the result that an input causes: its squared correlation with the
         * result}
         *
         * <p>For independent inputs and a linear model this is c^2 u^2/u_c^2, the share in an uncertainty budget after
         * JCGM 100 5.1.3 (read), and the shares add up to 1. What they lack of 1 is caused by curvature and by inputs
         * acting together.
         *
         * @param input the place of the input in the list that was run
         */
        public double varianceShare(int input) {
            return squaredCorrelations[input];
        }
    }

    /** Running sums for means, variances and correlations, about the first draw to keep their digits. */
    private static final class Moments {

        private final double[] origin;
        private final double[] sum;
        private final double[] sumOfSquares;
        private final double[] sumOfProducts;
        private double resultOrigin;
        private double resultSum;
        private double resultSumOfSquares;
        private int count;

        Moments(int inputs) {
            origin = new double[inputs];
            sum = new double[inputs];
            sumOfSquares = new double[inputs];
            sumOfProducts = new double[inputs];
        }

        void add(double[] point, double result) {
            if (count++ == 0) {
                System.arraycopy(point, 0, origin, 0, origin.length);
                resultOrigin = result;
            }
            double y = result - resultOrigin;
            resultSum += y;
            resultSumOfSquares += y * y;
            for (int i = 0; i < origin.length; i++) {
                double x = point[i] - origin[i];
                sum[i] += x;
                sumOfSquares[i] += x * x;
                sumOfProducts[i] += x * y;
            }
        }

        double mean() {
            return resultOrigin + resultSum / count;
        }

        double standardDeviation() {
            return Math.sqrt(resultVariance() / (count - 1));
        }

        double[] squaredCorrelations() {
            double[] squared = new double[origin.length];
            for (int i = 0; i < squared.length; i++) {
                double covariance = sumOfProducts[i] - sum[i] * resultSum / count;
                double variance = (sumOfSquares[i] - sum[i] * sum[i] / count) * resultVariance();
                squared[i] = variance > 0 ? covariance * covariance / variance : 0;
            }
            return squared;
        }

        private double resultVariance() {
            return Math.max(0, resultSumOfSquares - resultSum * resultSum / count);
        }
    }
}
