package org.shortgrain.mechanics.uncertainty;

import java.util.function.ToDoubleFunction;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.linear.RealMatrix;

/**
 * Law of propagation of uncertainty (JCGM 100:2008, clause 5): the model is taken as a plane at the estimates.
 *
 * <p>{@code u_c^2 = sum c_i^2 u_i^2 + 2 sum c_i c_j u_i u_j r_ij}, each sensitivity c_i by a central difference over
 * one standard uncertainty (5.1.3, note 2). Valid where the model is nearly plane over the uncertainties; the
 * second-order terms of the note to 5.1.2 (read) show by how much it is not, for normal inputs.
 */
public final class LawOfPropagation {

    private final ToDoubleFunction<double[]> model;
    private final double[] estimates;
    private final double[] uncertainties;
    private final double[][] correlation;

    /**
     * Independent inputs.
     *
     * @param model         the model, as a function of its inputs in order
     * @param estimates     best estimates of the inputs
     * @param uncertainties their standard uncertainties
     */
    public LawOfPropagation(ToDoubleFunction<double[]> model, double[] estimates, double[] uncertainties) {
        this(model, estimates, uncertainties, identity(estimates.length));
    }

    /**
     * Correlated inputs.
     *
     * @param model         the model, as a function of its inputs in order
     * @param estimates     best estimates of the inputs
     * @param uncertainties their standard uncertainties
     * @param correlation   their correlation matrix
     * @throws IllegalArgumentException if the sizes differ
     */
    public LawOfPropagation(ToDoubleFunction<double[]> model, double[] estimates, double[] uncertainties,
            RealMatrix correlation) {
        this(model, estimates, uncertainties, correlation.getData());
    }

    private LawOfPropagation(ToDoubleFunction<double[]> model, double[] estimates, double[] uncertainties,
            double[][] correlation) {
        if (uncertainties.length != estimates.length || correlation.length != estimates.length
                || correlation.length > 0 && correlation[0].length != estimates.length) {
            throw new IllegalArgumentException("estimates, uncertainties and correlations differ in number");
        }
        this.model = model;
        this.estimates = estimates.clone();
        this.uncertainties = uncertainties.clone();
        this.correlation = correlation;
    }

    /** Written out: the library's matrices set up their number formats, which delays a cold review by milliseconds. */
    private static double[][] identity(int size) {
        double[][] identity = new double[size][size];
        for (int i = 0; i < size; i++) {
            identity[i][i] = 1;
        }
        return identity;
    }

    /** {@return the result at the estimates} */
    public double value() {
        return model.applyAsDouble(estimates.clone());
    }

    /** {@return the contribution c_i u_i of each input, with its sign} */
    public double[] contributions() {
        double[] contributions = new double[estimates.length];
        for (int i = 0; i < contributions.length; i++) {
            contributions[i] = (shifted(i, 1, i, 0) - shifted(i, -1, i, 0)) / 2;
        }
        return contributions;
    }

    /** {@return the combined standard uncertainty u_c} */
    public double combined() {
        return Math.sqrt(Math.max(0, covarianceWith(this)));
    }

    /**
     * {@return the correlation of two results that share their inputs}
     *
     * @param other another model of the same inputs
     */
    public double correlationWith(LawOfPropagation other) {
        return covarianceWith(other) / (combined() * other.combined());
    }

    private double covarianceWith(LawOfPropagation other) {
        double[] mine = contributions();
        double[] theirs = other.contributions();
        double covariance = 0;
        for (int i = 0; i < mine.length; i++) {
            for (int j = 0; j < theirs.length; j++) {
                covariance += mine[i] * correlation[i][j] * theirs[j];
            }
        }
        return covariance;
    }

    /** {@return the second-order terms sum [1/2 f_ij^2 + f_i f_ijj] u_i^2 u_j^2, to be added to u_c^2} */
    public double secondOrderVariance() {
        double[] first = contributions();
        double variance = 0;
        for (int i = 0; i < first.length; i++) {
            for (int j = 0; j < first.length; j++) {
                double mixed = mixed(i, j);
                variance += mixed * mixed / 2 + first[i] * third(i, j);
            }
        }
        return variance;
    }

    /** {@return the combined standard uncertainty with the second-order terms; independent normal inputs} */
    public double combinedSecondOrder() {
        double first = combined();
        return Math.sqrt(Math.max(0, first * first + secondOrderVariance()));
    }

    /**
     * {@return the effective degrees of freedom after Welch and Satterthwaite, u_c^4 / sum (c_i u_i)^4/nu_i}
     *
     * @param degreesOfFreedom degrees of freedom of each input; positive infinity where the uncertainty is taken as
     *                         known
     */
    public double effectiveDegreesOfFreedom(double... degreesOfFreedom) {
        double[] contributions = contributions();
        double denominator = 0;
        for (int i = 0; i < contributions.length; i++) {
            denominator += Math.pow(contributions[i], 4) / degreesOfFreedom[i];
        }
        return Math.pow(combined(), 4) / denominator;
    }

    /**
     * {@return the coverage factor t_p of Student's distribution}
     *
     * @param probability      coverage probability, such as 0.95
     * @param degreesOfFreedom degrees of freedom; JCGM 100 G.4.1 rounds them down first
     */
    public static double coverageFactor(double probability, double degreesOfFreedom) {
        return new TDistribution(degreesOfFreedom).inverseCumulativeProbability((1 + probability) / 2);
    }

    /** f_ij u_i u_j by central differences over one standard uncertainty. */
    private double mixed(int i, int j) {
        if (i == j) {
            return shifted(i, 1, i, 0) - 2 * value() + shifted(i, -1, i, 0);
        }
        return (shifted(i, 1, j, 1) - shifted(i, 1, j, -1) - shifted(i, -1, j, 1) + shifted(i, -1, j, -1)) / 4;
    }

    /** f_ijj u_i u_j^2 by central differences over one standard uncertainty. */
    private double third(int i, int j) {
        if (i == j) {
            return (shifted(i, 2, i, 0) - 2 * shifted(i, 1, i, 0) + 2 * shifted(i, -1, i, 0) - shifted(i, -2, i, 0)) / 2;
        }
        double forward = shifted(i, 1, j, 1) - 2 * shifted(i, 1, j, 0) + shifted(i, 1, j, -1);
        double backward = shifted(i, -1, j, 1) - 2 * shifted(i, -1, j, 0) + shifted(i, -1, j, -1);
        return (forward - backward) / 2;
    }

    /** The model with two inputs shifted by so many standard uncertainties. */
    private double shifted(int i, double byI, int j, double byJ) {
        double[] point = estimates.clone();
        point[i] += byI * uncertainties[i];
        point[j] += byJ * uncertainties[j];
        return model.applyAsDouble(point);
    }
}
