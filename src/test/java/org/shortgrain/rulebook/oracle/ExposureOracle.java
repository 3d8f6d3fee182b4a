package org.shortgrain.rulebook.oracle;

import static org.shortgrain.rulebook.oracle.Reading.aluminium;
import static org.shortgrain.rulebook.oracle.Reading.coldest;
import static org.shortgrain.rulebook.oracle.Reading.corrodesBare;
import static org.shortgrain.rulebook.oracle.Reading.fluid;
import static org.shortgrain.rulebook.oracle.Reading.hottest;
import static org.shortgrain.rulebook.oracle.Reading.in;
import static org.shortgrain.rulebook.oracle.Reading.says;
import static org.shortgrain.rulebook.oracle.Reading.surface;
import static org.shortgrain.rulebook.oracle.Reading.titanium;
import static org.shortgrain.rulebook.oracle.Reading.wetness;
import static org.shortgrain.rulebook.oracle.Reading.zones;

import org.shortgrain.part.Environment;
import org.shortgrain.part.Feature;
import org.shortgrain.part.Humidity;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Salt;
import org.shortgrain.part.Sealant;
import org.shortgrain.part.Stated;
import org.shortgrain.part.Surface;

/** Zones, fluids and air. Temperatures in degC: 6 is the dew point of air at 20 degC and 40 % humidity. */
final class ExposureOracle {

    private ExposureOracle() {
    }

    static void addTo(Oracle oracle) {
        oracle.any("EXPOSURE-03", (part, at) -> wetness(zones(part, at)) >= 0 && wetness(zones(part, at)) <= 1
                && !in(zones(part, at), "orbit_vacuum") && coldest(part) < 6);
        oracle.owned("EXPOSURE-04", (part, at) -> in(zones(part, at), "behind_lining") && uninhibited(part, at),
                Reading.made(Surface::cpc));
        oracle.owned("EXPOSURE-05", (part, at) -> in(zones(part, at), "fuselage_bilge") && uninhibited(part, at),
                Reading.made(Surface::cpc));
        oracle.owned("EXPOSURE-06", (part, at) -> in(zones(part, at), "under_galley") && uninhibited(part, at),
                Reading.made(Surface::cpc));
        oracle.any("EXPOSURE-07", (part, at) -> in(zones(part, at), "battery_bay")
                && !fluid(part, "battery_acid", "battery_alkali"));
        oracle.whole("EXPOSURE-08", part -> fluid(part, "battery_alkali") && aluminium(part));
        oracle.owned("EXPOSURE-09", (part, at) -> fluid(part, "battery_acid") && corrodesBare(part)
                && !says(surface(part, at, Surface::topcoat), "acid"),
                Reading.made(Surface::topcoat));
        oracle.owned("EXPOSURE-10", (part, at) -> in(zones(part, at), "exhaust_trail")
                && Reading.sealant(part, at, Sealant::fillet).isNone(),
                (part, at) -> Reading.sealant(part, at, Sealant::fillet));
        oracle.whole("EXPOSURE-15", part -> fluid(part, "hydrazine"));
        oracle.whole("EXPOSURE-16", part -> titanium(part) && fluid(part, "phosphate_ester", "hydraulic_fluid")
                && hottest(part) > 132);
        oracle.whole("EXPOSURE-17", part -> titanium(part) && hottest(part) > 260
                && in(zones(part), "engine_bay_hot", "exhaust_trail"));
        oracle.whole("EXPOSURE-19", part -> aluminium(part) && fluid(part, "mercury", "gallium"));
        oracle.owned("EXPOSURE-21", (part, at) -> in(zones(part, at), "fuel_tank_bottom") && corrodesBare(part)
                && surface(part, at, Surface::primer).isNone(),
                Reading.made(Surface::primer));
        oracle.whole("EXPOSURE-23", part -> wetness(zones(part)) >= 3 && salt(part).is(Salt.NONE_SEALED));
        oracle.whole("EXPOSURE-24", part -> in(zones(part), "deck_carrier", "coastal_base")
                && (salt(part).is(Salt.NONE_SEALED) || salt(part).is(Salt.INLAND)));
        oracle.whole("EXPOSURE-25", part -> wetness(zones(part)) >= 3 && part.environment().field(Environment::humidity)
                .single().flatMap(Humidity::word).filter(Humidity.HumidityWord.DRY::equals).isPresent());
        oracle.whole("EXPOSURE-26", part -> wetness(zones(part)) >= 4
                && part.environment().field(Environment::fluids).isNone());
        oracle.whole("EXPOSURE-27", part -> fluid(part, "cleaning_agent"));
        oracle.any("EXPOSURE-30", (part, at) -> in(zones(part, at), "airframe_interior"));
    }

    private static boolean uninhibited(PartDescription part, Feature at) {
        return !surface(part, at, Surface::cpc).isKnown();
    }

    private static Stated<Salt> salt(PartDescription part) {
        return part.environment().field(Environment::salt);
    }
}
