package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.uncertainty.Distribution;
import org.shortgrain.mechanics.machining.ExposedStress;
import org.shortgrain.mechanics.machining.FinishedSurface;
import org.shortgrain.mechanics.machining.ResidualStressCase;
import org.shortgrain.mechanics.quench.FilmCoefficient;
import org.shortgrain.mechanics.quench.Quench;
import org.shortgrain.mechanics.quench.QuenchMaterial;
import org.shortgrain.mechanics.quench.QuenchSolver;
import org.shortgrain.mechanics.quench.QuenchedSection;
import org.shortgrain.mechanics.quench.StressRelief;
import org.shortgrain.part.FeatureKind;
import org.shortgrain.part.Form;
import org.shortgrain.part.Product;
import org.shortgrain.part.Range;
import org.shortgrain.part.ResidualState;
import org.shortgrain.part.ResidualStress;
import org.shortgrain.part.Restraint;
import org.shortgrain.part.RouteStep;
import org.shortgrain.part.Shape;
import org.shortgrain.part.Stated;
import org.shortgrain.reference.QuenchTables;
import org.shortgrain.review.Factor;
import org.shortgrain.rulebook.facts.Step;
import org.shortgrain.terms.GrainDirection;

/**
 * Residual stress at a finished surface: as measured where it was, otherwise from the quench, its relief and machining.
 *
 * <p>Compression is not credited. A measured value replaces the computed one, which is computed and shown all the same.
 */
final class ResidualPulls {

    /** What the mechanics call the origin of a length of the description. */
    private static final String STATED = "stated";
    private static final Set<FeatureKind> LOCAL = EnumSet.of(FeatureKind.GROOVE, FeatureKind.POCKET,
            FeatureKind.FILLET, FeatureKind.FAYING_SURFACE, FeatureKind.FLASH_LINE, FeatureKind.GENERAL);
    private static final Set<FeatureKind> HOLES = EnumSet.of(FeatureKind.LUG_BORE, FeatureKind.BOLT_HOLE,
            FeatureKind.BORE, FeatureKind.THREADED_HOLE);

    private final QuenchTables tables;
    private final org.shortgrain.mechanics.machining.ResidualStress mechanics;

    ResidualPulls(QuenchTables tables) {
        this.tables = tables;
        this.mechanics = new org.shortgrain.mechanics.machining.ResidualStress(QuenchSolver.usual(), tables.baths(),
                tables.published());
    }

    /**
     * {@return residual stress at a place in each direction that may be pulled; empty where it cannot be said}
     *
     * @param site the place
     */
    Optional<List<Pull>> at(Site site) {
        Optional<List<Pull>> measured = measured(site);
        if (site.form().field(Form::heatTreatThickness).isNone() && measured.isEmpty()) {
            return Optional.of(List.of());
        }
        if (measured.isPresent() && quenched(site).isEmpty()) {
            return measured;
        }
        Optional<List<Pull>> computed = computed(site);
        return measured.or(() -> computed);
    }

    private Optional<QuenchMaterial> quenched(Site site) {
        return tables.material(site.metal().alloy()).or(() -> tables.standInFor(site.metal().family()));
    }

    private static Optional<List<Pull>> measured(Site site) {
        Optional<ResidualStress> stated = site.feature().residualStress().single();
        Optional<Range> value = stated.flatMap(one -> one.value().single());
        if (value.isEmpty()) {
            return Optional.empty();
        }
        double spread = stated.flatMap(one -> one.uncertainty().single()).map(Range::highest).orElse(0.0);
        Band band = new Band(value.get().middle(), value.get().lowest() - spread, value.get().highest() + spread);
        Set<GrainDirection> along = stated.get().direction().single().<Set<GrainDirection>>map(EnumSet::of)
                .orElse(site.directions());
        return Optional.of(along.stream().map(direction -> new Pull("residual stress as stated", direction, band,
                Distribution.Shape.TRIANGULAR, false, Optional.empty())).toList());
    }

    private Optional<List<Pull>> computed(Site site) {
        Optional<QuenchMaterial> metal = quenched(site);
        if (metal.isEmpty()) {
            site.ask(Factor.STRESS, "What residual stress is left at the surface of " + site.id() + "?",
                    "the quench of this material is not in the tables, so its residual stress is not computed",
                    Optional.empty(), site.feature().residualStress().at());
            return Optional.empty();
        }
        Cut cut = new Cut(metal.get(), surfaces(site), section(site), quench(site, metal.get()), relief(site));
        List<Pull> pulls = new ArrayList<>();
        for (GrainDirection direction : site.directions()) {
            pulls.add(pull(site, cut, direction));
        }
        return Optional.of(pulls);
    }

    /**
     * What is known of the blank at a place and of the surfaces that may have been cut from it.
     *
     * @param metal    the metal at its quench
     * @param surfaces the surfaces, of which the worst counts
     * @param section  the section that was quenched
     * @param quench   the quench
     * @param relief   what was done against its stress
     */
    private record Cut(QuenchMaterial metal, List<FinishedSurface> surfaces, QuenchedSection section, Quench quench,
            StressRelief relief) {
    }

    private Pull pull(Site site, Cut cut, GrainDirection direction) {
        ExposedStress worst = worst(cut, direction, yieldStrength(site, direction));
        Computed governing = traced(site, worst.governing());
        String id = site.write(governing);
        if (direction == GrainDirection.L && worst.bow().isPresent()) {
            site.write(traced(site, worst.bow().get()));
        }
        return new Pull("quench residual after machining", direction, governing.value(), Distribution.Shape.TRIANGULAR,
                false, Optional.of(id));
    }

    /** The mechanics know that a length is stated; where it stands is known here. */
    private static Computed traced(Site site, Computed computed) {
        Map<String, String> places = Map.of("t", sectionAsQuenched(site).at().path(),
                "w", site.form().field(Form::heatTreatWidth).at().path(),
                "a", site.feature().asQuenchedDepth().isKnown() ? site.feature().asQuenchedDepth().at().path()
                        : site.description().route().at().path(),
                "h", site.feature().sectionFinished().at().path());
        return computed.withOrigins(input -> input.origin().equals(STATED)
                ? places.getOrDefault(input.symbol(), STATED) : input.origin());
    }

    /** A hole whose axis is not stated may run along any direction: the worst counts. */
    private ExposedStress worst(Cut cut, GrainDirection direction, OptionalDouble yieldStrength) {
        List<ExposedStress> all = new ArrayList<>();
        for (FinishedSurface surface : cut.surfaces()) {
            all.add(mechanics.at(new ResidualStressCase(cut.metal(), cut.section(), cut.quench(), cut.relief(), surface,
                    direction, yieldStrength)));
        }
        return Collections.max(all, Comparator.comparingDouble(one -> one.governing().value().high()));
    }

    private static OptionalDouble yieldStrength(Site site, GrainDirection direction) {
        Double least = site.metal().yield().get(direction);
        return least == null ? OptionalDouble.empty() : OptionalDouble.of(least);
    }

    private List<FinishedSurface> surfaces(Site site) {
        OptionalDouble depth = depth(site);
        OptionalDouble thickness = Range.greatest(site.feature().sectionFinished());
        boolean local = site.feature().what().any(LOCAL::contains) || !site.feature().what().isKnown();
        org.shortgrain.mechanics.machining.Restraint restraint = restraint(site.feature().restraint());
        List<FinishedSurface> surfaces = new ArrayList<>();
        for (Optional<GrainDirection> axis : axes(site)) {
            surfaces.add(new FinishedSurface(depth, thickness, restraint, local, axis, OptionalDouble.empty()));
        }
        return surfaces;
    }

    /** The axis of a hole, each direction where it is not stated; none of another surface. */
    private static List<Optional<GrainDirection>> axes(Site site) {
        if (!site.feature().what().any(HOLES::contains)) {
            return List.of(Optional.empty());
        }
        Optional<GrainDirection> along = site.boreAlong();
        return along.isPresent() ? List.of(along)
                : List.of(Optional.of(GrainDirection.L), Optional.of(GrainDirection.LT), Optional.of(GrainDirection.ST));
    }

    private static org.shortgrain.mechanics.machining.Restraint restraint(Stated<Restraint> stated) {
        if (stated.is(Restraint.HELD)) {
            return org.shortgrain.mechanics.machining.Restraint.HELD;
        }
        return stated.is(Restraint.FREE) ? org.shortgrain.mechanics.machining.Restraint.FREE
                : org.shortgrain.mechanics.machining.Restraint.UNKNOWN;
    }

    /** As stated; else the metal removed after the last quench. */
    private OptionalDouble depth(Site site) {
        OptionalDouble stated = Range.greatest(site.feature().asQuenchedDepth());
        if (stated.isPresent()) {
            return stated;
        }
        List<Step> cuts = site.cutsAfterQuench();
        boolean all = !cuts.isEmpty() && site.route().complete()
                && cuts.stream().allMatch(step -> step.stated().removes().isKnown());
        if (all) {
            double sum = cuts.stream().mapToDouble(step -> Range.greatest(step.stated().removes()).orElse(0)).sum();
            site.assume(String.format(Locale.ROOT, "the finished surface lies %.1f mm below the surface that was"
                    + " quenched: the metal removed on the card after the quench", sum * 1e3));
            return OptionalDouble.of(sum);
        }
        site.ask(Factor.STRESS, "How deep does the finished surface of " + site.id()
                + " lie below the surface that was quenched?",
                "skin compression or core tension is opened depending on the depth",
                Optional.of("the worst depth of the section"), site.feature().asQuenchedDepth().at());
        return OptionalDouble.empty();
    }

    private static QuenchedSection section(Site site) {
        OptionalDouble width = Range.greatest(site.form().field(Form::heatTreatWidth));
        return new QuenchedSection(shape(site), Range.greatest(sectionAsQuenched(site)), width);
    }

    private static Stated<Range> sectionAsQuenched(Site site) {
        return site.feature().sectionAsQuenched().isKnown() ? site.feature().sectionAsQuenched()
                : site.form().field(Form::heatTreatThickness);
    }

    private static QuenchedSection.Shape shape(Site site) {
        Optional<Shape> stated = site.form().field(Form::heatTreatShape).single();
        if (stated.isPresent()) {
            return switch (stated.get()) {
                case PLATE -> QuenchedSection.Shape.PLATE;
                case CYLINDER -> QuenchedSection.Shape.ROUND_BAR;
                case TUBE -> QuenchedSection.Shape.TUBE;
            };
        }
        Stated<Product> product = site.form().field(Form::product);
        if (product.isOneOf(Product.PLATE, Product.SHEET)) {
            return QuenchedSection.Shape.PLATE;
        }
        return QuenchedSection.Shape.UNKNOWN;
    }

    private Quench quench(Site site, QuenchMaterial metal) {
        Optional<Step> step = site.route().lastQuench();
        if (step.isEmpty()) {
            site.assume("the quench at the mill is not on the card: bounded by the W-temper yield strength");
            return new Quench.Unknown();
        }
        RouteStep card = step.get().stated();
        double solution = site.route().last("solution_heat_treat")
                .flatMap(one -> one.stated().temperature().single()).map(Range::middle)
                .orElse(metal.solutionTemperature());
        Optional<FilmCoefficient> film = film(site, card);
        if (film.isEmpty()) {
            site.assume("the quench medium of " + step.get().label()
                    + " is not stated or not in the tables: bounded by the W-temper yield strength");
            return new Quench.Unknown();
        }
        boolean onRecord = card.temperature().isKnown() && card.agitated().isKnown();
        return new Quench.Known(film.get(), solution, onRecord);
    }

    private Optional<FilmCoefficient> film(Site site, RouteStep card) {
        CardQuench bath = CardQuench.of(tables.baths(), card);
        if (bath.takenAsCold()) {
            site.assume("water of unknown temperature is taken as cold");
        }
        return bath.film();
    }

    /** The temper's digits count as long as no quench on the card undoes the mill's relief, whatever the shop adds to it. */
    private StressRelief relief(Site site) {
        Stated<ResidualState> words = site.feature().residualStress().field(ResidualStress::state);
        if (words.is(ResidualState.RELIEVED)) {
            site.assume("relieved as stated: what published measurements find left after a stretch");
            return new StressRelief.Stretched(OptionalDouble.empty());
        }
        Optional<Step> quench = site.route().lastQuench();
        if (quench.isEmpty() && !(byTemper(site) instanceof StressRelief.None)) {
            return byTemper(site);
        }
        Optional<Step> relief = site.route().last("stretch", "compress", "cold_die_set", "stress_relieve_mechanical");
        if (relief.isPresent() && relief.get().position() > quench.map(Step::position).orElse(-1)) {
            return onCard(site, relief.get());
        }
        Optional<Step> uphill = site.route().last("uphill_quench");
        if (uphill.isPresent() && uphill.get().position() > quench.map(Step::position).orElse(-1)) {
            return new StressRelief.UphillQuenched(tables.uphill(false), false);
        }
        return new StressRelief.None();
    }

    private static StressRelief onCard(Site site, Step step) {
        OptionalDouble set = Range.least(step.stated().set());
        boolean compressed = step.is("compress", "cold_die_set") || step.mentions("compress", "restrike", "die set");
        return compressed ? new StressRelief.Compressed(set, isDieForging(site)) : new StressRelief.Stretched(set);
    }

    private static StressRelief byTemper(Site site) {
        String digits = site.metal().reliefDigits();
        if (digits.startsWith("51")) {
            return new StressRelief.Stretched(OptionalDouble.empty());
        }
        if (digits.startsWith("52") || digits.startsWith("54")) {
            return new StressRelief.Compressed(OptionalDouble.empty(), isDieForging(site) || digits.startsWith("54"));
        }
        return new StressRelief.None();
    }

    private static boolean isDieForging(Site site) {
        return !site.form().field(Form::product).is(Product.HAND_FORGING);
    }
}
