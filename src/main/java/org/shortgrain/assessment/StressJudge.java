package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.GrainAxes;
import org.shortgrain.mechanics.concentration.LocalStress;
import org.shortgrain.mechanics.sustained.Contribution;
import org.shortgrain.mechanics.sustained.Likelihood;
import org.shortgrain.mechanics.sustained.SustainedPoint;
import org.shortgrain.mechanics.sustained.Utilisation;
import org.shortgrain.mechanics.uncertainty.MonteCarlo;
import org.shortgrain.part.Grain;
import org.shortgrain.part.Range;
import org.shortgrain.part.ReviewRequest;
import org.shortgrain.part.Stated;
import org.shortgrain.review.Amount;
import org.shortgrain.review.Calculation;
import org.shortgrain.review.DirectionReview;
import org.shortgrain.review.Factor;
import org.shortgrain.review.FactorJudgement;
import org.shortgrain.review.FactorState;
import org.shortgrain.review.SustainedStress;
import org.shortgrain.rulebook.facts.Tension;
import org.shortgrain.terms.GrainDirection;

/**
 * Adds up what pulls at a place and holds it against the threshold.
 *
 * <p>The stress factor is present where the upper end of the sum reaches the lower end of the threshold times the
 * project's factor, in a direction that is pulled for certain; absent where every contribution is known and the sum
 * stays below in every direction that may be pulled; unknown otherwise.
 */
final class StressJudge {

    /** Draws and seed of the likely range: fixed, so that a review can be repeated. */
    private static final MonteCarlo DRAWS = new MonteCarlo(10_000, 20_260_115L);
    private static final double MEGA = 1e6;

    private final ResidualPulls residual;
    private final FitPulls fit;
    private final ClampUpPulls clampUp = new ClampUpPulls();
    private final ServicePulls service;
    private final LocalFactor local = new LocalFactor();

    StressJudge(ResidualPulls residual, FitPulls fit, ServicePulls service) {
        this.residual = residual;
        this.fit = fit;
        this.service = service;
    }

    /**
     * What was judged.
     *
     * @param judgement  the stress factor
     * @param directions for the report, the governing direction first
     * @param tensions   for the rules, in the same order
     */
    record Judged(FactorJudgement judgement, List<DirectionReview> directions, List<Tension> tensions) {
    }

    /**
     * {@return the stress factor at a place}
     *
     * @param site      the place
     * @param limits    what the tension is compared with, by direction
     * @param factor    the project's factor on the threshold
     * @param certain   whether the direction of the tension is stated, so that each of the site's directions is pulled
     * @param likely    whether to draw how likely the sum is, which is for the reader and decides nothing
     */
    Judged judge(Site site, Map<GrainDirection, Limit> limits, double factor, boolean certain, boolean likely) {
        Sum sum = sum(site);
        List<DirectionReview> reviews = new ArrayList<>();
        List<Tension> tensions = new ArrayList<>();
        for (Along along : along(site, sum.pulls(), limits, factor, likely)) {
            reviews.add(along.review());
            tensions.add(along.tension());
        }
        return new Judged(judgement(sum, tensions, limits, certain), reviews, tensions);
    }

    /**
     * {@return the same without what rules and report need beside it, with the rings and strips behind it}
     *
     * @param site   the place
     * @param limits what the tension is compared with, by direction
     * @param factor the project's factor on the threshold
     */
    PlaceStress at(Site site, Map<GrainDirection, Limit> limits, double factor) {
        List<Tension> tensions = along(site, sum(site).pulls(), limits, factor, false).stream().map(Along::tension).toList();
        return new PlaceStress(site.id(), tensions, fit.rings(site), ClampUpPulls.closed(site),
                site.ledger().calculations().stream().map(Calculation::computed).toList());
    }

    /** Contributions at a place, and the kinds of contribution of which nothing can be said. */
    private record Sum(List<Pull> pulls, List<String> open) {
    }

    private Sum sum(Site site) {
        List<Pull> pulls = new ArrayList<>();
        List<String> open = new ArrayList<>();
        add("residual stress", residual.at(site), pulls, open);
        add("fit", fit.at(site), pulls, open);
        add("clamp-up", clampUp.at(site), pulls, open);
        add("lasting loads", service.at(site), pulls, open);
        Optional<Computed> factor = isNominalPulled(pulls) ? local.at(site) : Optional.empty();
        factor.ifPresent(site::write);
        List<Pull> raised = new ArrayList<>();
        for (Pull pull : pulls) {
            Pull tension = pull.tensionOnly();
            raised.add(tension.nominal() && factor.isPresent() ? raised(site, tension, factor.get()) : tension);
        }
        return new Sum(raised, open);
    }

    private static boolean isNominalPulled(List<Pull> pulls) {
        for (Pull pull : pulls) {
            if (pull.nominal() && pull.stress().high() > 0) {
                return true;
            }
        }
        return false;
    }

    private static void add(String kind, Optional<List<Pull>> found, List<Pull> pulls, List<String> open) {
        if (found.isPresent()) {
            pulls.addAll(found.get());
        } else {
            open.add(kind);
        }
    }

    /** The local peak at the surface, held to the yield strength in its direction. */
    private static Pull raised(Site site, Pull pull, Computed factor) {
        Computed nominal = pull.calculation().flatMap(site.ledger()::calculation).orElseThrow();
        Optional<Given> yieldStrength = site.elastic().map(metal -> metal.yield().get(pull.direction()));
        Computed peak = LocalStress.of(nominal, factor, yieldStrength);
        String id = site.write(peak);
        return new Pull(pull.source() + " x Kt", pull.direction(), peak.value(), pull.spread(), false, Optional.of(id))
                .tensionOnly();
    }

    private record Along(DirectionReview review, Tension tension) {
    }

    /** Every direction is summed; how likely the sum is, only for the one that is used most. */
    private static List<Along> along(Site site, List<Pull> pulls, Map<GrainDirection, Limit> limits, double factor,
            boolean likely) {
        List<Along> all = new ArrayList<>();
        Map<GrainDirection, Utilisation> used = new EnumMap<>(GrainDirection.class);
        for (GrainDirection direction : site.directions()) {
            Utilisation utilisation = utilisation(site, pulls, direction, limits.get(direction), factor);
            used.put(direction, utilisation);
            all.add(along(site, utilisation, pulls, limits.get(direction), direction, factor));
        }
        all.sort(Comparator.comparing((Along one) -> -one.tension().utilisation().orElse(0))
                .thenComparing(one -> -one.tension().high()));
        if (likely && !all.isEmpty()) {
            GrainDirection direction = all.get(0).tension().direction();
            used.get(direction).likelihood(direction, DRAWS).ifPresent(drawn -> write(site, drawn));
        }
        return all;
    }

    /** What pulls along another direction bears on this one only where the flow lines may be tilted. */
    private static Utilisation utilisation(Site site, List<Pull> pulls, GrainDirection direction, Limit limit,
            double factor) {
        GrainAxes axes = site.grainAxes().orElse(GrainAxes.ALONG_PART_AXES);
        double tilt = tilt(site);
        List<Contribution> contributions = new ArrayList<>();
        for (Pull pull : pulls) {
            if (tilt > 0 || pull.direction() == direction) {
                contributions.add(contribution(site, axes, pull));
            }
        }
        Map<GrainDirection, Given> threshold = limit.stress().isPresent() ? Map.of(direction, limit.stress().get())
                : Map.of();
        return new Utilisation(new SustainedPoint(axes, tilt, contributions), threshold,
                Given.exact(factor, originOfFactor(site)));
    }

    private static Contribution contribution(Site site, GrainAxes axes, Pull pull) {
        String origin = pull.calculation().orElse(site.feature().residualStress().at().path());
        return Contribution.stated(pull.source(), Contribution.along(axes.of(pull.direction())),
                new Given(pull.stress(), origin, Optional.empty()), pull.spread());
    }

    private static String originOfFactor(Site site) {
        Stated<Double> stated = site.description().review().field(ReviewRequest::thresholdFactor);
        return stated.isKnown() ? stated.at().path() : "factor of the project, by default";
    }

    private static Along along(Site site, Utilisation utilisation, List<Pull> pulls, Limit limit,
            GrainDirection direction, double factor) {
        Computed stress = utilisation.point().stress(direction);
        site.write(stress);
        Optional<Computed> used = utilisation.of(direction);
        used.ifPresent(site::write);
        SustainedStress total = new SustainedStress(direction, amount(stress.value()), parts(pulls, direction));
        OptionalDouble threshold = limit.stress().isPresent() ? OptionalDouble.of(limit.stress().get().value().low())
                : OptionalDouble.empty();
        return new Along(new DirectionReview(total, limit.shown(factor),
                used.map(one -> new Amount("1", one.value().value(), one.value().low(), one.value().high()))),
                new Tension(direction, stress.value().value(), stress.value().high(), threshold, factor));
    }

    private static void write(Site site, Likelihood likely) {
        site.write(likely.utilisation());
        site.write(likely.aboveOne());
    }

    private static List<org.shortgrain.review.Contribution> parts(List<Pull> pulls, GrainDirection direction) {
        List<Pull> along = new ArrayList<>(pulls);
        along.sort(Comparator.comparingDouble(pull -> -pull.stress().high()));
        List<org.shortgrain.review.Contribution> parts = new ArrayList<>();
        for (Pull pull : along) {
            if (pull.direction() == direction) {
                parts.add(new org.shortgrain.review.Contribution(pull.source(), amount(pull.stress()), pull.calculation()));
            }
        }
        return parts;
    }

    private static Amount amount(Band pascal) {
        return new Amount("MPa", pascal.value() / MEGA, pascal.low() / MEGA, pascal.high() / MEGA);
    }

    /** Cone within which the flow lines are known (rad); none where nothing is said of a tilt. */
    private static double tilt(Site site) {
        return Range.greatest(site.description().grain().field(Grain::tilt)).orElse(0);
    }

    private static FactorJudgement judgement(Sum sum, List<Tension> tensions, Map<GrainDirection, Limit> limits,
            boolean certain) {
        List<String> reasons = new ArrayList<>();
        int reached = 0;
        for (Tension tension : tensions) {
            reasons.add(say(tension));
            reached += tension.reachesLimit() ? 1 : 0;
        }
        boolean everywhere = reached == tensions.size();
        if (reached > 0 && (certain || everywhere)) {
            return new FactorJudgement(Factor.STRESS, FactorState.PRESENT, reasons);
        }
        if (reached > 0) {
            reasons.add("which grain direction is pulled is not stated");
        }
        sum.open().forEach(kind -> reasons.add("nothing can be said of the " + kind));
        boolean compared = tensions.stream()
                .allMatch(tension -> tension.threshold().isPresent() || tension.high() <= 0);
        if (!compared) {
            reasons.add("no threshold is published for a direction that may be pulled");
        }
        boolean cleared = tensions.stream().allMatch(tension -> tension.high() <= 0
                || limits.get(tension.direction()).clears());
        if (compared && !cleared) {
            reasons.add("the threshold rests on an open datum or on a source that nobody here has seen: it can raise a"
                    + " concern but not clear one");
        }
        boolean below = reached == 0 && sum.open().isEmpty() && compared && cleared;
        return new FactorJudgement(Factor.STRESS, below ? FactorState.ABSENT : FactorState.UNKNOWN, reasons);
    }

    private static String say(Tension tension) {
        String sum = String.format(Locale.ROOT, "sustained tension along %s %.0f MPa, upper end %.0f MPa",
                tension.direction(), tension.value() / MEGA, tension.high() / MEGA);
        if (tension.threshold().isEmpty()) {
            return sum + "; no threshold is published";
        }
        return sum + String.format(Locale.ROOT, "; threshold %.0f MPa x factor %.2g = %.0f MPa; utilisation %.2f",
                tension.threshold().getAsDouble() / MEGA, tension.factor(),
                tension.threshold().getAsDouble() * tension.factor() / MEGA, tension.utilisation().orElse(0));
    }
}
