package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.uncertainty.Distribution;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.clampup.ClosedGap;
import org.shortgrain.mechanics.clampup.PulledShut;
import org.shortgrain.mechanics.clampup.SharedGap;
import org.shortgrain.mechanics.clampup.Shim;
import org.shortgrain.mechanics.clampup.Strip;
import org.shortgrain.mechanics.clampup.Support;
import org.shortgrain.part.ClampUp;
import org.shortgrain.part.Range;
import org.shortgrain.part.Stated;
import org.shortgrain.review.Factor;
import org.shortgrain.terms.GrainDirection;

/** Bending tension from gaps that assembly pulls shut at a place. */
final class ClampUpPulls {

    /** What the mechanics call the origin of the factor of the support. */
    private static final String HELD = "how the strip is held";

    /**
     * {@return clamp-up tension by direction; empty where it cannot be said}
     *
     * @param site the place
     */
    Optional<List<Pull>> at(Site site) {
        if (site.feature().clampUp().isNone()) {
            return Optional.of(List.of());
        }
        Optional<List<ClampUp>> stated = site.feature().clampUp().single();
        if (stated.isEmpty()) {
            return Optional.empty();
        }
        List<Pull> pulls = new ArrayList<>();
        for (ClampUp gap : stated.get()) {
            Optional<Computed> stress = stress(site, gap);
            if (stress.isEmpty()) {
                return Optional.empty();
            }
            String id = site.write(stress.get());
            for (GrainDirection direction : site.directions()) {
                pulls.add(new Pull("clamp-up", direction, stress.get().value(), Distribution.Shape.RECTANGULAR, true,
                        Optional.of(id)));
            }
        }
        return Optional.of(pulls);
    }

    private static Optional<Computed> stress(Site site, ClampUp stated) {
        Optional<ClosedGap> closed = closed(site, stated);
        if (closed.isEmpty()) {
            site.ask(Factor.STRESS, "What gap, over which span and thickness, does assembly pull shut at " + site.id()
                    + "?", "the bending tension of the clamp-up follows from them", Optional.empty(),
                    stated.origin().at());
        }
        return closed.map(one -> one.stress().withOrigins(input -> input.origin().equals(HELD)
                && stated.held().isKnown() ? stated.held().at().path() : input.origin()));
    }

    /**
     * {@return each gap that assembly closes at a place as it is computed, in the order of the description; an empty one where
     * it cannot be computed}
     *
     * @param site the place
     */
    static List<Optional<ClosedGap>> closed(Site site) {
        return site.feature().clampUp().single().orElse(List.of()).stream().map(gap -> closed(site, gap)).toList();
    }

    private static Optional<ClosedGap> closed(Site site, ClampUp stated) {
        Optional<Range> gap = stated.gap().single();
        if (gap.isEmpty() || stated.span().single().isEmpty() || stated.thickness().single().isEmpty()
                || site.elastic().isEmpty()) {
            return Optional.empty();
        }
        Strip strip = strip(site, stated);
        Given open = Declared.limits(stated.gap(), gap.get().min().isPresent() ? gap.get().lowest() : 0,
                gap.get().highest());
        Shim shim = shim(site, stated);
        Optional<Strip> other = other(site, stated, strip);
        return Optional.of(other.isPresent()
                ? new SharedGap(strip, other.get(), new Given(shim.left(open.value()), open.origin(), open.source()))
                : new PulledShut(strip, open, shim, Declared.of(stated.preload())));
    }

    private static Strip strip(Site site, ClampUp stated) {
        Elastic metal = site.elastic().orElseThrow();
        return new Strip(support(site, stated), Declared.of(stated.span()).orElseThrow(),
                Declared.of(stated.thickness()).orElseThrow(), Declared.of(stated.width()), metal.modulus(),
                metal.poisson(), metal.lowestYield());
    }

    /** The other part is taken as of the same metal, since the description does not name it. */
    private static Optional<Strip> other(Site site, ClampUp stated, Strip strip) {
        Optional<Given> span = Declared.of(stated.otherSpan());
        Optional<Given> thickness = Declared.of(stated.otherThickness());
        Optional<Given> width = Declared.of(stated.otherWidth());
        if (span.isEmpty() || thickness.isEmpty() || width.isEmpty() || strip.width().isEmpty()) {
            return Optional.empty();
        }
        site.ledger().assume(site.id() + ": the part that shares the gap is taken as of the same metal and held alike",
                org.shortgrain.review.Assumption.Effect.UNKNOWN);
        return Optional.of(new Strip(strip.support(), span.get(), thickness.get(), width, strip.modulus(),
                strip.poisson(), strip.yieldStrength()));
    }

    private static Support support(Site site, ClampUp stated) {
        Optional<org.shortgrain.part.Support> held = stated.held().single();
        if (held.isEmpty()) {
            site.ask(Factor.STRESS, "How is the strip held that clamp-up bends at " + site.id() + "?",
                    "the support changes the stress eightfold", Optional.of("clamped at both ends, the worst"),
                    stated.held().at());
            return Support.CLAMPED;
        }
        return switch (held.get()) {
            case CANTILEVER -> Support.CANTILEVER;
            case STEP -> Support.STEP;
            case SIMPLY_SUPPORTED -> Support.SIMPLY_SUPPORTED;
            case CLAMPED -> Support.CLAMPED;
        };
    }

    /** A shim counts only with the gap that may be drawn up without it; a solid shim of no stated size fills nothing. */
    private static Shim shim(Site site, ClampUp stated) {
        Optional<Given> limit = Declared.of(stated.maxGapWithoutShim());
        boolean shimmed = stated.shim().isKnown();
        if (shimmed && limit.isPresent()) {
            return new Shim.WhereAbove(limit.get());
        }
        if (shimmed) {
            Stated<Range> asked = stated.maxGapWithoutShim();
            site.ask(Factor.STRESS, "Up to which gap may " + site.id() + " be drawn up without shim?",
                    "the shim helps only above that gap", Optional.of("no credit for the shim"), asked.at());
        }
        return new Shim.None();
    }
}
