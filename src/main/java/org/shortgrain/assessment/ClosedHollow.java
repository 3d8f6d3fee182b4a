package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.water.DrainHole;
import org.shortgrain.mechanics.water.Hollow;
import org.shortgrain.mechanics.water.UnventedHole;
import org.shortgrain.part.Drainage;
import org.shortgrain.reference.StandIns;
import org.shortgrain.reference.ZoneTable;

/**
 * A closed hollow: water comes in with the air and condenses, and leaves only where it is drained and air can follow.
 *
 * @param runOff what its drain holes do
 * @param zone   the wettest of its zones; empty if none is stated
 * @param standIns what stands for what is not stated
 */
record ClosedHollow(RunOff runOff, Optional<ZoneTable.Zone> zone, StandIns standIns) {

    private static final double MM = 1e3;

    /**
     * {@return what speaks for or against water in it}
     *
     * @param trapped what it can hold; empty where a dimension is missing
     */
    List<Sign> signs(Optional<Caught> trapped) {
        boolean breathes = stated().vented().is(true) || !runOff.drains().isEmpty();
        Optional<CondensationReading.Found> dew = new CondensationReading(runOff.site(), standIns).inside(volume(trapped), zone,
                breathes);
        if (stated().vented().isMissing()) {
            return List.of(Sign.open("closed, and whether air comes in is not stated"
                    + dew.filter(CondensationReading.Found::condenses).map(one -> "; " + one.words()).orElse("")));
        }
        if (runOff.undrained()) {
            return List.of(breathes ? undrained(dew) : sealed(dew));
        }
        List<Sign> signs = new ArrayList<>();
        dew.filter(CondensationReading.Found::condenses).ifPresent(one -> signs.add(Sign.comes(one.words())));
        vent().ifPresent(signs::add);
        signs.add(trapped.map(runOff::drained).orElseGet(runOff::unmeasured));
        return signs;
    }

    private Drainage stated() {
        return runOff.stated();
    }

    private static Sign sealed(Optional<CondensationReading.Found> dew) {
        if (dew.isEmpty()) {
            return Sign.open("sealed, as stated; what condenses in it cannot be computed, since its volume is not stated");
        }
        return dew.get().condenses() ? Sign.comes("sealed, but the air in it is moist: " + dew.get().words())
                : Sign.dry("sealed, as stated, and nothing condenses in it");
    }

    private static Sign undrained(Optional<CondensationReading.Found> dew) {
        if (dew.isEmpty()) {
            return Sign.open("it takes in air and has no drain; what condenses in it cannot be computed, since its volume is"
                    + " not stated");
        }
        return dew.get().condenses() ? Sign.stands("it takes in air and has no drain: " + dew.get().words())
                : Sign.dry("it takes in air, but nothing condenses in it");
    }

    /** The only opening must be wide enough for air to come in beside the water. */
    private Optional<Sign> vent() {
        if (!stated().vented().is(false) || runOff.drains().size() != 1) {
            return Optional.empty();
        }
        Optional<Given> width = runOff.drains().get(0).drain().map(DrainHole::diameter);
        if (width.isEmpty()) {
            return Optional.of(Sign.open("one opening only, and its width is not stated: air may not come in"));
        }
        UnventedHole only = new UnventedHole(width.get());
        String id = runOff.site().write(only.limit());
        return only.mayHold() ? Optional.of(Sign.open(String.format(Locale.ROOT, "one opening only, %.2f mm wide: up to"
                + " %.0f mm water can stay for want of air (%s)", width.get().value().low() * MM,
                only.limit().value().high() * MM, id))) : Optional.empty();
    }

    private Optional<Given> volume(Optional<Caught> trapped) {
        Optional<Given> own = HollowReading.given(stated().volume());
        return own.isPresent() ? own : trapped.filter(one -> one.water().hollow() instanceof Hollow.Closed)
                .map(one -> new Given(one.volume().value(), "length x width x depth", Optional.empty()));
    }
}
