package org.shortgrain.mechanics.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shortgrain.mechanics.water.Hollows.ML;
import static org.shortgrain.mechanics.water.Hollows.MM;
import static org.shortgrain.mechanics.water.Hollows.given;
import static org.shortgrain.mechanics.water.Hollows.rest;
import static org.shortgrain.mechanics.water.Hollows.tilt;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.water.Hole.FromEnd.End;

/** The worst of several attitudes, tolerances, and what is reported. Pocket of 200 x 80 mm with a lip of 25 mm. */
class StandingWaterTest {

    private static final Hollow POCKET = new Hollow.Box(given(200), given(80), given(25), false);
    private static final List<Rest> GROUND_AND_FLIGHT = List.of(rest("on the ground", 3, 0), rest("in flight", -4, 0));

    private static Hole hole(double near) {
        return new Hole.FromEnd(End.REAR, given(near), given(10));
    }

    @Test
    void theWorstAttitudeCounts() {
        StandingWater water = new StandingWater(POCKET, GROUND_AND_FLIGHT, List.of(hole(15)));
        assertEquals("in flight", water.worst().name());
        double far = 200 - 15 - 10;
        assertEquals(far * Math.tan(Math.toRadians(4)), water.depth().value().value() / MM, 1e-9);
        assertEquals(15 * Math.tan(Math.toRadians(3)), water.depth().steps().get(0).value().value() / MM, 1e-9);
    }

    @Test
    void aSecondHoleAtTheOtherEndEmptiesBothAttitudes() {
        Hole front = new Hole.FromEnd(End.FRONT, given(15), given(10));
        StandingWater water = new StandingWater(POCKET, GROUND_AND_FLIGHT, List.of(hole(15), front));
        assertEquals(15 * Math.tan(Math.toRadians(4)), water.depth().value().value() / MM, 1e-9);
    }

    @Test
    void aHoleAtTheLowestPointOnTheGroundIsAtTheHighEndWhenThePartTipsOver() {
        Hole lowest = new Hole.Lowest(tilt(3, 0), tilt(3, 0));
        StandingWater water = new StandingWater(POCKET, GROUND_AND_FLIGHT, List.of(lowest));
        assertEquals(0, water.depth().steps().get(0).value().value(), 0, "on the ground");
        assertEquals(200 * Math.tan(Math.toRadians(4)), water.depth().value().value() / MM, 1e-9);
    }

    @Test
    void aHollowThatCatchesWaterIsNamedOtherwiseThanOneThatKeepsSome() {
        assertEquals("water.trapped-depth", new StandingWater(POCKET, GROUND_AND_FLIGHT, List.of()).depth().id());
        assertEquals("water.standing-volume", new StandingWater(POCKET, GROUND_AND_FLIGHT, List.of(hole(15))).volume().id());
    }

    @Test
    void anAttitudeThatIsNotDeclaredIsTakenAtItsWorst() {
        Computed caught = new StandingWater(POCKET, List.of(Rest.any()), List.of()).volume();
        assertEquals(400, caught.value().value() / ML, 1e-9, "level: brimful");
        assertEquals("Worst in any attitude.", caught.notes().get(0));
        Computed drained = new StandingWater(POCKET, List.of(Rest.any()), List.of(hole(0))).depth();
        assertTrue(drained.value().value() > 20 * MM, "a hole does not drain every attitude");
    }

    @Test
    void whatOpensDownKeepsNothingUnlessThePartIsTurnedOver() {
        Hollow down = new Hollow.Box(given(200), given(80), given(25), true);
        assertEquals(0, new StandingWater(down, GROUND_AND_FLIGHT, List.of()).volume().value().high(), 0);
        Computed turned = new StandingWater(down, List.of(rest("parked", 0, 180)), List.of()).volume();
        assertEquals(400, turned.value().value() / ML, 1e-9);
    }

    @Test
    void whatOpensSidewaysKeepsAWedgeAtItsBack() {
        Hollow side = new Hollow.OnItsSide(given(200), given(80), given(25));
        Computed volume = new StandingWater(side, List.of(rest("on the ground", 3, 0)), List.of()).volume();
        assertEquals(200 * 25 * 25 * Math.tan(Math.toRadians(3)) / 2 * 1e-3, volume.value().value() / ML, 1e-9);
        assertEquals(0, new StandingWater(side, List.of(rest("level", 0, 0)), List.of()).volume().value().high(), 0);
    }

    @Test
    void aClosedHollowWithoutAHoleKeepsAllThatItCanHold() {
        Hollow closed = new Hollow.Closed(given(200), given(80), given(25));
        assertEquals(400, new StandingWater(closed, GROUND_AND_FLIGHT, List.of()).volume().value().value() / ML, 1e-9);
        StandingWater drained = new StandingWater(closed, GROUND_AND_FLIGHT, List.of(hole(15)));
        double far = 175 * MM;
        assertEquals(80 * MM * far * far * Math.tan(Math.toRadians(4)) / 2, drained.volume().value().value(), 1e-15);
    }

    @Test
    void aProfileKeepsWhatLiesBelowItsEnds() {
        Floor dish = new Floor(List.of(new Floor.Point(0, 10 * MM), new Floor.Point(50 * MM, 0), new Floor.Point(100 * MM, 10 * MM)));
        Hollow hollow = new Hollow.Profiled(dish, given(40), Optional.empty(), false);
        Computed level = new StandingWater(hollow, List.of(rest("level", 0, 0)), List.of()).volume();
        assertEquals(100 * 10 / 2.0 * 40 * 1e-3, level.value().value() / ML, 1e-9);
    }

    @Test
    void noSizeWithinTheTolerancesLeavesTheBand() {
        Hollow ranged = new Hollow.Box(Given.limits(0.19, 0.21, "test"), given(80), Given.limits(0.02, 0.03, "test"), false);
        Hole rangedHole = new Hole.FromEnd(End.REAR, Given.limits(0.01, 0.05, "test"), given(10));
        Band band = new StandingWater(ranged, GROUND_AND_FLIGHT, List.of(rangedHole)).depth().value();
        for (double near = 10; near <= 50; near += 2.5) {
            Hollow exact = new Hollow.Box(given(195), given(80), given(25), false);
            double depth = new StandingWater(exact, GROUND_AND_FLIGHT, List.of(hole(near))).depth().value().value();
            assertTrue(depth <= band.high() + 1e-12, near + ": " + depth + " in " + band);
        }
    }

    @Test
    void anAttitudeWithARangeIsTakenAtItsWorstEnd() {
        Rest ranged = Rest.of("on the ground", new Band(Math.toRadians(2), Math.toRadians(-1), Math.toRadians(5)),
                Band.exact(0));
        Computed depth = new StandingWater(POCKET, List.of(ranged), List.of(hole(100))).depth();
        assertEquals(100 * Math.tan(Math.toRadians(5)), depth.value().value() / MM, 1e-9);
        Computed caught = new StandingWater(POCKET, List.of(ranged), List.of()).volume();
        assertEquals(400, caught.value().value() / ML, 1e-9, "the range passes through level");
    }

    @Test
    void manyHolesWithTolerancesAreTakenAtTheirBestPlacesAndThatIsSaid() {
        Hole ranged = new Hole.FromEnd(End.REAR, Given.limits(0.01, 0.02, "test"), given(10));
        List<Hole> many = java.util.Collections.nCopies(20, ranged);
        Computed depth = new StandingWater(POCKET, GROUND_AND_FLIGHT, many).depth();
        assertTrue(depth.notes().stream().anyMatch(note -> note.startsWith("Too many dimensions")));
        assertEquals(new StandingWater(POCKET, GROUND_AND_FLIGHT, List.of(hole(15))).depth().value(), depth.value());
    }

    /** Own algebra: b tan(5 deg) behind a hole whose near edge lies b = 15 mm from the low side, and 80 - 15 - 10 = 55 mm from it
     * when the other side is low. */
    @Test
    void aHolePlacedAcrossLeavesWhatLiesBetweenItAndTheLowSide() {
        Hole hole = new Hole.FromEnd(End.REAR, given(0), Optional.of(new Hole.FromEnd.FromSide(true, given(15))), given(10));
        assertEquals(15 * Math.tan(Math.toRadians(5)), across(hole, 5), 1e-9);
        assertEquals(55 * Math.tan(Math.toRadians(5)), across(hole, -5), 1e-9);
        Hole other = new Hole.FromEnd(End.REAR, given(0), Optional.of(new Hole.FromEnd.FromSide(false, given(15))), given(10));
        assertEquals(across(hole, 5), across(other, -5), 1e-9);
    }

    private static double across(Hole hole, double roll) {
        StandingWater water = new StandingWater(POCKET, List.of(rest("rolled", 0, roll)), List.of(hole));
        assertEquals(water.depth().value().high(), water.greatestDepth(), 0);
        return water.greatestDepth() / MM;
    }
}
