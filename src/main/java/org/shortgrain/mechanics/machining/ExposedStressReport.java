package org.shortgrain.mechanics.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.mechanics.quench.StressProfile;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.GrainDirection;
import org.shortgrain.terms.SourceStatus;

/** Puts the numbers of one surface into words, inputs, steps and curves. */
final class ExposedStressReport {

    private static final Citation HOLE = new Citation("kirsch-1898", "hoop stress at a small hole",
            SourceStatus.MEMORY);

    private final ResidualStressCase c;
    private final BlankViews views;
    private final Exposures exposures;
    private final Set<Release> counted;
    /** The exposure behind the value. */
    private final Exposure worst;

    ExposedStressReport(ResidualStressCase c, BlankViews views, Exposures exposures, Set<Release> counted) {
        this.c = c;
        this.views = views;
        this.exposures = exposures;
        this.counted = counted;
        this.worst = exposures.governing(counted);
    }

    ExposedStress write() {
        return new ExposedStress(computed("residual.exposed", "Residual stress at the finished surface",
                exposures.band(counted), steps(), profiles()), bow());
    }

    List<Computed> ways() {
        List<Computed> ways = new ArrayList<>();
        for (Release way : Release.values()) {
            exposures.band(way).ifPresent(band -> ways.add(computed("residual." + key(way),
                    "Residual stress at the finished surface, " + way.words(), band, List.of(), List.of())));
        }
        return ways;
    }

    private Computed computed(String id, String title, Band band, List<Computed.Step> steps,
            List<Computed.Profile> profiles) {
        return new Computed(id, title + ", " + c.direction(), SiUnit.PASCAL, capped(band), equation(), inputs(),
                steps, views.basis(), validity(), sources(), notes(band), profiles);
    }

    private static String key(Release way) {
        return switch (way) {
            case AS_IS -> "as-is";
            case HELD_FLAT -> "held-flat";
            case FREE_TO_BOW -> "free-to-bow";
        };
    }

    private String equation() {
        String s = isHoleWall() ? "s = 3 s1 - s2 of the released stress, worst depth" : "s = released stress at the face";
        return s + "; released: s(a) as it was, s(a) - N/A held flat, s(a) - N/A - (M/I)(a - zc) free to bow;"
                + " the worst way that the restraint allows";
    }

    private boolean isHoleWall() {
        return c.surface().isWallOfHole(c.direction());
    }

    /** An aged part cannot carry more than its yield strength. */
    private Band capped(Band band) {
        double cap = c.finalYield().orElse(Double.POSITIVE_INFINITY);
        return new Band(Math.min(band.value(), cap), Math.min(band.low(), cap), Math.min(band.high(), cap));
    }

    private List<Computed.Input> inputs() {
        List<Computed.Input> inputs = new ArrayList<>();
        add(inputs, "t", "thickness of the section at quench", SiUnit.METRE, c.section().rulingThickness());
        add(inputs, "w", "width of the section at quench", SiUnit.METRE, c.section().width());
        add(inputs, "a", "depth of the finished surface below the quenched surface", SiUnit.METRE,
                c.surface().depth());
        add(inputs, "h", "finished thickness", SiUnit.METRE, c.surface().thickness());
        add(inputs, "e", "distance from the nearest quenched edge", SiUnit.METRE, c.surface().edgeDistance());
        inputs.add(new Computed.Input("Y", "0.2 % proof stress as quenched (W temper)", SiUnit.PASCAL,
                Band.exact(c.material().wYieldAtRoomTemperature()), "table " + c.material().name(),
                Optional.of(c.material().source())));
        c.finalYield().ifPresent(fty -> inputs.add(new Computed.Input("Fty",
                "yield strength of the final temper, cap of the elastic sum", SiUnit.PASCAL, Band.exact(fty),
                "strength of the material, as looked up", Optional.empty())));
        inputs.addAll(views.inputs());
        return inputs;
    }

    private static void add(List<Computed.Input> inputs, String symbol, String meaning, SiUnit unit,
            OptionalDouble value) {
        value.ifPresent(v -> inputs.add(new Computed.Input(symbol, meaning, unit, Band.exact(v), "stated",
                Optional.empty())));
    }

    private List<Computed.Step> steps() {
        StressProfile blank = worst.view().in(c.direction());
        List<Computed.Step> steps = new ArrayList<>();
        steps.add(step("s_skin", "stress at the skin of the blank", SiUnit.PASCAL, blank.at(blank.start())));
        steps.add(step("s_core", "stress in the middle of the blank", SiUnit.PASCAL,
                blank.at(0.5 * (blank.start() + blank.end()))));
        steps.add(step("s(a)", "stress of the blank at the finished surface", SiUnit.PASCAL,
                blank.at(worst.kept().from())));
        if (worst.view().field() instanceof ResidualField.Plate plate && c.direction() != GrainDirection.ST) {
            SectionRelease release = plate.release(worst.kept(), c.direction());
            steps.add(step("N/A", "mean stress released", SiUnit.PASCAL, worst.view().share() * release.meanStress()));
            steps.add(step("M/I", "gradient released if free", SiUnit.PASCAL_PER_METRE, worst.view().share() * release.gradient()));
        }
        worst.stress().forEach((way, stress) -> steps.add(step("s", "nominal stress, " + way.words(), SiUnit.PASCAL,
                stress)));
        return steps;
    }

    private static Computed.Step step(String symbol, String meaning, SiUnit unit, double value) {
        return new Computed.Step(symbol, meaning, unit, Band.exact(value));
    }

    private Computed.Validity validity() {
        boolean fits = c.section().rulingThickness().isEmpty()
                || KeptSection.fits(c.surface(), c.section().rulingThickness().getAsDouble());
        if (fits) {
            return views.validity();
        }
        return new Computed.Validity(false, views.validity().statement()
                + "; the depth and the finished thickness do not fit into the section at quench");
    }

    private List<Citation> sources() {
        List<Citation> sources = new ArrayList<>(views.sources());
        if (isHoleWall()) {
            sources.add(HOLE);
        }
        return sources;
    }

    private List<String> notes(Band band) {
        List<String> notes = new ArrayList<>(views.notes());
        notes.add("governing view: " + worst.view().basis());
        if (isHoleWall()) {
            notes.add("the concentration at the hole is included");
        }
        if (c.finalYield().isPresent() && band.high() > c.finalYield().getAsDouble()) {
            notes.add("the elastic sum exceeds the yield strength of the final temper and is capped there");
        }
        return notes;
    }

    private List<Computed.Profile> profiles() {
        StressProfile blank = worst.view().in(c.direction());
        if (!worst.view().field().drawable()) {
            return List.of();
        }
        List<Computed.Profile> profiles = new ArrayList<>();
        profiles.add(blank.named("before machining"));
        for (Release way : Release.values()) {
            worst.view().field().released(worst.kept(), c.direction(), way)
                    .ifPresent(left -> profiles.add(left.times(worst.view().share()).named("after machining, " + way.words())));
        }
        profiles.add(new Computed.Profile("new surface", SiUnit.METRE, SiUnit.PASCAL,
                List.of(worst.kept().from(), worst.kept().from()), List.of(blank.lowest(), blank.highest())));
        return profiles;
    }

    private Optional<Computed> bow() {
        if (!(worst.view().field() instanceof ResidualField.Plate plate) || c.direction() == GrainDirection.ST) {
            return Optional.empty();
        }
        GrainDirection across = c.direction() == GrainDirection.L ? GrainDirection.LT : GrainDirection.L;
        Bow bow = Bow.ofPlate(plate.release(worst.kept(), c.direction()), plate.release(worst.kept(), across),
                c.material().modulusAtRoomTemperature(), c.material().poissonRatio()).times(worst.view().share());
        return Optional.of(new Computed("residual.bow", "Bow over one metre if the part is free, " + c.direction(),
                SiUnit.METRE, Band.exact(bow.over(1)), "(m - nu m_across) / E x L^2 / 8 with m = M/I and L = 1 m",
                inputs(), List.of(step("kappa", "curvature", SiUnit.PER_METRE, bow.curvature())),
                "value of the governing view", validity(), sources(), List.of(), List.of()));
    }
}
