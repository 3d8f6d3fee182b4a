package org.shortgrain.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shortgrain.terms.GrainDirection;

/**
 * Tractions and rotations against textbook problems. Units cancel, so the numbers of the problems stand as they are.
 */
class StressTensorTest {

    /**
     * Problems as set: Mase, Continuum Mechanics (Schaum), ch. 2 (answers 44/9, 5.2, 20 deg printed); own arithmetic.
     */
    @Test
    void tractionOfMasesProblem() {
        StressTensor sigma = new StressTensor(7, 5, 4, 0, 0, -2);
        Direction n = Direction.along(2, -2, 1);
        assertTraction(sigma, n, 4, -10.0 / 3, 0);
        assertEquals(44.0 / 9, sigma.normal(n), 1e-12);
        assertEquals(5.2, sigma.traction(n), 0.05, "printed");
        assertEquals(5.206833, sigma.traction(n), 5e-7);
        assertEquals(1.791613, sigma.shear(n), 5e-7);
        double angle = Math.toDegrees(Math.acos(sigma.normal(n) / sigma.traction(n)));
        assertEquals(20, angle, 0.5, "printed");
        assertEquals(20.126, angle, 5e-4);
    }

    /** Two homework problems of continuum mechanics; answers by own arithmetic. */
    @Test
    void tractionsOfTwoHomeworkProblems() {
        StressTensor first = new StressTensor(2, 2, 1, 1, -2, 3);
        Direction n = Direction.along(1, 2, -2);
        assertTraction(first, n, -2.0 / 3, 3, -1);
        assertEquals(22.0 / 9, first.normal(n), 1e-12);
        assertEquals(2.114033, first.shear(n), 5e-7);

        StressTensor second = new StressTensor(1000, -1000, 0, 500, -200, 0);
        Direction m = new Direction(0.1, 0.3, 3 / Math.sqrt(10));
        assertTraction(second, m, 250, -439.73666, -60);
        assertEquals(509.38034, second.traction(m), 5e-6);
        assertEquals(-163.84200, second.normal(m), 5e-6);
        assertEquals(482.31124, second.shear(m), 5e-6);
    }

    private static void assertTraction(StressTensor sigma, Direction n, double x, double y, double z) {
        double halfDigit = 5e-6;
        assertEquals(x, sigma.traction(n, Direction.X), halfDigit);
        assertEquals(y, sigma.traction(n, Direction.Y), halfDigit);
        assertEquals(z, sigma.traction(n, Direction.Z), halfDigit);
    }

    /** Flow lines tilted from Z towards X; own arithmetic. Twenty degrees more than double the stress along ST. */
    @ParameterizedTest
    @CsvSource({"0, 15", "20, 36.33369", "45, 62.5", "90, 60"})
    void flowLineTiltBringsInPlaneStressOntoTheShortTransverse(double degrees, double shortTransverse) {
        StressTensor sigma = new StressTensor(60, 20, 15, 0, 0, 25);
        GrainAxes tilted = GrainAxes.ALONG_PART_AXES.tilted(GrainDirection.LT, Math.toRadians(degrees));
        assertEquals(shortTransverse, sigma.normal(tilted.st()), 5e-6);
        assertEquals(shortTransverse, sigma.in(tilted).zz(), 5e-6);
    }

    @Test
    void principalStressesComeLargestFirst() {
        List<StressTensor.Principal> principal = new StressTensor(60, 20, 15, 0, 0, 25).principal();
        assertEquals(71.13406, principal.get(0).stress(), 5e-6);
        assertEquals(20, principal.get(1).stress(), 5e-6);
        assertEquals(3.86594, principal.get(2).stress(), 5e-6);
    }

    @Property
    void rotationKeepsTheInvariants(@ForAll @Scale(6) @DoubleRange(min = -500, max = 500) double xx,
            @ForAll @Scale(6) @DoubleRange(min = -500, max = 500) double yy,
            @ForAll @Scale(6) @DoubleRange(min = -500, max = 500) double xy,
            @ForAll @Scale(6) @DoubleRange(min = -500, max = 500) double yz,
            @ForAll @Scale(6) @DoubleRange(min = -7, max = 7) double aboutL,
            @ForAll @Scale(6) @DoubleRange(min = -7, max = 7) double aboutSt) {
        StressTensor sigma = new StressTensor(xx, yy, 100, xy, yz, -30);
        GrainAxes grain = GrainAxes.ALONG_PART_AXES.tilted(GrainDirection.L, aboutL).tilted(GrainDirection.ST, aboutSt);
        StressTensor turned = sigma.in(grain);
        double rounding = 1e-9;
        assertEquals(sigma.trace(), turned.trace(), rounding);
        assertEquals(sumOfSquares(sigma), sumOfSquares(turned), rounding * sumOfSquares(sigma));
        assertEquals(sigma.principal().get(0).stress(), turned.principal().get(0).stress(), 1e-6);
    }

    private static double sumOfSquares(StressTensor s) {
        return s.xx() * s.xx() + s.yy() * s.yy() + s.zz() * s.zz()
                + 2 * (s.xy() * s.xy() + s.yz() * s.yz() + s.zx() * s.zx());
    }
}
