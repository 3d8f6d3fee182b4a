package org.shortgrain.mechanics.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shortgrain.mechanics.water.Hollows.MM;
import static org.shortgrain.mechanics.water.Hollows.box;
import static org.shortgrain.mechanics.water.Hollows.holeAt;
import static org.shortgrain.mechanics.water.Hollows.tilt;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** What must hold for every hollow, over drawn floors and attitudes. */
class BasinPropertiesTest {

    private static final double WIDTH = 60 * MM;
    /** Rounding of sums of a few hundred terms of at most a few hundred millilitres (m3). */
    private static final double ROUNDING = 1e-15;

    @Provide
    Arbitrary<Floor> floors() {
        Arbitrary<Double> step = Arbitraries.doubles().between(0, 40).ofScale(1);
        Arbitrary<Double> height = Arbitraries.doubles().between(0, 25).ofScale(1);
        Arbitrary<Floor.Point> point = Combinators.combine(step, height).as((x, z) -> new Floor.Point(x * MM, z * MM));
        return point.list().ofMinSize(3).ofMaxSize(9).map(BasinPropertiesTest::joined);
    }

    private static Floor joined(List<Floor.Point> steps) {
        List<Floor.Point> points = new ArrayList<>(List.of(new Floor.Point(0, 10 * MM)));
        double x = 10 * MM;
        for (Floor.Point step : steps) {
            points.add(new Floor.Point(x, step.z()));
            x += step.x();
        }
        return new Floor(points);
    }

    private static Basin basin(Floor floor) {
        return new Basin(floor, WIDTH, OptionalDouble.empty(), true);
    }

    private static Floor mirrored(Floor floor) {
        List<Floor.Point> points = new ArrayList<>();
        floor.points().forEach(point -> points.add(new Floor.Point(floor.front() - point.x(), point.z())));
        Collections.reverse(points);
        return new Floor(points);
    }

    @Property
    void aMirroredHollowHoldsTheSame(@ForAll("floors") Floor floor,
            @ForAll @Scale(2) @DoubleRange(min = -40, max = 40) double pitch,
            @ForAll @Scale(2) @DoubleRange(min = -40, max = 40) double roll,
            @ForAll @Scale(3) @DoubleRange(min = 0, max = 1) double place,
            @ForAll @Scale(3) @DoubleRange(min = 0, max = 1) double side) {
        double x = place * floor.front();
        Outlet hole = new Outlet(x, OptionalDouble.of(side * WIDTH), 5 * MM, 0);
        Outlet lengthwise = new Outlet(floor.front() - x, hole.across(), 5 * MM, 0);
        Outlet sideways = new Outlet(x, OptionalDouble.of(WIDTH - side * WIDTH), 5 * MM, 0);
        double held = basin(floor).pool(tilt(pitch, roll), List.of(hole)).volume();
        assertEquals(held, basin(mirrored(floor)).pool(tilt(-pitch, roll), List.of(lengthwise)).volume(), ROUNDING);
        assertEquals(held, basin(floor).pool(tilt(pitch, -roll), List.of(sideways)).volume(), ROUNDING);
    }

    @Property
    void aHoleNeverAddsWater(@ForAll("floors") Floor floor,
            @ForAll @Scale(2) @DoubleRange(min = -40, max = 40) double pitch,
            @ForAll @Scale(2) @DoubleRange(min = -40, max = 40) double roll,
            @ForAll @Scale(3) @DoubleRange(min = 0, max = 1) double place) {
        Pool without = basin(floor).pool(tilt(pitch, roll), List.of());
        Pool with = basin(floor).pool(tilt(pitch, roll),
                List.of(new Outlet(place * floor.front(), OptionalDouble.empty(), 8 * MM, 0)));
        assertTrue(with.volume() <= without.volume() + ROUNDING);
        assertTrue(with.depth() <= without.depth() + ROUNDING);
    }

    @Property
    void aHoleAtTheLowestPointOfATroughEmptiesIt(@ForAll @Scale(3) @DoubleRange(min = 5, max = 60) double fall,
            @ForAll @Scale(2) @DoubleRange(min = -4, max = 4) double pitch) {
        Floor trough = new Floor(List.of(new Floor.Point(0, 0.1), new Floor.Point(0.1, 0), new Floor.Point(0.2, fall * MM)));
        Outlet lowest = Outlet.point(trough.lowestAt(tilt(pitch, 0).along()), 0);
        assertEquals(0, basin(trough).pool(tilt(pitch, 0), List.of(lowest)).volume(), 0);
    }

    @Property
    void moreTiltNeverFillsAnUndrainedBox(@ForAll @Scale(2) @DoubleRange(min = 0, max = 80) double pitch,
            @ForAll @Scale(2) @DoubleRange(min = 0, max = 80) double roll,
            @ForAll @Scale(2) @DoubleRange(min = 0, max = 5) double more) {
        Basin box = box(200, 60, 25);
        double held = box.pool(tilt(pitch, roll), List.of()).volume();
        assertTrue(box.pool(tilt(pitch + more, roll), List.of()).volume() <= held + ROUNDING);
        assertTrue(box.pool(tilt(pitch, roll + more), List.of()).volume() <= held + ROUNDING);
    }

    @Property
    void moreTiltNeverShrinksTheWedgeBehindAHoleBelowTheRim(@ForAll @Scale(2) @DoubleRange(min = 0, max = 100) double place,
            @ForAll @Scale(2) @DoubleRange(min = 0, max = 10) double pitch,
            @ForAll @Scale(2) @DoubleRange(min = 0, max = 3) double more) {
        Basin box = box(200, 60, 25);
        Pool less = box.pool(tilt(pitch, 0), holeAt(place));
        Pool greater = box.pool(tilt(pitch + more, 0), holeAt(place));
        assertTrue(greater.volume() >= less.volume() - ROUNDING, "100 mm x tan(13 deg) stays below 25 mm");
        assertTrue(greater.depth() >= less.depth() - ROUNDING);
    }
}
