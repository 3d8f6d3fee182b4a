package org.shortgrain.assessment;

import java.util.Locale;
import java.util.Optional;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.condensation.CavityCondensation;
import org.shortgrain.mechanics.condensation.DewPoint;
import org.shortgrain.part.Environment;
import org.shortgrain.part.Humidity;
import org.shortgrain.part.Range;
import org.shortgrain.part.Stated;
import org.shortgrain.reference.StandIns;
import org.shortgrain.reference.ZoneTable;
import org.shortgrain.terms.Citation;

/** Water out of the air at a place: in a closed hollow, and on metal that is colder than dry-rated air lets it be. */
final class CondensationReading {

    private static final double GRAMS = 1e3;

    private final Site site;
    private final StandIns standIns;

    CondensationReading(Site site, StandIns standIns) {
        this.site = site;
        this.standIns = standIns;
    }

    /**
     * {@return what condenses in a closed hollow; empty where its volume is not stated}
     *
     * @param volume  inner volume (m3)
     * @param zone    zone, for the coldest temperature where none is stated
     * @param breathes whether air is changed again and again
     */
    Optional<Found> inside(Optional<Given> volume, Optional<ZoneTable.Zone> zone, boolean breathes) {
        Optional<Given> coldest = coldest(zone);
        if (volume.isEmpty() || coldest.isEmpty()) {
            return Optional.empty();
        }
        CavityCondensation cavity = new CavityCondensation(volume.get(), takenIn(), humidity(), coldest.get());
        String id = site.write(cavity.perCycle());
        String words = String.format(Locale.ROOT, "%.2g g condense in one cooling to %.0f degC, at most %.2g g (%s)",
                cavity.perCycle().value().value() * GRAMS, coldest.get().value().low(),
                cavity.perCycle().value().high() * GRAMS, id);
        if (breathes) {
            var year = cavity.perYear(taken("coolings"));
            String yearId = site.write(year);
            words += String.format(Locale.ROOT, ", %.2g g in a year of daily cycles, at most %.2g g (%s)",
                    year.value().value() * GRAMS, year.value().high() * GRAMS, yearId);
        }
        return Optional.of(new Found(cavity.mayCondense(), words + (cavity.mayFreeze() ? ", as frost first" : "")));
    }

    /**
     * What was found of a closed hollow.
     *
     * @param condenses whether water can condense
     * @param words     how much, for the reasons
     */
    record Found(boolean condenses, String words) {
    }

    /**
     * {@return whether metal stays above the dew point of air that is on record as dry}
     *
     * @param zone     the zone
     * @param relative greatest relative humidity on record, as a share above 0
     */
    Sign onMetal(ZoneTable.Zone zone, double relative) {
        Given air = Given.exact(Math.min(standIns.of("room_air").value(), warmest(zone)),
                "room air, or the warmest stated if that is colder");
        DewPoint dew = new DewPoint(air, Given.exact(relative, "greatest humidity on record"));
        double coldest = coldest(Optional.of(zone)).orElseThrow().value().low();
        String id = site.write(dew.computed());
        double point = dew.computed().value().high();
        String words = String.format(Locale.ROOT, "dew point %.1f degC of air at %.0f degC and %.0f %% (%s), coldest metal"
                + " %.0f degC", point, air.value().value(), relative * 100, id, coldest);
        return coldest >= point ? Sign.dry(words + ": stays above it")
                : Sign.open(words + ": it lies below, so that dew or frost can form; what keeps warm air away is not stated");
    }

    private double warmest(ZoneTable.Zone zone) {
        return site.temperature().map(Range::highest).orElse(zone.maxCelsius());
    }

    private Optional<Given> coldest(Optional<ZoneTable.Zone> zone) {
        Optional<Given> stated = site.temperature().map(range -> Given.exact(range.lowest(), "coldest temperature stated"));
        if (stated.isPresent() || zone.isEmpty()) {
            return stated;
        }
        site.assume(String.format(Locale.ROOT, "no temperature is stated; the coldest of zone %s, %.0f degC, is taken",
                zone.get().word(), zone.get().minCelsius()), zone.get().source());
        return Optional.of(Given.exact(zone.get().minCelsius(), "coldest of zone " + zone.get().word()));
    }

    private Given takenIn() {
        Band usual = band("hollow_air");
        double warmest = site.temperature().map(Range::highest).orElse(usual.high());
        Band air = new Band(Math.min(usual.value(), warmest), Math.min(usual.low(), warmest),
                Math.min(usual.high(), warmest));
        return new Given(air, "air that the hollow takes in, usual and extreme",
                Optional.of(standIns.of("hollow_air_usual").source()));
    }

    private Given taken(String key) {
        return Declared.standIn(standIns.of(key));
    }

    private Band band(String key) {
        return new Band(standIns.of(key + "_usual").value(), standIns.of(key + "_least").value(),
                standIns.of(key + "_most").value());
    }

    private Given humidity() {
        Stated<Humidity> stated = site.description().environment().field(Environment::humidity);
        Optional<Range> relative = stated.single().flatMap(Humidity::relative);
        if (relative.isPresent()) {
            return Given.limits(relative.get().lowest(), relative.get().highest(), stated.at().path());
        }
        if (stated.surely(one -> one.word().filter(Humidity.HumidityWord.DRY::equals).isPresent())) {
            return Given.limits(0, standIns.of("dry_air").value(), stated.at().path());
        }
        Band moist = band("moist_air");
        Citation basis = standIns.of("moist_air_least").source();
        site.assume(String.format(Locale.ROOT, "air of %.0f to %.0f %% humidity is taken into the hollow",
                moist.low() * 100, moist.high() * 100), basis);
        return new Given(moist, "moist air", Optional.of(basis));
    }
}
