package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.uncertainty.Distribution;
import org.shortgrain.mechanics.Given;
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
            Optional<Band> stress = stress(site, load);
            if (stress.isEmpty()) {
                site.ask(Factor.STRESS, "What stress does the lasting load (" + source(load) + ") put on " + site.id()
                        + "?", "the sum of lasting tension is not complete without it", Optional.empty(),
                        load.origin().at());
                return Optional.empty();
            }
            Set<GrainDirection> along = load.direction().single().<Set<GrainDirection>>map(EnumSet::of)
                    .orElse(site.directions());
            along.stream().sorted().forEach(direction -> pulls.add(
                    new Pull(source(load), direction, stress.get(), Distribution.Shape.TRIANGULAR, true, Optional.empty())));
        }
        return Optional.of(pulls);
    }

    private static String source(Load load) {
        return load.source().single().map(source -> source.word().replace('_', ' ')).orElse("load, source not stated");
    }

    private Optional<Band> stress(Site site, Load load) {
        Optional<Range> stated = load.stress().single();
        if (stated.isPresent()) {
            return Optional.of(new Band(stated.get().middle(), stated.get().lowest(), stated.get().highest()));
        }
        if (load.level().isNone()) {
            return Optional.of(Band.exact(0));
        }
        Optional<Band> computed = overArea(load).or(() -> hoop(load));
        return computed.isPresent() ? computed : load.level().single().flatMap(level -> inWords(site, load, level));
    }

    private static Optional<Band> overArea(Load load) {
        OptionalDouble force = Site.greatest(load.force());
        OptionalDouble area = Site.least(load.area());
        if (force.isEmpty() || area.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(Band.exact(force.getAsDouble() / area.getAsDouble()));
    }

    /** Thick-walled tube under inner pressure: greatest hoop tension, at the bore (Lam&eacute;). */
    private static Optional<Band> hoop(Load load) {
        OptionalDouble pressure = Site.greatest(load.pressure());
        OptionalDouble bore = Site.greatest(load.bore());
        OptionalDouble wall = Site.least(load.wall());
        if (pressure.isEmpty() || bore.isEmpty() || wall.isEmpty()) {
            return Optional.empty();
        }
        double inner = bore.getAsDouble() / 2;
        double outer = inner + wall.getAsDouble();
        double squares = (outer * outer + inner * inner) / (outer * outer - inner * inner);
        return Optional.of(Band.exact(pressure.getAsDouble() * squares));
    }

    private Optional<Band> inWords(Site site, Load load, Level level) {
        Optional<Given> yieldStrength = site.elastic().flatMap(Elastic::lowestYield);
        Share share = shares.get(level);
        if (yieldStrength.isEmpty() || share == null) {
            return Optional.empty();
        }
        double high = share.ofYield() * yieldStrength.get().value().low();
        site.assume(String.format(Locale.ROOT, "a %s load (%s) is taken as up to %.0f %% of the least yield strength,"
                + " %.0f MPa", level.word(), source(load), share.ofYield() * 100, high / 1e6), share.basis());
        return Optional.of(new Band(high / 2, 0, high));
    }
}
