package org.shortgrain.mechanics.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shortgrain.mechanics.fit.Fits.MM;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Direction;
import org.shortgrain.mechanics.GrainAxes;
import org.shortgrain.mechanics.StressTensor;
import org.shortgrain.terms.GrainDirection;

class HoopDirectionTest {

    private static final GrainAxes GRAIN = GrainAxes.ALONG_PART_AXES;

    @Test
    void theFullHoopActsAlongShortTransverseWhereTheTangentIsShortTransverse() {
        HoopDirection hoop = new HoopDirection(Direction.Y, GRAIN);
        assertEquals(1, hoop.share(GrainDirection.ST), 1e-15);
        Direction clock = hoop.clockPosition(GrainDirection.ST).orElseThrow();
        assertEquals(0, clock.angleTo(Direction.X), 1e-12, "bore along LT: the L side of the bore is loaded along ST");
    }

    @Test
    void aBoreAlongShortTransverseIsLoadedAcrossItOnly() {
        HoopDirection hoop = new HoopDirection(Direction.Z, GRAIN);
        assertEquals(0, hoop.share(GrainDirection.ST), 1e-15);
        assertTrue(hoop.clockPosition(GrainDirection.ST).isEmpty());
        assertEquals(1, hoop.share(GrainDirection.L), 1e-15);
        assertEquals(1, hoop.share(GrainDirection.LT), 1e-15);
    }

    @Test
    void theResolvedStressKeepsTheBandOfTheFit() {
        Computed bore = new FitStress(Fits.bushInLug(Fits.interference(0.01 * MM, 0.04 * MM))).boreHoop();
        Computed along = new HoopDirection(Direction.along(0, 1, 1), GRAIN).resolve(bore, GrainDirection.ST);
        assertEquals(bore.value().high() / 2, along.value().high(), 1e-6 * bore.value().high());
        assertEquals(bore.validity(), along.validity());
    }

    /** No other clock position loads the grain direction more than the one named: searched round the bore. */
    @Property
    void noOtherClockPositionLoadsTheGrainDirectionMore(@ForAll @Scale(6) @DoubleRange(min = -1, max = 1) double x,
            @ForAll @Scale(6) @DoubleRange(min = -1, max = 1) double y,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 6.3) double clock) {
        Direction bore = Direction.along(x, y, 0.5);
        HoopDirection hoop = new HoopDirection(bore, GRAIN);
        Direction start = bore.anyNormal();
        Direction radius = start.turnedTowards(bore.normalTo(start), clock);
        StressTensor there = hoop.at(radius, -0.6);
        assertTrue(there.normal(GRAIN.st()) <= hoop.share(GrainDirection.ST) + 1e-12);
        hoop.clockPosition(GrainDirection.ST).ifPresent(worst -> assertEquals(hoop.share(GrainDirection.ST),
                hoop.at(worst, -0.6).normal(GRAIN.st()), 1e-12));
    }
}
