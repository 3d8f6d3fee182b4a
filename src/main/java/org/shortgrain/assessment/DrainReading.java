package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.water.CommonOpening;
import org.shortgrain.mechanics.water.DrainHole;
import org.shortgrain.mechanics.water.Hole;
import org.shortgrain.mechanics.water.Liquid;
import org.shortgrain.part.NeighbourHole;
import org.shortgrain.part.Stated;

/**
 * A drain hole as the description states it.
 *
 * @param hole    where it lies; empty where that is not stated
 * @param drain   its width as it is open; empty where that is not stated or nothing is open
 * @param blind   whether it certainly leads nowhere
 * @param reasons why it does not count, or not for certain; empty for a hole that counts
 */
record DrainReading(Optional<Hole> hole, Optional<DrainHole> drain, boolean blind, List<String> reasons) {

    /** Copies the list. */
    DrainReading {
        reasons = List.copyOf(reasons);
    }

    /** {@return whether it counts for certain} */
    boolean counts() {
        return reasons.isEmpty();
    }

    /**
     * {@return what is stated of a hole}
     *
     * @param site   the place, for what is computed
     * @param stated the hole
     * @param hollow the hollow that it drains
     */
    static DrainReading of(Site site, org.shortgrain.part.DrainHole stated, HollowReading hollow) {
        List<String> reasons = new ArrayList<>();
        boolean blind = path(stated, reasons);
        Width width = width(site, stated, reasons);
        Optional<Hole> hole = place(stated, hollow, width.open(), reasons);
        Optional<DrainHole> drain = width.open().map(open -> new DrainHole(open, Liquid.WATER));
        drain.ifPresent(one -> heldUp(site, one, reasons));
        if (site.route().sealsOverDrain(site.id())) {
            reasons.add("sealant or inhibitor goes on after it, and no later inspection names the drain");
        }
        if (!hollow.declared()) {
            reasons.add("the attitude on the ground or in flight is not stated");
        }
        return new DrainReading(hole, drain, blind || width.shut(), reasons);
    }

    /** Width of what is open (m), empty where it is not stated or shut. */
    private record Width(Optional<Given> open, boolean shut) {
    }

    private static boolean path(org.shortgrain.part.DrainHole stated, List<String> reasons) {
        if (stated.pathContinues().is(false)) {
            reasons.add("its way out ends at a neighbour");
            return true;
        }
        if (!stated.pathContinues().is(true)) {
            reasons.add("whether its way out goes on is not stated");
        }
        return false;
    }

    /** Its own diameter, or what a neighbour's hole leaves open of it. */
    private static Width width(Site site, org.shortgrain.part.DrainHole stated, List<String> reasons) {
        Optional<Given> own = HollowReading.given(stated.diameter());
        if (own.isEmpty()) {
            reasons.add("its diameter is not stated");
            return new Width(own, false);
        }
        Stated<NeighbourHole> neighbour = stated.neighbourHole();
        if (!neighbour.isKnown()) {
            return new Width(own, false);
        }
        Optional<Given> other = HollowReading.given(neighbour.field(NeighbourHole::diameter));
        Optional<Given> offset = Declared.of(neighbour.field(NeighbourHole::offset));
        if (other.isEmpty() || offset.isEmpty()) {
            reasons.add("diameter and offset of the neighbour's hole are not both stated");
            return new Width(own, false);
        }
        CommonOpening common = new CommonOpening(own.get(), other.get(), offset.get());
        String id = site.write(common.computed());
        Band open = common.width();
        if (open.low() <= 0) {
            reasons.add("the neighbour's hole does not meet it (" + id + ")");
            return new Width(Optional.empty(), true);
        }
        return new Width(Optional.of(new Given(open, "common opening, " + id, Optional.empty())), false);
    }

    private static Optional<Hole> place(org.shortgrain.part.DrainHole stated, HollowReading hollow, Optional<Given> width,
            List<String> reasons) {
        Optional<Hole> hole = hollow.place(stated, width);
        if (hole.isPresent()) {
            return hole;
        }
        reasons.add(stated.atLowestPoint().is(false) ? "it is stated not to lie at the lowest point"
                : "whether it lies at the lowest point is not stated");
        return Optional.empty();
    }

    private static void heldUp(Site site, DrainHole drain, List<String> reasons) {
        String id = site.write(drain.holdUp());
        if (!drain.isWideEnough()) {
            reasons.add(String.format(Locale.ROOT, "surface tension holds up to %.1f mm of water over its %.2f mm, where the"
                    + " least hole of the trade, %.3f mm, holds %.1f mm (%s)", drain.head().high() * 1e3,
                    drain.diameter().value().low() * 1e3, DrainHole.LEAST * 1e3, DrainHole.film() * 1e3, id));
        }
    }
}
