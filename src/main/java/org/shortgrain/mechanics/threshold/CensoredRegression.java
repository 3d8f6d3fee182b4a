package org.shortgrain.mechanics.threshold;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealVector;
import org.hipparchus.special.Erf;
import org.hipparchus.stat.regression.SimpleRegression;

/**
 * Straight line through observations of which some are only known to lie above: maximum likelihood with normal scatter.
 *
 * <p>{@code y = a + b x + s e}. In Olsen's parameters (a/s, b/s, 1/s) the log-likelihood is concave, so Newton's method
 * with step halving finds its one peak (R. J. Olsen, Econometrica 46 (1978) 1211, memory).
 *
 * @param intercept     a
 * @param slope         b
 * @param scatter       s, standard deviation about the line
 * @param logLikelihood its peak, without the constant of the normal density
 */
record CensoredRegression(double intercept, double slope, double scatter, double logLikelihood) {

    private static final int MOST_STEPS = 100;
    /** Gain of log-likelihood below which the peak is reached; an interval needs some 1e-3 of it. */
    private static final double CONVERGED = 1e-10;
    /** Below this the normal tail is taken from its asymptotic expansion, before the error function underflows. */
    private static final double FAR_TAIL = -30;

    /**
     * Fits the line.
     *
     * @param x        abscissae
     * @param y        ordinates
     * @param observed whether y was observed; if not, the true value lies above it
     */
    static CensoredRegression fit(double[] x, double[] y, boolean[] observed) {
        double[] p = start(x, y);
        Likelihood at = new Likelihood(x, y, observed, p);
        for (int step = 0; step < MOST_STEPS; step++) {
            RealVector newton = new LUDecomposition(new Array2DRowRealMatrix(at.curvature)).getSolver()
                    .solve(new ArrayRealVector(at.gradient));
            Likelihood next = better(x, y, observed, p, newton.toArray(), at);
            double gain = next.value - at.value;
            p = next.parameters;
            at = next;
            if (gain < CONVERGED) {
                break;
            }
        }
        return new CensoredRegression(p[0] / p[2], p[1] / p[2], 1 / p[2], at.value);
    }

    /** Least squares as if all were observed. */
    private static double[] start(double[] x, double[] y) {
        SimpleRegression line = new SimpleRegression();
        for (int i = 0; i < x.length; i++) {
            line.addData(x[i], y[i]);
        }
        double scatter = Math.max(Math.sqrt(line.getMeanSquareError()), 1e-3);
        return new double[] {line.getIntercept() / scatter, line.getSlope() / scatter, 1 / scatter};
    }

    private static Likelihood better(double[] x, double[] y, boolean[] observed, double[] p, double[] newton,
            Likelihood at) {
        for (double share = 1; share > 1e-9; share /= 2) {
            double[] trial = {p[0] + share * newton[0], p[1] + share * newton[1], p[2] + share * newton[2]};
            if (trial[2] > 0) {
                Likelihood next = new Likelihood(x, y, observed, trial);
                if (next.value >= at.value) {
                    return next;
                }
            }
        }
        return at;
    }

    /** Log-likelihood with its gradient and its curvature (minus the second derivatives) at given parameters. */
    private static final class Likelihood {

        private final double[] parameters;
        private final double[] gradient = new double[3];
        private final double[][] curvature = new double[3][3];
        private double value;

        Likelihood(double[] x, double[] y, boolean[] observed, double... p) {
            this.parameters = p;
            for (int i = 0; i < x.length; i++) {
                double residual = p[2] * y[i] - p[0] - p[1] * x[i];
                double[] direction = {1, x[i], -y[i]};
                if (observed[i]) {
                    value += Math.log(p[2]) - residual * residual / 2;
                    add(direction, residual, 1);
                    gradient[2] += 1 / p[2];
                    curvature[2][2] += 1 / (p[2] * p[2]);
                } else {
                    double logBeyond = logNormal(-residual);
                    double mills = mills(-residual, logBeyond);
                    value += logBeyond;
                    add(direction, mills, mills * (mills - residual));
                }
            }
        }

        private void add(double[] direction, double slope, double bend) {
            for (int r = 0; r < 3; r++) {
                gradient[r] += slope * direction[r];
                for (int c = 0; c < 3; c++) {
                    curvature[r][c] += bend * direction[r] * direction[c];
                }
            }
        }
    }

    /** Logarithm of the standard normal distribution function. */
    static double logNormal(double z) {
        return z > FAR_TAIL ? Math.log(Erf.erfc(-z / Math.sqrt(2)) / 2)
                : -z * z / 2 - Math.log(-z * Math.sqrt(2 * Math.PI)) - 1 / (z * z);
    }

    /** Density over distribution function of the standard normal distribution, the logarithm of the latter given. */
    static double mills(double z, double logNormal) {
        return Math.exp(-z * z / 2 - Math.log(2 * Math.PI) / 2 - logNormal);
    }
}
