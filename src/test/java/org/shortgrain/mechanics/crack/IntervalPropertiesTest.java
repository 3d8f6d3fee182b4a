package org.shortgrain.mechanics.crack;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.crack.GrowingCrack.Kind;

/**
 * An interval never grows with what makes a crack worse.
 *
 * <p>Each curve is held at the same depths and is straight between them, so the integrand never falls when the stress
 * falls; what is left is the quadrature, 1e-9, and the rounding of the curve, some 1e-13: 1e-7 of the interval covers both.
 */
class IntervalPropertiesTest {

    private static final double MPA = 1e6;
    private static final double ALLOWED = 1 + 1e-7;
    private static final double THICKNESS = 0.02;
    /** Threshold stress of smooth specimens (Pa), amid the stresses that are drawn. */
    private static final double SMOOTH = 60 * MPA;
    private static final InspectionInterval.Practice PRACTICE = new InspectionInterval.Practice(2, 365 * 86_400.0,
            30 * 86_400.0);

    /** A place: stress at the surface and in the core, K_ISCC, plateau, toughness, detectable depth, shape and kind. */
    private record Place(double surface, double core, double kIscc, double lnRate, double toughness, double detectable,
            double aspect, boolean corner) {

        InspectionInterval interval() {
            GrowingCrack crack = new GrowingCrack(corner ? Kind.CORNER : Kind.SURFACE, aspect, THICKNESS,
                    Double.POSITIVE_INFINITY);
            List<GrowthCase.Rise> rise = List.of(new GrowthCase.Rise(0, 0),
                    new GrowthCase.Rise(THICKNESS / 2, (core - surface) * MPA), new GrowthCase.Rise(THICKNESS, 0));
            return new GrowthCase(crack, exact(surface * MPA), rise, exact(kIscc * MPA), exact(Math.exp(lnRate)),
                    exact(toughness * MPA), exact(detectable), Optional.of(exact(SMOOTH))).result().interval(PRACTICE);
        }

        private static Given exact(double value) {
            return Given.exact(value, "drawn");
        }
    }

    @Property(tries = 300)
    void higherStressNeverLengthensAnInterval(@ForAll @DoubleRange(min = 1, max = 300) double surface,
            @ForAll @DoubleRange(min = -200, max = 300) double core,
            @ForAll @DoubleRange(min = 0, max = 200) @Scale(4) double more,
            @ForAll @DoubleRange(min = 4, max = 25) double kIscc, @ForAll @DoubleRange(min = -25, max = -14) double lnRate,
            @ForAll @DoubleRange(min = 0.0003, max = 0.012) @Scale(6) double detectable,
            @ForAll @DoubleRange(min = 0.2, max = 1) double aspect, @ForAll boolean corner) {
        Place place = new Place(surface, core, kIscc, lnRate, 15 + kIscc, detectable, aspect, corner);
        Place worse = new Place(surface + more, core + more, kIscc, lnRate, 15 + kIscc, detectable, aspect, corner);
        assertNotLonger(place, worse);
    }

    @Property(tries = 300)
    void aLowerThresholdNeverLengthensAnInterval(@ForAll @DoubleRange(min = 1, max = 300) double surface,
            @ForAll @DoubleRange(min = -200, max = 300) double core,
            @ForAll @DoubleRange(min = 4, max = 25) @Scale(4) double kIscc,
            @ForAll @DoubleRange(min = 0, max = 3.9) @Scale(4) double less,
            @ForAll @DoubleRange(min = -25, max = -14) double lnRate,
            @ForAll @DoubleRange(min = 0.0003, max = 0.012) @Scale(6) double detectable,
            @ForAll @DoubleRange(min = 0.2, max = 1) double aspect, @ForAll boolean corner) {
        Place place = new Place(surface, core, kIscc, lnRate, 30, detectable, aspect, corner);
        Place worse = new Place(surface, core, kIscc - less, lnRate, 30, detectable, aspect, corner);
        assertNotLonger(place, worse);
    }

    @Property(tries = 300)
    void aLargerDetectableSizeNeverLengthensAnInterval(@ForAll @DoubleRange(min = 1, max = 300) double surface,
            @ForAll @DoubleRange(min = -200, max = 300) double core, @ForAll @DoubleRange(min = 4, max = 25) double kIscc,
            @ForAll @DoubleRange(min = -25, max = -14) double lnRate,
            @ForAll @DoubleRange(min = 0.0003, max = 0.012) @Scale(6) double detectable,
            @ForAll @DoubleRange(min = 0, max = 0.01) @Scale(6) double more,
            @ForAll @DoubleRange(min = 0.2, max = 1) double aspect, @ForAll boolean corner) {
        Place place = new Place(surface, core, kIscc, lnRate, 30, detectable, aspect, corner);
        Place worse = new Place(surface, core, kIscc, lnRate, 30, detectable + more, aspect, corner);
        // A crack that does not grow yet is looked at by the calendar; a larger one may grow.
        assertNotLonger(place, worse);
    }

    private static void assertNotLonger(Place place, Place worse) {
        InspectionInterval before = place.interval();
        InspectionInterval after = worse.interval();
        assertTrue(after.length() <= before.length() * ALLOWED, () -> place + " " + before + ", " + worse + " " + after);
        for (InspectionInterval one : List.of(before, after)) {
            assertTrue(one.length() >= 0 && one.length() <= PRACTICE.cap(), one::toString);
            assertTrue(one.length() > 0 || one.isNotInspectable(), one::toString);
        }
    }
}
