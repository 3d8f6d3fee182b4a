package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.uncertainty.Distribution;
import org.shortgrain.mechanics.Direction;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.GrainAxes;
import org.shortgrain.mechanics.fit.FitMaterial;
import org.shortgrain.mechanics.fit.FitStress;
import org.shortgrain.mechanics.fit.HoopDirection;
import org.shortgrain.mechanics.fit.Interference;
import org.shortgrain.mechanics.fit.InterferenceFit;
import org.shortgrain.mechanics.fit.Retention;
import org.shortgrain.mechanics.fit.StakedLip;
import org.shortgrain.part.Fit;
import org.shortgrain.part.FitKind;
import org.shortgrain.part.FitRole;
import org.shortgrain.part.Location;
import org.shortgrain.part.Range;
import org.shortgrain.part.Stated;
import org.shortgrain.review.Factor;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.GrainDirection;
import org.shortgrain.terms.SourceStatus;

/** Hoop tension that a fit keeps up at a place. */
final class FitPulls {

    private static final Set<FitKind> LOOSE = EnumSet.of(FitKind.CLEARANCE, FitKind.ORDINARY, FitKind.CLOSE_FIT_BOLT);
    /** Temperature of assembly where none is stated (degC): the shop. */
    private static final double SHOP = 20;
    /** Outside over hole diameter taken where no edge distance is stated: an edge one diameter from the centre. */
    private static final double CLOSE_EDGE = 2.0;
    private static final Citation CLOSE_EDGE_BASIS = new Citation("common-practice", "edge distance of lugs",
            SourceStatus.COMMON_PRACTICE);

    /** Stands in for a bush of unknown material: steel, the stiffest usual one. */
    private static final String STIFF_BUSH = "4340";

    private final Function<String, Optional<Elastic>> materials;
    private final Given friction;

    /**
     * Prepares the fits.
     *
     * @param materials elastic behaviour of a material by its name and condition
     * @param friction  stand-in for the coefficient of friction
     */
    FitPulls(Function<String, Optional<Elastic>> materials, Given friction) {
        this.materials = materials;
        this.friction = friction;
    }

    /**
     * {@return hoop tension of the fit in each direction that may be pulled; empty where it cannot be said}
     *
     * @param site the place
     */
    Optional<List<Pull>> at(Site site) {
        Stated<Fit> stated = site.feature().fit();
        if (stated.isNone()) {
            return Optional.of(List.of());
        }
        Optional<Fit> fit = stated.single();
        if (fit.isEmpty()) {
            return Optional.empty();
        }
        if (fit.get().kind().surely(LOOSE::contains)) {
            return Optional.of(List.of());
        }
        if (fit.get().role().is(FitRole.INNER)) {
            site.ledger().assume(site.id() + ": as the inner member of the fit it is pressed, not pulled",
                    org.shortgrain.review.Assumption.Effect.NEUTRAL);
            return Optional.of(List.of());
        }
        return fit.get().kind().is(FitKind.BEARING_STAKED) ? staked(site) : pressed(site, fit.get());
    }

    private static Optional<List<Pull>> staked(Site site) {
        Optional<Given> yieldStrength = site.elastic().flatMap(Elastic::lowestYield);
        if (yieldStrength.isEmpty()) {
            ask(site, "What is the yield strength of the staked lip?", "a staked lip is taken as yielded",
                    Optional.empty(), site.feature().fit().at());
            return Optional.empty();
        }
        Computed lip = StakedLip.stress(yieldStrength.get());
        String id = site.write(lip);
        return Optional.of(site.directions().stream()
                .map(direction -> new Pull("staked lip", direction, lip.value(), Distribution.Shape.TRIANGULAR, false, Optional.of(id))).toList());
    }

    private Optional<List<Pull>> pressed(Site site, Fit fit) {
        Optional<Interference> interference = interference(fit);
        if (interference.isEmpty()) {
            ask(site, "What are the limits of hole and bush at " + site.id() + "?",
                    "the hoop tension of the fit follows from the greatest interference", Optional.empty(),
                    fit.origin().at());
            return Optional.empty();
        }
        if (site.elastic().isEmpty()) {
            ask(site, "What are modulus and expansion of the part's material?",
                    "the tables do not hold them, and the fit cannot be computed without", Optional.empty(),
                    site.description().material().at());
            return Optional.empty();
        }
        try {
            InterferenceFit rings = rings(site, fit, interference.get());
            List<Pull> pulls = resolved(site, new FitStress(rings).boreHoop());
            held(site, fit, rings);
            return Optional.of(pulls);
        } catch (IllegalArgumentException notNested) {
            ask(site, "Which diameters does the fit at " + site.id() + " have?", notNested.getMessage(),
                    Optional.empty(), fit.origin().at());
            return Optional.empty();
        }
    }

    private InterferenceFit rings(Site site, Fit fit, Interference interference) {
        return new InterferenceFit(interference, outside(site, fit, interference.diameter()), bore(fit),
                site.elastic().orElseThrow().forFit(), bush(site, fit), Given.exact(SHOP, "temperature of the shop"),
                lasting(site, fit));
    }

    /**
     * {@return the rings of the fit as they are computed; empty where nothing is pressed in or they cannot be computed}
     *
     * @param site the place
     */
    Optional<InterferenceFit> rings(Site site) {
        Optional<Fit> pressed = site.feature().fit().single().filter(fit -> !fit.kind().surely(LOOSE::contains)
                && !fit.kind().is(FitKind.BEARING_STAKED) && !fit.role().is(FitRole.INNER) && site.elastic().isPresent());
        try {
            return pressed.flatMap(fit -> interference(fit).map(one -> rings(site, fit, one)));
        } catch (IllegalArgumentException notNested) {
            return Optional.empty();
        }
    }

    private static List<Pull> resolved(Site site, Computed hoop) {
        String hoopId = site.write(hoop);
        Optional<Direction> bore = site.boreAxis();
        Optional<GrainAxes> grain = site.grainAxes();
        List<Pull> pulls = new ArrayList<>();
        for (GrainDirection direction : site.directions()) {
            if (bore.isEmpty() || grain.isEmpty()) {
                pulls.add(new Pull("hoop of the fit", direction, hoop.value(), Distribution.Shape.TRIANGULAR, false, Optional.of(hoopId)));
                continue;
            }
            Computed along = new HoopDirection(bore.get(), grain.get()).resolve(hoop, direction);
            String id = site.write(along);
            pulls.add(new Pull("hoop of the fit", direction, along.value(), Distribution.Shape.TRIANGULAR, false, Optional.of(id)));
        }
        if (bore.isEmpty() || grain.isEmpty()) {
            site.assume("the hoop of the fit is taken to act fully along every direction that may be pulled, since the"
                    + " axis of the bore or of the grain is not stated");
        }
        return pulls;
    }

    /** What friction holds, where a load that it must hold is stated. */
    private void held(Site site, Fit fit, InterferenceFit rings) {
        if (fit.pushOutLoad().isKnown()) {
            Declared.of(fit.length()).ifPresent(length -> site.write(new Retention(rings, friction, length).force()));
        }
    }

    private static Optional<Interference> interference(Fit fit) {
        Optional<Given> hole = Declared.of(fit.hole());
        Optional<Given> bush = Declared.of(fit.bush());
        Optional<Given> stated = Declared.of(fit.interference());
        if (hole.isPresent() && fit.taper().isKnown() && fit.advance().isKnown()) {
            return Optional.of(new Interference.FromTaper(hole.get(),
                    Declared.of(fit.advance()).orElseThrow(),
                    Declared.exact(fit.taper(), fit.taper().single().orElseThrow())));
        }
        if (hole.isPresent() && bush.isPresent()) {
            return Optional.of(new Interference.FromLimits(hole.get(), bush.get()));
        }
        if (stated.isPresent() && (hole.isPresent() || bush.isPresent())) {
            return Optional.of(new Interference.Stated(hole.orElseGet(bush::get), stated.get()));
        }
        return Optional.empty();
    }

    private static Optional<Given> outside(Site site, Fit fit, double diameter) {
        OptionalDouble width = Range.least(fit.outerWidth());
        if (width.isPresent()) {
            return Optional.of(Declared.exact(fit.outerWidth(), width.getAsDouble()));
        }
        OptionalDouble edge = Range.least(fit.edgeDistance());
        if (edge.isPresent()) {
            return Optional.of(Declared.exact(fit.edgeDistance(), 2 * edge.getAsDouble()));
        }
        ask(site, "How far is the centre of " + site.id() + " from the nearest edge?",
                "a thinner wall carries a higher hoop tension", Optional.of("an edge one hole diameter away"),
                fit.outerWidth().at());
        site.assume("the nearest edge is taken to lie one hole diameter from the centre", CLOSE_EDGE_BASIS);
        return Optional.of(Given.exact(CLOSE_EDGE * diameter, "assumed: twice the hole diameter"));
    }

    private static Given bore(Fit fit) {
        OptionalDouble bore = Range.least(fit.bushBore());
        return bore.isPresent() ? Declared.exact(fit.bushBore(), bore.getAsDouble())
                : Given.exact(0, "taken as solid, the stiffer case");
    }

    private FitMaterial bush(Site site, Fit fit) {
        Optional<String> name = fit.bushMaterial().single();
        Optional<Elastic> known = name.flatMap(materials);
        if (known.isEmpty()) {
            site.assume("the bush" + name.map(n -> " of " + n + ", which the tables do not hold,").orElse("")
                    + " is taken as steel, the stiffest usual material");
        }
        return known.or(() -> materials.apply(STIFF_BUSH))
                .orElseThrow(() -> new IllegalStateException("the tables hold no physical data of " + STIFF_BUSH))
                .forFit();
    }

    private static List<Given> lasting(Site site, Fit fit) {
        List<Given> temperatures = new ArrayList<>();
        fit.coldest().single()
                .ifPresent(range -> temperatures.add(Declared.exact(fit.coldest(), range.lowest())));
        site.temperature().ifPresent(range -> {
            if (temperatures.isEmpty()) {
                temperatures.add(Given.exact(range.lowest(), "lowest temperature of the environment"));
            }
            temperatures.add(Given.exact(range.highest(), "highest temperature of the environment"));
        });
        if (temperatures.isEmpty()) {
            ask(site, "What is the lowest long-lasting temperature at " + site.id() + "?",
                    "a steel bush in aluminium sits tighter in the cold", Optional.of("shop temperature only"),
                    fit.coldest().at());
        }
        return temperatures;
    }

    private static void ask(Site site, String text, String why, Optional<String> standIn, Location at) {
        site.ask(Factor.STRESS, text, why, standIn, at);
    }
}
