package org.shortgrain.mechanics.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.shortgrain.mechanics.water.Hollows.ML;
import static org.shortgrain.mechanics.water.Hollows.MM;
import static org.shortgrain.mechanics.water.Hollows.box;
import static org.shortgrain.mechanics.water.Hollows.holeAt;
import static org.shortgrain.mechanics.water.Hollows.tilt;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Water at rest in known shapes. Where nothing else is said the values are own algebra, met to half of their last digit. */
class BasinTest {

    /** Unit cells of the well-known programming exercise on trapped rain water; the answers 6 and 9 are published with it. */
    @ParameterizedTest
    @CsvSource({"'0,1,0,2,1,0,1,3,2,1,2,1', 6", "'4,2,0,3,2,5', 9"})
    void rainTrappedBetweenUnitCells(String heights, double expected) {
        double[] cells = Arrays.stream(heights.split(",")).mapToDouble(Double::parseDouble).toArray();
        List<Floor.Point> points = new ArrayList<>();
        for (int i = 0; i < cells.length; i++) {
            points.add(new Floor.Point(i, cells[i]));
            points.add(new Floor.Point(i + 1, cells[i]));
        }
        Basin basin = new Basin(new Floor(points), 1, OptionalDouble.empty(), true);
        assertEquals(expected, basin.pool(Tilt.LEVEL, List.of()).volume(), 1e-12);
    }

    /** A = h L - L^2 tan(t)/2 while L tan(t) is not above h, beyond it h^2/(2 tan(t)); mm2 for L 200, h 20 mm. */
    @ParameterizedTest
    @CsvSource({"0, 4000", "1, 3650.8987", "3, 2951.8444", "5, 2250.2267", "10, 1134.2564", "20, 549.4955"})
    void aTrayHoldsLessTheMoreItIsTilted(double degrees, double squareMillimetres) {
        double held = box(200, 1, 20).pool(tilt(degrees, 0), List.of()).volume();
        assertEquals(squareMillimetres, held / (MM * MM * MM), 5e-5);
        assertEquals(held, box(200, 1, 20).pool(tilt(-degrees, 0), List.of()).volume(), 1e-18, "either way");
    }

    @Test
    void bothBranchesOfTheTrayMeetWhereTheWaterReachesTheFarCorner() {
        double angle = Math.toDegrees(Math.atan2(20, 200));
        assertEquals(2000, box(200, 1, 20).pool(tilt(angle, 0), List.of()).volume() / (MM * MM * MM), 1e-8);
    }

    /** Drainage values 1 and 2 of the list for a pocket of 200 x 80 mm with a lip of 25 mm and no drain. */
    @ParameterizedTest
    @CsvSource({"0, 400.00", "3, 316.15", "-3, 316.15", "10, 141.78", "-10, 141.78"})
    void aPocketWithoutDrain(double degrees, double millilitres) {
        Pool pool = box(200, 80, 25).pool(tilt(degrees, 0), List.of());
        assertEquals(millilitres, pool.volume() / ML, 5e-3);
        assertEquals(25, pool.depth() / MM, 1e-9, "as deep as the lip at its low end");
    }

    /** Drainage values 3 to 6: residual wedge a tan(t) deep, W a^2 tan(t)/2, behind a hole whose near edge lies at a. */
    @ParameterizedTest
    @CsvSource({"100, 3, 5.241, 20.963", "15, 3, 0.786, 0.472", "15, -3, 9.695, 71.746", "15, 12, 3.188, 1.913"})
    void aWedgeStaysBehindAHoleThatDoesNotLieLowest(double place, double degrees, double millimetres, double millilitres) {
        Pool pool = box(200, 80, 25).pool(tilt(degrees, 0), holeAt(place));
        assertEquals(millimetres, pool.depth() / MM, 5e-4);
        assertEquals(millilitres, pool.volume() / ML, 5e-4);
        assertEquals(degrees > 0 ? 0 : 200, pool.deepest() / MM, 1e-9);
    }

    /** Drainage value 7: a boss of 6 mm round the drain keeps 96.0 mL on a level floor of 200 x 80 mm. */
    @Test
    void aRaisedEdgeRoundTheDrainIsTheNewWaterLevel() {
        Outlet boss = new Outlet(100 * MM, OptionalDouble.of(40 * MM), 9.525 * MM, 6 * MM);
        Pool pool = box(200, 80, 25).pool(Tilt.LEVEL, List.of(boss));
        assertEquals(96.0, pool.volume() / ML, 1e-9);
        assertEquals(6, pool.depth() / MM, 1e-12);
    }

    /** Independent closed form: a box corner cut off by the plane through the lowest point of the rim. */
    @ParameterizedTest
    @CsvSource({"3, 2", "3, -2", "-8, 5", "1, 12", "14, 25", "40, 30", "0.001, 0.002"})
    void aBoxTiltedBothWaysIsACornerCutByAPlane(double pitch, double roll) {
        double l = 0.2;
        double w = 0.08;
        double h = 0.025;
        Tilt tilt = tilt(pitch, roll);
        double tx = Math.abs(tilt.along());
        double ty = Math.abs(tilt.across());
        double cut = (cube(h) - cube(h - tx * l) - cube(h - ty * w) + cube(h - tx * l - ty * w)) / (6 * tx * ty);
        double rounding = 1e-15 / (tx * ty);
        assertEquals(cut, box(200, 80, 25).pool(tilt, List.of()).volume(), 1e-12 + rounding * 1e-3);
    }

    private static double cube(double x) {
        return x <= 0 ? 0 : x * x * x;
    }

    @Test
    void aHoleOfUnknownPlaceAcrossIsTakenOnTheHighSide() {
        Outlet unknown = new Outlet(0, OptionalDouble.empty(), 10 * MM, 0);
        Pool pool = box(200, 80, 25).pool(tilt(0, 5), List.of(unknown));
        assertEquals(70 * Math.tan(Math.toRadians(5)), pool.depth() / MM, 1e-9, "near edge 70 mm from the low side");
        Outlet left = new Outlet(0, OptionalDouble.of(5 * MM), 10 * MM, 0);
        assertEquals(0, box(200, 80, 25).pool(tilt(0, 5), List.of(left)).depth(), 1e-15);
        assertEquals(pool.depth(), box(200, 80, 25).pool(tilt(0, -5), List.of(left)).depth(), 1e-15);
    }

    @Test
    void aDrainInOneOfTwoTroughsDoesNotEmptyTheOther() {
        Floor twoTroughs = new Floor(List.of(point(0, 20), point(0, 0), point(50, 0), point(50, 12), point(60, 12),
                point(60, 0), point(110, 0), point(110, 20)));
        Basin basin = new Basin(twoTroughs, 10 * MM, OptionalDouble.empty(), true);
        assertEquals((50 * 20 + 50 * 20 + 10 * 8) * 10 * 1e-3, basin.pool(Tilt.LEVEL, List.of()).volume() / ML, 1e-9);
        Pool drained = basin.pool(Tilt.LEVEL, holeAt(10));
        assertEquals(50 * 12 * 10 * 1e-3, drained.volume() / ML, 1e-9, "up to the ridge between them");
    }

    private static Floor.Point point(double x, double z) {
        return new Floor.Point(x * MM, z * MM);
    }

    @Test
    void anOpenEndIsAWayOut() {
        Floor channel = new Floor(List.of(point(0, 0), point(200, 0), point(200, 20)));
        Basin basin = new Basin(channel, 30 * MM, OptionalDouble.empty(), true);
        assertEquals(0, basin.pool(tilt(3, 0), List.of()).volume(), 0, "runs off over the low, open end");
        assertEquals(200 * Math.tan(Math.toRadians(3)), basin.pool(tilt(-3, 0), List.of()).depth() / MM, 1e-9,
                "stands at the walled end, up to the open one");
    }

    @Test
    void nothingStandsInAHollowUpsideDown() {
        Pool pool = box(200, 80, 25).pool(tilt(3, 2).inverted(), List.of());
        assertEquals(0, pool.volume(), 0);
        assertEquals(0, pool.depth(), 0);
    }

    @Test
    void aClosedHollowWithoutAHoleHasNoLevel() {
        Basin closed = new Basin(Floor.box(0.2, 0.02), 0.08, OptionalDouble.empty(), false);
        assertThrows(IllegalArgumentException.class, () -> closed.pool(Tilt.LEVEL, List.of()));
    }

    @Test
    void shapesThatCannotBeAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Floor(List.of(point(0, 0), point(-1, 0))));
        assertThrows(IllegalArgumentException.class, () -> new Floor(List.of(point(0, 0), point(0, 5))));
        assertThrows(IllegalArgumentException.class, () -> new Floor.Point(Double.NaN, 0));
        assertThrows(IllegalArgumentException.class, () -> box(200, 0, 25));
        assertThrows(IllegalArgumentException.class,
                () -> new Basin(Floor.box(0.2, 0.02), 0.08, OptionalDouble.of(0.01), true));
    }
}
