package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.water.DrainHole;
import org.shortgrain.mechanics.water.DrainTime;
import org.shortgrain.mechanics.water.Hole;
import org.shortgrain.mechanics.water.StandingWater;
import org.shortgrain.part.Attitude;
import org.shortgrain.part.Attitudes;
import org.shortgrain.part.Drainage;
import org.shortgrain.part.Opening;
import org.shortgrain.part.Stated;

/**
 * Whether water runs off from a hollow, over its rim or through its drain holes.
 *
 * @param site   the place
 * @param stated the drainage there
 * @param hollow the hollow as stated
 * @param drains its drain holes as stated
 */
record RunOff(Site site, Drainage stated, HollowReading hollow, List<DrainReading> drains) {

    /** Copies the list. */
    RunOff {
        drains = List.copyOf(drains);
    }

    /** {@return whether it certainly has no drain hole} */
    boolean undrained() {
        return stated.drainHoles().isNone() || stated.drainHoles().surely(List::isEmpty);
    }

    private boolean opens(Opening opening) {
        return hollow.certain() && hollow.opening() == opening;
    }

    /**
     * {@return what an open hollow does with water}
     *
     * @param trapped what it catches; empty where a dimension is missing
     */
    Sign open(Optional<Caught> trapped) {
        if (opens(Opening.DOWN) && (!hollow.declared() || trapped.isEmpty())) {
            return Sign.dry("opens downwards when built in, as stated");
        }
        if (trapped.isEmpty()) {
            return opens(Opening.UP) && undrained() ? Sign.stands("the place opens upwards and has no drain hole"
                    + stated.depth().single().map(range -> ", " + range.entered() + " deep").orElse("")) : unmeasured();
        }
        Caught caught = trapped.get();
        if (caught.isFilmAtMost()) {
            return Sign.dry((opens(Opening.DOWN) ? "opens downwards: " : "it keeps no more than a film: ") + caught.words()
                    + ", " + Caught.limit());
        }
        if (!undrained()) {
            return drained(caught);
        }
        boolean certain = (opens(Opening.UP) || opens(Opening.DOWN)) && caught.standsAtLeast();
        String words = "no drain hole: water " + caught.words();
        return certain ? Sign.stands(words) : Sign.open(words + maybe());
    }

    private String maybe() {
        if (!hollow.certain()) {
            return "; where it opens to is not stated, so that it may face up";
        }
        return opens(Opening.SIDE) ? "; which way it opens is not stated" : "; at the other end of its tolerances less";
    }

    /** {@return what is said of a hollow whose dimensions are missing} */
    Sign unmeasured() {
        return Sign.open("how much water stays cannot be computed: length, width and depth, or width and the points of the"
                + " floor, are not all stated", new Sign.Ask("What are length, width and depth of the hollow at " + site.id()
                + "?", "what stays behind its drain holes follows from them", stated.origin().at()));
    }

    /**
     * {@return what a hollow with drain holes keeps}
     *
     * @param caught what it would catch without
     */
    Sign drained(Caught caught) {
        List<Hole> certain = drains.stream().filter(DrainReading::counts).flatMap(one -> one.hole().stream()).toList();
        Caught kept = certain.isEmpty() ? caught : Caught.of(site, hollow, caught.water().hollow(), certain);
        outflow(caught);
        String words = kept.words() + ", " + Caught.limit();
        if (kept.isFilmAtMost() && hollow.certain()) {
            return Sign.dry("drains: " + words);
        }
        boolean faces = opens(Opening.UP) || opens(Opening.CLOSED);
        if (faces && hollow.declared() && !rollOpen() && leastKept(caught) > DrainHole.film()) {
            return Sign.stands("water stays behind the drain holes: " + words + why());
        }
        return halfDeclared() ? Sign.open("water may stay: " + words + why(), new Sign.Ask("How is the part pitched at "
                + site.id() + " in each attitude that is stated?", "what stays behind its drain holes follows from it",
                stated.attitude().at())) : rollOpen() ? Sign.open("water may stay: " + words + why(), new Sign.Ask(
                "How far does " + site.id() + " roll to either side in each attitude that is stated?",
                "no roll is stated, and the worst of those that may be leaves water behind the drain holes",
                stated.attitude().at())) : Sign.open("water may stay: " + words + why());
    }

    private String why() {
        List<String> reasons = new ArrayList<>(drains.stream().flatMap(one -> one.reasons().stream()).distinct().toList());
        if (stated.drainHoles().isMissing()) {
            reasons.add("whether there is one is not stated");
        }
        return reasons.isEmpty() ? "" : "; a drain hole does not count for certain: " + String.join("; ", reasons);
    }

    /** Attitudes on the ground and in flight are stated, but one of those stated has no pitch. */
    private boolean halfDeclared() {
        return !hollow.declared() && !stated.attitude().field(Attitudes::ground).isMissing()
                && !stated.attitude().field(Attitudes::flight).isMissing();
    }

    /** Some attitude that is stated has no roll. */
    private boolean rollOpen() {
        Stream<Function<Attitudes, Stated<Attitude>>> all = Stream.of(Attitudes::ground, Attitudes::flight, Attitudes::parked,
                Attitudes::transport);
        return all.map(stated.attitude()::field).anyMatch(one -> one.isKnown() && one.field(Attitude::roll).isMissing());
    }

    /** Least depth that stays when every hole that may count does, one of unknown place at its best (m). */
    private double leastKept(Caught caught) {
        List<DrainReading> best = drains.stream().filter(one -> !one.blind()).toList();
        if (stated.drainHoles().isMissing() || best.stream().anyMatch(one -> one.hole().isEmpty())) {
            return 0;
        }
        List<Hole> holes = best.stream().flatMap(one -> one.hole().stream()).toList();
        return site.waters().of(new StandingWater(caught.water().hollow(), hollow.rests(), holes)).depth().value().low();
    }

    /** How long the holes that count take, and what surface tension leaves. */
    private void outflow(Caught caught) {
        List<DrainHole> open = drains.stream().filter(DrainReading::counts).flatMap(one -> one.drain().stream()).toList();
        Optional<Given> plan = caught.plan();
        if (open.isEmpty() || plan.isEmpty()) {
            return;
        }
        Band area = open.stream().map(DrainHole::area).reduce(Band.exact(0), Band::plus);
        DrainHole narrowest = open.stream()
                .reduce((a, b) -> a.diameter().value().low() <= b.diameter().value().low() ? a : b).orElseThrow();
        site.write(new DrainTime(plan.get(), new Given(area, "drain holes that count", Optional.empty()),
                new Given(caught.depth().value(), "depth of water that the hollow catches", Optional.empty()),
                new Given(narrowest.head(), "head held over the narrowest", Optional.empty())).computed());
        site.write(narrowest.residue(plan.get(), new Given(caught.volume().value(), "what the hollow catches",
                Optional.empty())));
    }
}
