package org.shortgrain.mechanics.sustained;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.hipparchus.stat.interval.BinomialProportion;
import org.hipparchus.stat.interval.ConfidenceInterval;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Computed.Input;
import org.shortgrain.mechanics.Computed.Step;
import org.shortgrain.mechanics.Direction;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.GrainAxes;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.mechanics.StressTensor;
import org.shortgrain.mechanics.sustained.Likelihood.Share;
import org.shortgrain.mechanics.uncertainty.Distribution;
import org.shortgrain.mechanics.uncertainty.Distribution.Rectangular;
import org.shortgrain.mechanics.uncertainty.Distribution.Shape;
import org.shortgrain.mechanics.uncertainty.LawOfPropagation;
import org.shortgrain.mechanics.uncertainty.MonteCarlo;
import org.shortgrain.mechanics.uncertainty.MonteCarlo.Outcome;
import org.shortgrain.terms.GrainDirection;

/**
 * The utilisation as a function of everything uncertain: the size of each contribution, the threshold, and the lie of
 * the grain within its cone (any direction of the cone equally likely by solid angle).
 *
 * <p>The threshold is rectangular over its range, as only its limits are known; the factor of the project is a setting
 * and stands at its value. Inputs are independent of one another. The model runs without the cut at zero, which comes
 * last, so that compression does not distort the shares.
 */
final class UtilisationModel {

    private static final double LOW_PERCENTILE = 0.025;
    private static final double MEDIAN = 0.5;
    private static final double HIGH_PERCENTILE = 0.975;
    private static final double CONFIDENCE = 0.95;

    private final SustainedPoint point;
    private final GrainDirection along;
    private final Given threshold;
    private final Given factor;
    private final List<Contribution> counted;
    private final List<Distribution> inputs = new ArrayList<>();
    private final List<String> names = new ArrayList<>();

    UtilisationModel(SustainedPoint point, GrainDirection along, Given threshold, Given factor) {
        this.point = point;
        this.along = along;
        this.threshold = threshold;
        this.factor = factor;
        this.counted = point.counted();
        for (Contribution c : counted) {
            add(c.source(), c.distribution());
        }
        add("threshold", Shape.RECTANGULAR.over(threshold.value()));
        if (point.uncertainty() > 0) {
            add("lie of the grain", new Rectangular(Math.cos(point.uncertainty()), 1));
            add("lie of the grain", new Rectangular(0, 2 * Math.PI));
        }
    }

    private void add(String name, Distribution distribution) {
        names.add(name);
        inputs.add(distribution);
    }

    Likelihood run(MonteCarlo monteCarlo) {
        Outcome outcome = monteCarlo.run(point.uncertainty() > 0 ? tilted() : fixed(), inputs);
        List<Share> shares = shares(outcome);
        return new Likelihood(utilisation(outcome, monteCarlo, shares), aboveOne(outcome, monteCarlo), shares);
    }

    /** Along the stated direction the model is a weighted sum over the threshold, its weights worked out once. */
    private ToDoubleFunction<double[]> fixed() {
        Direction axis = point.grain().of(along);
        double[] weights = new double[counted.size()];
        for (int i = 0; i < weights.length; i++) {
            weights[i] = counted.get(i).shape().normal(axis) / factor.value().value();
        }
        return v -> {
            double sum = 0;
            for (int i = 0; i < weights.length; i++) {
                sum += weights[i] * v[i];
            }
            return sum / v[weights.length];
        };
    }

    /**
     * Over the cone: the shapes are turned once into axes with the stated direction as z. The last two inputs are the
     * cosine of the tilt and the angle about that direction.
     */
    private ToDoubleFunction<double[]> tilted() {
        Direction axis = point.grain().of(along);
        Direction across = axis.anyNormal();
        GrainAxes local = new GrainAxes(across, axis.normalTo(across), axis);
        StressTensor[] shapes = counted.stream().map(c -> c.shape().in(local).times(1 / factor.value().value()))
                .toArray(StressTensor[]::new);
        return v -> {
            double cosine = v[shapes.length + 1];
            double sine = Math.sqrt(1 - cosine * cosine);
            double clock = v[shapes.length + 2];
            Direction n = new Direction(sine * Math.cos(clock), sine * Math.sin(clock), cosine);
            double sum = 0;
            for (int i = 0; i < shapes.length; i++) {
                sum += shapes[i].normal(n) * v[i];
            }
            return sum / v[shapes.length];
        };
    }

    private List<Share> shares(Outcome outcome) {
        List<Share> shares = new ArrayList<>();
        double together = 1;
        for (int i = 0; i <= counted.size(); i++) {
            together -= outcome.varianceShare(i);
            if (outcome.varianceShare(i) > 0) {
                shares.add(new Share(names.get(i), outcome.varianceShare(i)));
            }
        }
        if (outcome.standardDeviation() > 0) {
            String rest = point.uncertainty() > 0 ? "lie of the grain, and inputs acting together"
                    : "inputs acting together";
            shares.add(new Share(rest, Math.max(0, together)));
        }
        shares.sort(Comparator.comparingDouble(Share::share).reversed());
        return shares;
    }

    private Computed utilisation(Outcome outcome, MonteCarlo monteCarlo, List<Share> shares) {
        Band likely = new Band(Math.max(0, outcome.quantile(MEDIAN)), Math.max(0, outcome.quantile(LOW_PERCENTILE)),
                Math.max(0, outcome.quantile(HIGH_PERCENTILE)));
        List<Step> steps = new ArrayList<>();
        steps.add(new Step("u", "standard uncertainty by Monte Carlo", SiUnit.ONE,
                Band.exact(outcome.standardDeviation())));
        if (point.uncertainty() == 0) {
            steps.add(new Step("u_c", "standard uncertainty by the law of propagation", SiUnit.ONE,
                    Band.exact(lawOfPropagation().combined())));
        }
        for (Share share : shares) {
            steps.add(new Step("share", share.source(), SiUnit.ONE, Band.exact(share.share())));
        }
        List<String> notes = new ArrayList<>();
        for (int i = 0; i < inputs.size(); i++) {
            notes.add(names.get(i) + ": " + inputs.get(i).describe() + ".");
        }
        notes.add("Shares are squared correlations of input and result; for a linear model the shares of an uncertainty"
                + " budget.");
        return result("sustained.utilisation-likely", "Likely utilisation along " + along, likely,
                "median; 2.5 and 97.5 percentiles of max(0, sigma)/(f sigma_th), " + draws(monteCarlo), steps, notes,
                monteCarlo);
    }

    private LawOfPropagation lawOfPropagation() {
        double[] means = new double[inputs.size()];
        double[] uncertainties = new double[inputs.size()];
        for (int i = 0; i < means.length; i++) {
            means[i] = inputs.get(i).mean();
            uncertainties[i] = inputs.get(i).standardDeviation();
        }
        return new LawOfPropagation(fixed(), means, uncertainties);
    }

    private Computed aboveOne(Outcome outcome, MonteCarlo monteCarlo) {
        double share = outcome.shareAbove(1);
        ConfidenceInterval sampling = BinomialProportion.getWilsonScoreInterval(outcome.draws(), share, CONFIDENCE);
        Band probability = new Band(share, Math.min(share, Math.max(0, sampling.getLowerBound())),
                Math.max(share, Math.min(1, sampling.getUpperBound())));
        return result("sustained.probability-above-one", "Probability that the utilisation along " + along + " exceeds 1",
                probability, "score interval of the share of draws, 95 %, " + draws(monteCarlo), List.of(),
                List.of("Probability within the stated ranges and distributions, not a rate of failure in service."),
                monteCarlo);
    }

    private static String draws(MonteCarlo monteCarlo) {
        return String.format(Locale.ROOT, "Monte Carlo, %d draws, seed %d", monteCarlo.draws(), monteCarlo.seed());
    }

    private Computed result(String id, String title, Band value, String rangeBasis, List<Step> steps, List<String> notes,
            MonteCarlo monteCarlo) {
        List<Input> given = new ArrayList<>();
        for (Contribution c : counted) {
            given.add(c.size().as("a" + (given.size() + 1), c.source(), SiUnit.PASCAL));
        }
        given.add(threshold.as("sigma_th", "threshold along " + along, SiUnit.PASCAL));
        given.add(factor.as("f", "factor of the project on the threshold", SiUnit.ONE));
        return new Computed(id, title, SiUnit.ONE, value, "u = max(0, e . (sum a_i S_i) . e)/(f sigma_th)", given, steps,
                rangeBasis, point.validity(), List.of(Sources.MONTE_CARLO, Sources.PROPAGATION, Sources.WILSON), notes, List.of());
    }
}
