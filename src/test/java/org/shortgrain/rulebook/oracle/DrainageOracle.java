package org.shortgrain.rulebook.oracle;

import static org.shortgrain.rulebook.oracle.Reading.bare;
import static org.shortgrain.rulebook.oracle.Reading.corrodesBare;
import static org.shortgrain.rulebook.oracle.Reading.fluid;
import static org.shortgrain.rulebook.oracle.Reading.hole;
import static org.shortgrain.rulebook.oracle.Reading.kind;
import static org.shortgrain.rulebook.oracle.Reading.maybeMoist;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.shortgrain.part.Attitude;
import org.shortgrain.part.Attitudes;
import org.shortgrain.part.DrainHole;
import org.shortgrain.part.Drainage;
import org.shortgrain.part.Feature;
import org.shortgrain.part.FeatureKind;
import org.shortgrain.part.Opening;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Range;
import org.shortgrain.part.Sealant;
import org.shortgrain.part.Stated;

/** Where water stands. Sizes in mm: 9.525 is 0.375 in, the least of MIL-STD-1568C 5.2.2.3, less 0.05 for drills. */
final class DrainageOracle {

    private DrainageOracle() {
    }

    static void addTo(Oracle oracle) {
        oracle.each("DRAINAGE-01", (part, at) -> catches(part, at) && !hole(at)
                && !kind(at, FeatureKind.FAYING_SURFACE));
        oracle.each("DRAINAGE-02", (part, at) -> hollow(at, Drainage::holdsWater).is(true) && !catches(part, at));
        oracle.each("DRAINAGE-03", (part, at) -> (opens(at, Opening.UP) || opens(at, Opening.SIDE))
                && (attitude(at, Attitudes::ground).isMissing() || attitude(at, Attitudes::flight).isMissing()));
        oracle.each("DRAINAGE-04", (part, at) -> at.drainage().isKnown() && hollow(at, Drainage::opening).isMissing()
                && hollow(at, Drainage::holdsWater).isMissing());
        oracle.each("DRAINAGE-05", (part, at) -> some(at, drain -> diameter(drain) < 9.475 && !accepted(drain)));
        oracle.each("DRAINAGE-06", (part, at) -> some(at, drain -> diameter(drain) >= 9.475 && diameter(drain) < 9.52
                && !accepted(drain)));
        oracle.each("DRAINAGE-07", (part, at) -> some(at, drain -> drain.atLowestPoint().is(false)));
        oracle.each("DRAINAGE-08", (part, at) -> some(at, drain -> drain.diameter().isMissing()
                || drain.atLowestPoint().isMissing() || drain.pathContinues().isMissing()));
        oracle.each("DRAINAGE-09", (part, at) -> drains(at).size() == 1
                && !opens(at, Opening.DOWN) && !hollow(at, Drainage::filledWith).isKnown()
                && pitch(at, Attitudes::ground) * pitch(at, Attitudes::flight) < 0);
        oracle.each("DRAINAGE-10", (part, at) -> opens(at, Opening.CLOSED) && drains(at).size() == 1
                && hollow(at, Drainage::vented).is(false));
        oracle.each("DRAINAGE-11", (part, at) -> opens(at, Opening.CLOSED) && hollow(at, Drainage::vented).isMissing());
        oracle.each("DRAINAGE-12", (part, at) -> some(at, drain -> drain.pathContinues().is(false)));
        oracle.each("DRAINAGE-14", (part, at) -> !drains(at).isEmpty()
                && (kind(at, FeatureKind.WELD) || kind(at, FeatureKind.WELD_HAZ)));
        oracle.each("DRAINAGE-16", (part, at) -> opens(at, Opening.CLOSED) && hollow(at, Drainage::vented).is(true)
                && hollow(at, Drainage::drainHoles).isNone());
        oracle.each("DRAINAGE-17", (part, at) -> opens(at, Opening.CLOSED) && hollow(at, Drainage::vented).is(false)
                && bare(part, at) && corrodesBare(part));
        oracle.each("DRAINAGE-18", (part, at) -> catches(part, at) && kind(at, FeatureKind.FAYING_SURFACE)
                && !Reading.sealant(part, at, Sealant::fillet).isKnown());
        oracle.each("DRAINAGE-19", (part, at) -> catches(part, at) && hole(at));
        oracle.each("DRAINAGE-20", (part, at) -> some(at, drain -> diameter(drain) < 12.65) && fluid(part, "deicing",
                "hydraulic_fluid", "phosphate_ester", "mineral_hydraulic_fluid"));
        oracle.each("DRAINAGE-21", (part, at) -> !drains(at).isEmpty()
                && fluid(part, "waste", "battery_acid", "battery_alkali"));
        oracle.each("DRAINAGE-22", (part, at) -> !drains(at).isEmpty() && flat(at));
        oracle.each("DRAINAGE-23", (part, at) -> cup(at) && hollow(at, Drainage::holdsWater).is(false));
        oracle.each("DRAINAGE-24", (part, at) -> !drains(at).isEmpty() && bare(part, at) && corrodesBare(part));
    }

    private static <T> Stated<T> hollow(Feature at, Function<Drainage, Stated<T>> key) {
        return at.drainage().field(key);
    }

    private static boolean opens(Feature at, Opening opening) {
        return hollow(at, Drainage::opening).is(opening);
    }

    private static boolean cup(Feature at) {
        return opens(at, Opening.UP) && hollow(at, Drainage::drainHoles).isNone()
                && !hollow(at, Drainage::filledWith).isKnown();
    }

    /** A cup where it may be moist, unless someone says that it stays empty. */
    private static boolean catches(PartDescription part, Feature at) {
        return cup(at) && maybeMoist(part, at) && !hollow(at, Drainage::holdsWater).is(false);
    }

    private static List<DrainHole> drains(Feature at) {
        return hollow(at, Drainage::drainHoles).single().orElse(List.of());
    }

    private static boolean some(Feature at, Predicate<DrainHole> drain) {
        return drains(at).stream().anyMatch(drain);
    }

    private static double diameter(DrainHole drain) {
        return drain.diameter().single().map(range -> range.lowest() * 1000).orElse(Double.NaN);
    }

    private static boolean accepted(DrainHole drain) {
        return drain.waiver().isKnown();
    }

    private static Stated<Attitude> attitude(Feature at, Function<Attitudes, Stated<Attitude>> which) {
        return hollow(at, Drainage::attitude).field(which);
    }

    private static double pitch(Feature at, Function<Attitudes, Stated<Attitude>> which) {
        return attitude(at, which).field(Attitude::pitch).single().map(Range::middle).orElse(Double.NaN);
    }

    private static boolean flat(Feature at) {
        OptionalDouble steepest = Stream.of(attitude(at, Attitudes::ground).field(Attitude::pitch),
                attitude(at, Attitudes::ground).field(Attitude::roll)).mapToDouble(angle -> angle.single()
                        .map(range -> Math.abs(Math.toDegrees(range.middle()))).orElse(Double.POSITIVE_INFINITY)).max();
        return steepest.getAsDouble() < 1;
    }
}
