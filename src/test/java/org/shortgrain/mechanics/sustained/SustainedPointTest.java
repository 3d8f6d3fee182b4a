package org.shortgrain.mechanics.sustained;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shortgrain.mechanics.sustained.Points.MPA;
import static org.shortgrain.mechanics.sustained.Points.mpa;
import static org.shortgrain.mechanics.sustained.Points.point;
import static org.shortgrain.mechanics.sustained.Points.shortTransverse;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Computed.Validity;
import org.shortgrain.mechanics.Direction;
import org.shortgrain.mechanics.GrainAxes;
import org.shortgrain.mechanics.StressTensor;
import org.shortgrain.mechanics.uncertainty.Distribution.Shape;
import org.shortgrain.terms.GrainDirection;

class SustainedPointTest {

    private static final Contribution RESIDUAL = shortTransverse("quench residual after machining", 70, 40, 100);
    private static final Contribution STANDING = shortTransverse("one g on the ground", 20, 20, 20);
    private static final Contribution GUST = shortTransverse("gust", 120, 0, 200).as(Standing.SHORT_LIVED);

    @Test
    void lastingContributionsAddAndShortLivedOnesAreListedButNotCounted() {
        Computed stress = point(0, RESIDUAL, STANDING, GUST).stress(GrainDirection.ST);
        assertEquals(new Band(90 * MPA, 60 * MPA, 120 * MPA), stress.value());
        assertEquals(List.of("Left out (short-lived): gust, 120.0 MPa along ST (0.0 to 200.0)."), stress.notes());
        assertEquals(2, stress.inputs().size());
    }

    @Test
    void aStressAcrossTheGrainDirectionDoesNotPullAlongIt() {
        Computed along = point(0, RESIDUAL).stress(GrainDirection.L);
        assertEquals(Band.exact(0), along.value());
    }

    @Test
    void theLargestContributionComesFirst() {
        assertEquals(List.of("quench residual after machining", "one g on the ground"),
                point(0, STANDING, RESIDUAL).parts(GrainDirection.ST).stream().map(SustainedPoint.Part::source).toList());
    }

    @Test
    void tensorsAddBeforeTheyAreTurned() {
        Contribution shear = Contribution.stated("pull-down", new StressTensor(0, 0, 0, 0, 0, 1), mpa(25), Shape.RECTANGULAR);
        Contribution hoop = Contribution.stated("fit", new StressTensor(60, 20, 15, 0, 0, 0).times(1.0 / 60), mpa(60),
                Shape.TRIANGULAR);
        GrainAxes tilted = GrainAxes.ALONG_PART_AXES.tilted(GrainDirection.LT, Math.toRadians(20));
        Computed stress = new SustainedPoint(tilted, 0, List.of(shear, hoop)).stress(GrainDirection.ST);
        assertEquals(36.33369, stress.value().value() / MPA, 5e-6, "own arithmetic: 20 deg of tilt more than double ST");
    }

    @Test
    void anUncertainGrainDirectionWidensTheRangeButNotTheValue() {
        Contribution plane = Contribution.stated("rolled plate, along the surface",
                StressTensor.alongSurface(Direction.Z, 1), mpa(100), Shape.RECTANGULAR);
        Computed stress = point(Math.toRadians(20), plane).stress(GrainDirection.ST);
        double sine = Math.sin(Math.toRadians(20));
        assertEquals(0, stress.value().value(), 1e-6);
        assertEquals(0, stress.value().low(), 1e-6);
        assertEquals(100 * sine * sine, stress.value().high() / MPA, 1e-9);
    }

    @Test
    void aContributionOutsideTheRangeOfItsMethodIsNamed() {
        Contribution outside = new Contribution("fit", Standing.SUSTAINED, Contribution.along(Direction.Z), mpa(50),
                Shape.TRIANGULAR, new Validity(false, "The outer part yields."));
        Computed stress = point(0, RESIDUAL, outside).stress(GrainDirection.ST);
        assertFalse(stress.validity().inside());
        assertTrue(stress.validity().statement().contains("fit: The outer part yields."));
        assertTrue(point(0, RESIDUAL, outside.as(Standing.SHORT_LIVED)).stress(GrainDirection.ST).validity().inside());
    }

    @Test
    void aMeasuredResidualReplacesTheComputedOneAndBothAreShown() {
        Contribution measured = shortTransverse("residual, hole drilling", 55, 45, 65);
        List<Contribution> residual = new MeasuredResidual(measured, List.of(RESIDUAL)).contributions();
        Computed stress = new SustainedPoint(GrainAxes.ALONG_PART_AXES, 0, residual).stress(GrainDirection.ST);
        assertEquals(new Band(55 * MPA, 45 * MPA, 65 * MPA), stress.value());
        assertTrue(stress.notes().get(0).startsWith(
                "Left out (replaced by the measured stress): quench residual after machining, 70.0 MPa along ST"));
    }

    @Property
    void theBandHoldsTheValueAndEveryCombinationInside(@ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double first,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double second,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double tilt,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 6.3) double clock) {
        double cone = Math.toRadians(25);
        Contribution a = Contribution.stated("a", new StressTensor(1, 0.2, 0.3, 0.1, 0, 0.4), mpa(50, -20, 90),
                Shape.RECTANGULAR);
        Contribution b = Contribution.stated("b", new StressTensor(-1, 0.5, 0.1, 0, -0.6, 0), mpa(30, 10, 70),
                Shape.RECTANGULAR);
        Band band = point(cone, a, b).stress(GrainDirection.ST).value();
        Direction across = Direction.Z.anyNormal();
        Direction n = Direction.Z.turnedTowards(across.turnedTowards(Direction.Z.normalTo(across), clock), tilt * cone);
        double inside = a.shape().times((-20 + 110 * first) * MPA).plus(b.shape().times((10 + 60 * second) * MPA)).normal(n);
        assertTrue(band.low() - 1e-3 <= inside && inside <= band.high() + 1e-3, () -> inside + " outside " + band);
    }
}
