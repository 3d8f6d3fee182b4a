package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.service.ServiceStress;
import org.shortgrain.mechanics.uncertainty.Distribution;
import org.shortgrain.part.Level;
import org.shortgrain.part.Load;
import org.shortgrain.part.Range;
import org.shortgrain.review.Factor;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.GrainDirection;

/** Lasting service tension at a place, as declared. */
final class ServicePulls {

    private final Map<Level, Share> shares;

    /**
     * A stand-in for a level in words.
     *
     * @param ofYield share of the lowest minimum yield strength that is taken
     * @param basis   where it comes from
     */
    record Share(double ofYield, Citation basis) {
    }

    /**
     * Prepares the loads.
     *
     * @param shares what the words low, moderate and high stand for
     */
    ServicePulls(Map<Level, Share> shares) {
        this.shares = Map.copyOf(shares);
    }

    /**
     * {@return declared lasting tension by direction; empty where loads are not stated or one of them has no number}
     *
     * @param site the place
     */
    Optional<List<Pull>> at(Site site) {
        if (site.feature().loads().isNone()) {
            return Optional.of(List.of());
        }
        Optional<List<Load>> loads = site.feature().loads().single();
        if (loads.isEmpty()) {
            return Optional.empty();
        }
        List<Pull> pulls = new ArrayList<>();
        for (Load load : loads.get()) {
            if (load.level().isNone() && !load.stress().isKnown()) {
                continue;
            }
            Optional<Computed> stress = stress(site, load);
            if (stress.isEmpty()) {
                site.ask(Factor.STRESS, "What stress does the lasting load (" + source(load) + ") put on " + site.id()
                        + "?", "the sum of lasting tension is not complete without it", Optional.empty(),
                        load.origin().at());
                return Optional.empty();
            }
            pulls.addAll(along(site, load, stress.get()));
        }
        return Optional.of(pulls);
    }

    private static List<Pull> along(Site site, Load load, Computed stress) {
        String id = site.write(stress);
        Set<GrainDirection> along = load.direction().single().<Set<GrainDirection>>map(EnumSet::of)
                .orElse(site.directions());
        return along.stream().sorted().map(direction -> new Pull(source(load), direction, stress.value(),
                Distribution.Shape.TRIANGULAR, true, Optional.of(id))).toList();
    }

    private static String source(Load load) {
        return load.source().single().map(source -> source.word().replace('_', ' ')).orElse("load, source not stated");
    }

    private Optional<Computed> stress(Site site, Load load) {
        Optional<Range> stated = load.stress().single();
        if (stated.isPresent()) {
            return Optional.of(ServiceStress.declared(source(load), Declared.of(load.stress()).orElseThrow()));
        }
        Optional<Computed> computed = overArea(load).or(() -> pressureHoop(load));
        return computed.isPresent() ? computed : load.level().single().flatMap(level -> inWords(site, load, level));
    }

    private static Optional<Computed> overArea(Load load) {
        Optional<Given> force = Declared.of(load.force());
        Optional<Given> area = Declared.of(load.area());
        return force.isEmpty() || area.isEmpty() ? Optional.empty()
                : Optional.of(ServiceStress.overArea(source(load), force.get(), area.get()));
    }

    private static Optional<Computed> pressureHoop(Load load) {
        Optional<Given> pressure = Declared.of(load.pressure());
        Optional<Given> bore = Declared.of(load.bore());
        Optional<Given> wall = Declared.of(load.wall());
        return pressure.isEmpty() || bore.isEmpty() || wall.isEmpty() ? Optional.empty()
                : Optional.of(ServiceStress.pressureHoop(pressure.get(), bore.get(), wall.get()));
    }

    private Optional<Computed> inWords(Site site, Load load, Level level) {
        Optional<Given> yieldStrength = site.elastic().flatMap(Elastic::lowestYield);
        Share share = shares.get(level);
        if (yieldStrength.isEmpty() || share == null) {
            return Optional.empty();
        }
        site.assume(String.format(Locale.ROOT, "a %s load (%s) is taken as anything up to %.0f %% of the least yield"
                + " strength", level.word(), source(load), share.ofYield() * 100), share.basis());
        return Optional.of(ServiceStress.shareOfYield(source(load), new Given(Band.exact(share.ofYield()),
                "stand-in for the word " + level.word(), Optional.of(share.basis())), yieldStrength.get()));
    }
}
