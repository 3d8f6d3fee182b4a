package org.shortgrain.mechanics.crack;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
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
 * How a crack at a place grows: stress intensity, critical depth, time between. What governs is computed with every input
 * at the end that shortens the time; the velocity is that of the plateau from K_ISCC on, and from the start where cracks
 * start without a flaw.
 */
public final class GrowthResult {

    private static final Citation EQUATIONS = new Citation("nasa-tm-85793", "surface and corner cracks, tension and bending",
            SourceStatus.SECONDARY);
    private static final Citation WEIGHTS = new Citation("shen-glinka-1991", "weight functions, form", SourceStatus.MEMORY);
    private static final String SMALL = "Cracks are known to start at smooth surfaces below K_ISCC: for smaller ones than this"
            + " the threshold stress governs, not K_ISCC.";
    private static final String UNHELD = "The sustained stress reaches the threshold of smooth specimens, or none is known:"
            + " cracks start without a flaw, and K_ISCC is not credited with holding one back.";
    private static final String WEDGING = "Corrosion product wedges a crack open without any load; its stress is not in the"
            + " sum (DEF STAN 00-970 Leaflet 7 2.1, read).";
    private static final String SUSTAINED = "Critical under the sustained stress: a peak load in service makes the critical"
            + " size smaller.";

    private final GrowthCase given;
    private final IntensityCurve worst;
    private final double critical;

    GrowthResult(GrowthCase given) {
        this.given = given;
        this.worst = given.crack().curve(given.along(given.stress().value().high()));
        this.critical = critical(worst, given.toughness().value().low());
    }

    private static double critical(IntensityCurve curve, double toughness) {
        return Math.min(curve.greatestDepth(), curve.depthAt(toughness).orElse(curve.greatestDepth()));
    }

    /** {@return where K_ISCC, velocity and toughness come from} */
    public List<Citation> sources() {
        return Stream.of(given.kIscc(), given.rate(), given.toughness())
                .flatMap(one -> one.source().stream()).toList();
    }

    /** {@return depth of the crack that is found or assumed (m)} */
    public double found() {
        return given.found().value().high();
    }

    /** {@return the critical depth (m): where the toughness is reached, or where the crack goes through the section} */
    public double criticalDepth() {
        return critical;
    }

    /**
     * {@return the interval}
     *
     * @param practice factor and bounds
     */
    public InspectionInterval interval(InspectionInterval.Practice practice) {
        GrowthLaw law = new GrowthLaw.Plateau(threshold(given.kIscc().value().low()), given.rate().value().high());
        return InspectionInterval.of(worst, law, found(), critical, practice);
    }

    /** The threshold stress intensity that is credited: none where cracks start without a flaw. */
    private double threshold(double kIscc) {
        return given.isStartedWithoutFlaw() ? 0 : kIscc;
    }

    /** {@return the depth from which on a crack grows, as far as K_ISCC tells (m); empty if it never does} */
    public OptionalDouble growingDepth() {
        return worst.depthAt(given.kIscc().value().low());
    }

    /**
     * {@return what was computed: {@code crack.intensity}, {@code crack.critical-depth} and, where the crack grows,
     * {@code crack.window}}
     *
     * @param method how the crack is found, in words
     */
    public List<Computed> computed(String method) {
        List<Computed> all = new ArrayList<>(List.of(intensity(method), depth()));
        if (found() < critical) {
            time(worst, critical, threshold(given.kIscc().value().low()), given.rate().value().high())
                    .ifPresent(shortest -> all.add(window(shortest)));
        }
        return all;
    }

    private OptionalDouble time(IntensityCurve curve, double last, double threshold, double rate) {
        return GrowthLife.between(curve, new GrowthLaw.Plateau(threshold, rate), found(), last);
    }

    private Computed intensity(String method) {
        Band stress = given.stress().value();
        Band k = new Band(at(stress.value()), at(stress.low()), at(stress.high()));
        List<Step> steps = new ArrayList<>();
        StressAlongDepth high = given.along(stress.high());
        if (found() <= given.crack().greatestDepth()) {
            steps.add(step("K_a", "at the deepest point, upper end", given.crack().atDepth(found(), high)));
            steps.add(step("K_c", "at the surface, upper end", given.crack().atSurface(found(), high)));
        }
        growingDepth().ifPresent(depth -> steps.add(new Step("a_ISCC", "depth at which K_ISCC is reached, shortest",
                SiUnit.METRE, Band.exact(depth))));
        return new Computed("crack.intensity", "Stress intensity of the smallest crack that is found, " + method,
                SiUnit.PASCAL_SQRT_METRE, k, "K = F(a/c, a/t) sigma sqrt(pi a/Q), sigma through the depth by weight function",
                List.of(given.stress().as("sigma", "sustained stress at the surface", SiUnit.PASCAL),
                        given.found().as("a", "depth of the crack", SiUnit.METRE),
                        new Input("a/c", "depth over half the length", SiUnit.ONE, Band.exact(given.crack().aspect()), "kept",
                                Optional.empty()),
                        new Input("t", "section", SiUnit.METRE, Band.exact(given.crack().thickness()), "as stated",
                                Optional.empty()),
                        given.kIscc().as("K_ISCC", "threshold stress intensity", SiUnit.PASCAL_SQRT_METRE)),
                steps, "limits of the stress", validity(), List.of(EQUATIONS, WEIGHTS), List.of(SMALL, WEDGING),
                List.of(new Profile("stress intensity against depth, upper end", SiUnit.METRE, SiUnit.PASCAL_SQRT_METRE,
                        worst.depths(), worst.intensities())));
    }

    private static Step step(String symbol, String meaning, double value) {
        return new Step(symbol, meaning, SiUnit.PASCAL_SQRT_METRE, Band.exact(value));
    }

    private double at(double surface) {
        return given.crack().intensity(Math.min(found(), given.crack().greatestDepth()), given.along(surface));
    }

    private Validity validity() {
        boolean inside = found() <= given.crack().greatestDepth();
        return new Validity(inside, String.format(Locale.ROOT, "Wide plate, depth up to %.0f %% of the section, within some"
                + " 5 %% of finite elements; a peak at a hole or notch is taken as reaching down to the crack's depth.%s",
                SurfaceCrack.GREATEST_DEPTH * 100, inside ? "" : " The crack that is found is deeper."));
    }

    private Computed depth() {
        Band stress = given.stress().value();
        double best = critical(given.crack().curve(given.along(stress.value())), given.toughness().value().value());
        double last = critical(given.crack().curve(given.along(stress.low())), given.toughness().value().high());
        boolean through = worst.depthAt(given.toughness().value().low()).isEmpty();
        Band depth = new Band(Math.max(critical, best), critical, Math.max(Math.max(critical, best), last));
        return new Computed("crack.critical-depth", "Critical depth under the sustained stress", SiUnit.METRE, depth,
                "K(a_c) = K_Ic, at most the depth to which the equations hold",
                List.of(given.stress().as("sigma", "sustained stress at the surface", SiUnit.PASCAL),
                        given.toughness().as("K_Ic", "fracture toughness in plane strain", SiUnit.PASCAL_SQRT_METRE)),
                List.of(), "stress high and toughness least for the lower end", new Validity(true, through
                        ? "The toughness is not reached within the section: the crack counts as critical where it goes through."
                        : "Plane strain; printed toughness is for information, not a minimum."),
                List.of(EQUATIONS), List.of(SUSTAINED), List.of());
    }

    private Computed window(double shortest) {
        Band rate = given.rate().value();
        IntensityCurve best = given.crack().curve(given.along(given.stress().value().value()));
        OptionalDouble likely = time(best, critical(best, given.toughness().value().value()),
                threshold(given.kIscc().value().value()), rate.value());
        double value = Math.max(shortest, likely.orElse(shortest));
        List<String> notes = new ArrayList<>(List.of(WEDGING, "No time is credited before the crack grows: in 7075-T651 cracks"
                + " start almost at once and their growth takes most of the life (Nature 218, 1156, abstract read)."));
        if (given.isStartedWithoutFlaw()) {
            notes.add(UNHELD);
        }
        if (likely.isEmpty()) {
            notes.add("With best estimates the crack that is found does not reach K_ISCC and does not grow.");
        }
        return new Computed("crack.window", "Time from the smallest crack that is found to the critical one", SiUnit.SECOND,
                new Band(value, shortest, value), "t = integral of da / v(K(a)), v the plateau from K_ISCC on",
                List.of(given.found().as("a_d", "depth that is found", SiUnit.METRE),
                        given.kIscc().as("K_ISCC", "threshold stress intensity", SiUnit.PASCAL_SQRT_METRE),
                        given.rate().as("v", "velocity of the plateau", SiUnit.METRE_PER_SECOND)),
                List.of(new Step("a_c", "critical depth, shortest", SiUnit.METRE, Band.exact(critical))),
                "lower end: every input at the end that shortens the time; it governs",
                new Validity(true, "Shape of the crack kept; no credit for stopping; velocities of salt water at room"
                        + " temperature."),
                List.of(new Citation("ugiansky-1968", "abstract", SourceStatus.READ)), notes, List.of());
    }
}
