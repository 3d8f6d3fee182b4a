package org.shortgrain.rulebook.oracle;

import static org.shortgrain.rulebook.oracle.Reading.bare;
import static org.shortgrain.rulebook.oracle.Reading.corrodesBare;
import static org.shortgrain.rulebook.oracle.Reading.in;
import static org.shortgrain.rulebook.oracle.Reading.maybeMoist;
import static org.shortgrain.rulebook.oracle.Reading.moist;
import static org.shortgrain.rulebook.oracle.Reading.says;
import static org.shortgrain.rulebook.oracle.Reading.surface;
import static org.shortgrain.rulebook.oracle.Reading.unfinished;
import static org.shortgrain.rulebook.oracle.Reading.wetness;
import static org.shortgrain.rulebook.oracle.Reading.zones;

import org.shortgrain.part.FayingPrimed;
import org.shortgrain.part.Feature;
import org.shortgrain.part.Inspection;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Plating;
import org.shortgrain.part.Stated;
import org.shortgrain.part.Surface;

/** Pretreatment, paint, plating and inhibiting compound. */
final class FinishOracle {

    /** Zones of the generated parts that lie outside. */
    private static final String[] OUTSIDE = {"wing_external", "wheel_well", "exhaust_trail", "deck_carrier",
        "coastal_base"};

    private FinishOracle() {
    }

    static void addTo(Oracle oracle) {
        oracle.owned("COATING-01", (part, at) -> maybeMoist(part, at) && corrodesBare(part) && unfinished(part, at),
                Reading.made(Surface::pretreatment));
        oracle.each("COATING-02", (part, at) -> maybeMoist(part, at) && corrodesBare(part) && bare(part, at)
                && !unfinished(part, at));
        oracle.owned("COATING-04", (part, at) -> pretreatment(part, at).is("anodize"),
                Reading.made(Surface::pretreatment));
        oracle.owned("COATING-07", (part, at) -> wetness(zones(part, at)) >= 3 && corrodesBare(part)
                && primer(part, at).isNone() && !unfinished(part, at) && !conversion(part, at),
                Reading.made(Surface::primer));
        oracle.owned("COATING-08", (part, at) -> moist(part, at) && conversion(part, at) && primer(part, at).isNone(),
                Reading.made(Surface::primer));
        oracle.owned("COATING-09", (part, at) -> in(zones(part, at), OUTSIDE) && corrodesBare(part)
                && primer(part, at).isKnown() && surface(part, at, Surface::topcoat).isNone(),
                Reading.made(Surface::topcoat));
        oracle.owned("COATING-11", (part, at) -> cadmium(part, at)
                && in(zones(part, at), "fuel_tank_bottom", "fuel_tank_ullage", "orbit_vacuum"),
                Reading.made(Surface::plating));
        oracle.owned("COATING-13", (part, at) -> wetness(zones(part, at)) >= 4 && corrodesBare(part)
                && !inhibited(part, at),
                Reading.made(Surface::cpc));
        oracle.owned("COATING-14", (part, at) -> inhibited(part, at)
                && part.inspection().field(Inspection::repeat).isMissing(),
                Reading.made(Surface::cpc));
        oracle.owned("COATING-17", (part, at) -> moist(part, at)
                && (surface(part, at, Surface::fayingSurfacesPrimed).is(FayingPrimed.NO)
                        || surface(part, at, Surface::fayingSurfacesPrimed).is(FayingPrimed.AFTER)),
                Reading.made(Surface::fayingSurfacesPrimed));
        oracle.owned("COATING-18", (part, at) -> wetness(zones(part, at)) >= 4 && says(primer(part, at), "class N"),
                Reading.made(Surface::primer));
        // the film of MIL-A-8625 is one of aluminium; what titanium and magnesium carry under that name is another
        oracle.owned("COATING-20", (part, at) -> Reading.aluminium(part) && maybeMoist(part, at) && says(pretreatment(part, at), "anodi", "8625")
                && !says(pretreatment(part, at), "seal") && primer(part, at).isNone(),
                Reading.made(Surface::pretreatment));
        oracle.owned("EXPOSURE-11", (part, at) -> cadmium(part, at) && Reading.fluid(part, "runway_deicer")
                && surface(part, at, Surface::topcoat).isNone(),
                Reading.made(Surface::plating));
    }

    private static Stated<String> pretreatment(PartDescription part, Feature at) {
        return surface(part, at, Surface::pretreatment);
    }

    private static Stated<String> primer(PartDescription part, Feature at) {
        return surface(part, at, Surface::primer);
    }

    private static boolean conversion(PartDescription part, Feature at) {
        return says(pretreatment(part, at), "5541");
    }

    private static boolean cadmium(PartDescription part, Feature at) {
        return says(surface(part, at, Surface::plating).field(Plating::kind), "cadmium");
    }

    private static boolean inhibited(PartDescription part, Feature at) {
        return surface(part, at, Surface::cpc).isKnown();
    }
}
