package org.shortgrain.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.shortgrain.assessment.HollowReading;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.water.DrainHole;
import org.shortgrain.mechanics.water.Hollow;
import org.shortgrain.mechanics.water.Rest;
import org.shortgrain.mechanics.water.StandingWater;
import org.shortgrain.part.Opening;

/** The search of a drain hole against every place of a grid of 1 mm. */
class DrainSearchPropertiesTest {

    private static final double MM = 1e-3;
    private static final double DRILL = 10;

    private static HollowReading box(int length, int width, double ground, double flight, double roll) {
        Hollow box = new Hollow.Box(given(length), given(width), given(25), false);
        return new HollowReading(Opening.UP, true, Optional.of(box), List.of(rest("on the ground", ground, roll),
                rest("in flight", flight, roll)), true);
    }

    private static Given given(double millimetres) {
        return Given.exact(millimetres * MM, "test");
    }

    private static Rest rest(String name, double pitch, double roll) {
        double across = Math.toRadians(roll);
        return Rest.of(name, Band.exact(Math.toRadians(pitch)), new Band(0, -across, across));
    }

    private static double depth(HollowReading hollow, int fromEnd, Optional<Integer> fromSide) {
        return new StandingWater(hollow.shape().orElseThrow(), hollow.rests(), List.of(hollow.hole(given(fromEnd),
                fromSide.map(DrainSearchPropertiesTest::given), given(DRILL)))).greatestDepth();
    }

    /**
     * Whatever drains at a place of the grid is found, unless the best of the grid drains by less than the tilts make over three
     * steps: a film is missed or won by no more. The least depth is met to the same.
     */
    @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
    void noPlaceOfTheGridIsBetterByMoreThanAFewSteps(@ForAll @IntRange(min = 30, max = 120) int length,
            @ForAll @IntRange(min = 20, max = 60) int width, @ForAll @DoubleRange(min = 0, max = 8) @Scale(6) double ground,
            @ForAll @DoubleRange(min = -8, max = 8) @Scale(6) double flight,
            @ForAll @DoubleRange(min = 0, max = 6) @Scale(6) double roll) {
        HollowReading hollow = box(length, width, ground, flight, roll);
        boolean rolls = hollow.sideways().across() != 0;
        double least = Double.POSITIVE_INFINITY;
        for (int x = 0; x + DRILL <= length; x++) {
            for (int y = 0; y + DRILL <= width && (rolls || y == 0); y++) {
                least = Math.min(least, depth(hollow, x, rolls ? Optional.of(y) : Optional.empty()));
            }
        }
        double steps = 3 * MM * (Math.tan(Math.toRadians(Math.max(ground, Math.abs(flight)))) + Math.tan(Math.toRadians(roll)));
        DrainSearch.Found found = new DrainSearch(hollow, List.of(), DRILL * MM, MM).one();
        if (found.drains()) {
            assertTrue(least <= DrainHole.film());
            assertTrue(found.clear() >= 0 && found.clear() <= 2 * DRILL * MM + 1e-9);
        } else {
            assertEquals(least, found.depth(), steps);
            assertTrue(least > DrainHole.film() - steps);
        }
    }

    /** What a pair leaves is what the computation says of it, and a pair that drains keeps a diameter between its edges. */
    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void aPairIsApartAndLeavesWhatIsSaid(@ForAll @IntRange(min = 60, max = 400) int length,
            @ForAll @IntRange(min = 20, max = 150) int width, @ForAll @DoubleRange(min = 0, max = 8) @Scale(6) double ground,
            @ForAll @DoubleRange(min = -8, max = 8) @Scale(6) double flight,
            @ForAll @DoubleRange(min = 0, max = 6) @Scale(6) double roll) {
        HollowReading hollow = box(length, width, ground, flight, roll);
        Optional<DrainSearch.Found> pair = new DrainSearch(hollow, List.of(), DRILL * MM, MM).two();
        assertTrue(pair.isPresent());
        List<DrainSearch.Spot> spots = pair.get().spots();
        double apart = Math.hypot(spots.get(0).fromEnd() - spots.get(1).fromEnd(),
                spots.get(0).fromSide().orElse(0) - spots.get(1).fromSide().orElse(0));
        assertTrue(apart >= 2 * DRILL * MM - 1e-9, spots.toString());
        double said = new StandingWater(hollow.shape().orElseThrow(), hollow.rests(), spots.stream().map(spot -> hollow.hole(
                Given.exact(spot.fromEnd(), "test"), spot.fromSide().stream().boxed().findFirst()
                        .map(side -> Given.exact(side, "test")), given(DRILL))).toList()).greatestDepth();
        assertEquals(said, pair.get().depth(), 0);
    }
}
