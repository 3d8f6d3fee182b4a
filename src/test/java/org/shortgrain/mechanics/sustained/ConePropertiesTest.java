package org.shortgrain.mechanics.sustained;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shortgrain.mechanics.Direction;
import org.shortgrain.mechanics.StressTensor;
import org.shortgrain.mechanics.StressTensor.Principal;

/** The closed form of the worst direction against a search, over drawn states of stress and cones. */
class ConePropertiesTest {

    private static final int SEARCH = 60;

    private static Direction within(Cone cone, double tilt, double clock) {
        Direction across = cone.axis().anyNormal();
        Direction turned = across.turnedTowards(cone.axis().normalTo(across), clock);
        return cone.axis().turnedTowards(turned, tilt);
    }

    private static double searched(Cone cone, StressTensor stress) {
        double worst = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= SEARCH; i++) {
            for (int j = 0; j < SEARCH; j++) {
                Direction n = within(cone, cone.halfAngle() * i / SEARCH, 2 * Math.PI * j / SEARCH);
                worst = Math.max(worst, stress.normal(n));
            }
        }
        return worst;
    }

    @Property(tries = 300)
    void theWorstDirectionIsInTheConeAndNoSearchFindsAWorseOne(
            @ForAll @Scale(6) @DoubleRange(min = -1, max = 1) double xx,
            @ForAll @Scale(6) @DoubleRange(min = -1, max = 1) double yy,
            @ForAll @Scale(6) @DoubleRange(min = -1, max = 1) double xy,
            @ForAll @Scale(6) @DoubleRange(min = -1, max = 1) double yz,
            @ForAll @Scale(6) @DoubleRange(min = -1, max = 1) double zx,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 1.57) double halfAngle,
            @ForAll @Scale(6) @DoubleRange(min = -1, max = 1) double lean) {
        StressTensor stress = new StressTensor(xx, yy, 0.2, xy, yz, zx).times(1e8);
        Cone cone = new Cone(Direction.along(lean, 0.3, 1), halfAngle);
        Principal worst = cone.worst(stress);
        double scale = Math.max(1, stress.largestComponent());
        assertTrue(cone.axis().angleTo(worst.direction()) <= halfAngle + 1e-6);
        assertEquals(worst.stress(), stress.normal(worst.direction()), 1e-9 * scale);
        double searched = searched(cone, stress);
        assertTrue(worst.stress() >= searched - 1e-9 * scale, () -> worst.stress() + " < " + searched);
        double coarseness = 3 * square(2 * Math.PI / SEARCH) * scale;
        assertTrue(worst.stress() <= searched + coarseness, () -> worst.stress() + " > " + searched);
    }

    private static double square(double x) {
        return x * x;
    }

    @Property
    void aWiderConeNeverLowersTheWorstStress(@ForAll @Scale(6) @DoubleRange(min = 0, max = 1.5) double halfAngle,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double wider,
            @ForAll @Scale(6) @DoubleRange(min = -100, max = 100) double xx,
            @ForAll @Scale(6) @DoubleRange(min = -100, max = 100) double zx) {
        StressTensor stress = new StressTensor(xx, 20, 15, 0, 0, zx);
        double more = Math.min(Math.PI / 2, halfAngle + wider);
        assertTrue(new Cone(Direction.Z, more).worst(stress).stress()
                >= new Cone(Direction.Z, halfAngle).worst(stress).stress() - 1e-9);
    }

    /**
     * Flow lines in the plane of X and Z: the tilted values 36.33369 at 20 deg and 71.13406 as first principal stress
     * are own arithmetic; in this plane the rim and the tilt are the same.
     */
    @ParameterizedTest
    @CsvSource({"0, 15", "20, 36.33369", "90, 71.13406"})
    void coneOverAStateOfPlaneShear(double degrees, double worst) {
        StressTensor stress = new StressTensor(60, 20, 15, 0, 0, 25);
        assertEquals(worst, new Cone(Direction.Z, Math.toRadians(degrees)).worst(stress).stress(), 5e-6);
    }

    @Test
    void whereNoShearTellsTheWayTheRimIsSearchedInBothPrincipalDirections() {
        StressTensor stress = new StressTensor(60, 20, 15, 0, 0, 0);
        double c = Math.cos(0.3);
        double s = Math.sin(0.3);
        assertEquals(60 * s * s + 15 * c * c, new Cone(Direction.Z, 0.3).worst(stress).stress(), 1e-9);
    }

    @Test
    void equalPrincipalStressesAreReachedAtTheNearestOfTheirDirections() {
        StressTensor stress = StressTensor.alongSurface(Direction.X, 100);
        Cone cone = new Cone(Direction.along(1, 1, 0), Math.toRadians(46));
        assertEquals(100, cone.worst(stress).stress(), 1e-9);
        assertTrue(new Cone(Direction.along(1, 1, 0), Math.toRadians(44)).worst(stress).stress() < 100);
    }
}
