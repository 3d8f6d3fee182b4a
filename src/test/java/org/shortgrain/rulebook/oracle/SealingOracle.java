package org.shortgrain.rulebook.oracle;

import static org.shortgrain.rulebook.oracle.Reading.bare;
import static org.shortgrain.rulebook.oracle.Reading.in;
import static org.shortgrain.rulebook.oracle.Reading.kind;
import static org.shortgrain.rulebook.oracle.Reading.moist;
import static org.shortgrain.rulebook.oracle.Reading.neighbours;
import static org.shortgrain.rulebook.oracle.Reading.says;
import static org.shortgrain.rulebook.oracle.Reading.sealant;
import static org.shortgrain.rulebook.oracle.Reading.wetness;
import static org.shortgrain.rulebook.oracle.Reading.zones;

import java.util.List;
import org.shortgrain.part.Drainage;
import org.shortgrain.part.Fastener;
import org.shortgrain.part.Feature;
import org.shortgrain.part.FeatureKind;
import org.shortgrain.part.Fit;
import org.shortgrain.part.FitKind;
import org.shortgrain.part.Opening;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Sealant;
import org.shortgrain.part.Stated;

/** Joints and sealants. */
final class SealingOracle {

    private SealingOracle() {
    }

    static void addTo(Oracle oracle) {
        oracle.owned("SEALING-01", (part, at) -> moist(part, at) && joined(part, at) && faying(part, at).isNone()
                && !fillet(part, at).isKnown(), SealingOracle::faying);
        oracle.owned("SEALING-02", (part, at) -> wetness(zones(part, at)) >= 3 && joined(part, at)
                && faying(part, at).isNone() && fillet(part, at).isKnown(), SealingOracle::faying);
        oracle.owned("SEALING-03", (part, at) -> moist(part, at) && joined(part, at) && faying(part, at).isMissing(),
                SealingOracle::faying);
        oracle.owned("SEALING-04", (part, at) -> moist(part, at) && wet(part, at).is(false)
                && !fits(at, FitKind.INTERFERENCE_FASTENER), SealingOracle::wet);
        oracle.owned("SEALING-05", (part, at) -> moist(part, at) && !fasteners(at).isEmpty()
                && wet(part, at).isMissing(), SealingOracle::wet);
        oracle.each("SEALING-06", (part, at) -> fits(at, FitKind.INTERFERENCE_FASTENER, FitKind.CLOSE_FIT_BOLT)
                && fasteners(at).stream().anyMatch(fastener -> fastener.lubrication().isNone()));
        oracle.owned("SEALING-08", (part, at) -> in(zones(part, at), "fuel_tank_bottom", "fuel_tank_ullage")
                && names(part, at, "81733"), SealingOracle::faying);
        oracle.owned("SEALING-09", (part, at) -> names(part, at, "class A"), SealingOracle::faying);
        oracle.each("SEALING-13", (part, at) -> kind(at, FeatureKind.FAYING_SURFACE) && bare(part, at)
                && (faying(part, at).isKnown() || fillet(part, at).isKnown()));
        oracle.each("SEALING-18", (part, at) -> at.drainage().field(Drainage::opening).is(Opening.CLOSED)
                && fillet(part, at).isKnown() && faying(part, at).isNone());
        oracle.owned("SEALING-19", (part, at) -> names(part, at, "acetoxy", "acetic", "vinegar"),
                SealingOracle::faying);
        oracle.each("SEALING-20", (part, at) -> moist(part, at) && at.fit().field(Fit::sealedEnds).is(false)
                && fits(at, FitKind.PRESS_BUSHING, FitKind.SHRINK_BUSHING, FitKind.EXPANDED_BUSHING, FitKind.PRESS_PIN,
                        FitKind.TAPER_PIN, FitKind.INTERFERENCE_FASTENER));
    }

    private static Stated<String> faying(PartDescription part, Feature at) {
        return sealant(part, at, Sealant::faying);
    }

    private static Stated<String> fillet(PartDescription part, Feature at) {
        return sealant(part, at, Sealant::fillet);
    }

    private static boolean names(PartDescription part, Feature at, String... words) {
        return says(faying(part, at), words) || says(fillet(part, at), words);
    }

    private static List<Fastener> fasteners(Feature at) {
        return at.fasteners().single().orElse(List.of());
    }

    /** A face to be joined, a fastener or a neighbour. */
    private static boolean joined(PartDescription part, Feature at) {
        return kind(at, FeatureKind.FAYING_SURFACE) || !fasteners(at).isEmpty() || !neighbours(part, at).isEmpty();
    }

    /** What is stated of the fastener here, else of the sealing here, else of the part. */
    private static Stated<Boolean> wet(PartDescription part, Feature at) {
        return fasteners(at).stream().map(Fastener::installedWet).filter(one -> !(one instanceof Stated.Absent))
                .findFirst().orElseGet(() -> sealant(part, at, Sealant::fastenersWet));
    }

    private static boolean fits(Feature at, FitKind... kinds) {
        return at.fit().field(Fit::kind).single().filter(List.of(kinds)::contains).isPresent();
    }
}
