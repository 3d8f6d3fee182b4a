package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.water.FayingGap;
import org.shortgrain.mechanics.water.Liquid;
import org.shortgrain.part.Drainage;
import org.shortgrain.part.Filling;
import org.shortgrain.part.Opening;
import org.shortgrain.part.Sealant;
import org.shortgrain.part.Stated;
import org.shortgrain.reference.StandIns;
import org.shortgrain.reference.ZoneTable;

/**
 * Whether water stands at a place, from its shape, its attitudes, its drain holes and what fills it.
 *
 * <p>Everything is read twice: as it counts for certain, and as it might be at best. Water stands for certain where it does
 * so at best; it runs off only where it does so with what counts for certain. In between it is open. An attitude that is
 * not declared is taken at its worst, so that no hollow drains until it is.
 */
final class WaterReading {

    private static final double MM = 1e3;

    private final Site site;
    private final Drainage stated;
    private final Optional<ZoneTable.Zone> zone;
    private final StandIns standIns;
    private final List<Sign> signs = new ArrayList<>();

    private WaterReading(Site site, Drainage stated, Optional<ZoneTable.Zone> zone, StandIns standIns) {
        this.site = site;
        this.stated = stated;
        this.zone = zone;
        this.standIns = standIns;
    }

    /**
     * {@return what speaks for or against standing water at a place}
     *
     * @param site the place
     * @param zone the wettest of its zones; empty if none is stated
     * @param standIns what stands for what is not stated
     */
    static List<Sign> at(Site site, Optional<ZoneTable.Zone> zone, StandIns standIns) {
        Stated<Drainage> stated = site.feature().drainage();
        if (stated.isNone()) {
            return List.of(Sign.dry("water cannot stand here, as stated"));
        }
        if (stated.single().isEmpty()) {
            return List.of(Sign.open(stated.isMissing() ? "whether water stands here is not stated"
                    : "which of several statements on its drainage holds is not stated"));
        }
        return new WaterReading(site, stated.single().get(), zone, standIns).read();
    }

    private List<Sign> read() {
        if (stated.holdsWater().is(true)) {
            signs.add(Sign.stands("water stands here, as stated"));
        }
        HollowReading.given(stated.gap()).ifPresent(this::gap);
        if (stated.opening().isKnown() || stated.depth().isKnown() || stated.profile().isKnown()) {
            signs.addAll(heldAgainstStatement(hollow()));
        } else if (stated.holdsWater().is(false)) {
            signs.add(Sign.dry("no water stands here, as stated"));
        } else if (signs.isEmpty()) {
            signs.add(Sign.open("where the place opens to is not stated"));
        }
        return signs;
    }

    /** A statement that the place stays empty yields to a shape that keeps water. */
    private List<Sign> heldAgainstStatement(List<Sign> found) {
        if (!stated.holdsWater().is(false)) {
            return found;
        }
        List<Sign> held = new ArrayList<>(found);
        held.replaceAll(sign -> sign.kind() == Sign.Kind.STANDS
                ? Sign.open("stated to hold no water, but as described: " + sign.text()) : sign);
        if (held.equals(found)) {
            held.add(Sign.dry("no water stands here, as stated"));
        }
        return held;
    }

    private void gap(Given gap) {
        Computed rise = new FayingGap(gap, Liquid.WATER).rise();
        String words = String.format(Locale.ROOT, "a gap of %.2f mm draws water %.0f mm high (%s) and no drain empties it",
                gap.value().low() * MM, rise.value().high() * MM, site.write(rise));
        Stated<String> own = site.feature().sealant().field(Sealant::faying);
        Stated<String> faying = own instanceof Stated.Absent<String> ? site.description().sealant().field(Sealant::faying)
                : own;
        boolean controlled = zone.filter(one -> one.wetness().rank() <= EnvironmentJudge.CONTROLLED).isPresent();
        if (faying.isKnown()) {
            signs.add(Sign.dry("the gap is sealed, as stated"));
        } else if (faying.isMissing()) {
            signs.add(Sign.open(words + "; whether it is sealed is not stated"));
        } else {
            signs.add(controlled ? Sign.dry(words + "; nothing wets it in a controlled zone") : Sign.stands(words));
        }
    }

    private List<Sign> hollow() {
        HollowReading hollow = HollowReading.of(site, stated, standIns);
        Optional<Caught> trapped = hollow.shape().map(shape -> Caught.of(site, hollow, shape, List.of()));
        if (stated.filledWith().isKnown()) {
            return List.of(filled(trapped));
        }
        List<DrainReading> drains = Stated.items(stated.drainHoles()).stream()
                .map(hole -> DrainReading.of(site, hole, hollow)).toList();
        RunOff runOff = new RunOff(site, stated, hollow, drains);
        return hollow.opening() == Opening.CLOSED ? new ClosedHollow(runOff, zone, standIns).signs(trapped)
                : List.of(runOff.open(trapped));
    }

    private Sign filled(Optional<Caught> trapped) {
        var kind = filling();
        String room = trapped.map(one -> site.write(kind.left(new Given(one.volume().value(), "what the hollow catches",
                Optional.empty())))).map(id -> " (" + id + ")").orElse("");
        String name = "filled with " + stated.filledWith().candidates().get(0).word().replace('_', ' ');
        return switch (kind) {
            case SPONGE -> Sign.stands(name + room + ": it soaks itself full and keeps the wall wet");
            case TIGHT_AND_BONDED -> Sign.dry(name + ", bonded to a primed wall, as stated" + room
                    + ": no room for water while the bond holds");
            case TIGHT_AND_LOOSE -> Sign.open(name + ", not bonded for certain" + room
                    + ": water behind it would stay and not be seen");
        };
    }

    private org.shortgrain.mechanics.water.Filling filling() {
        if (stated.filledWith().is(Filling.OPEN_CELL_FOAM)) {
            return org.shortgrain.mechanics.water.Filling.SPONGE;
        }
        boolean tight = stated.filledWith().surely(one -> one != Filling.OPEN_CELL_FOAM);
        return tight && stated.fillingBonded().is(true) ? org.shortgrain.mechanics.water.Filling.TIGHT_AND_BONDED
                : org.shortgrain.mechanics.water.Filling.TIGHT_AND_LOOSE;
    }
}
