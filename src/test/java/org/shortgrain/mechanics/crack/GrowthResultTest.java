package org.shortgrain.mechanics.crack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Given;

/** Numbers of the order of 7075-T651 across the short grain; all of them stand for themselves here. */
class GrowthResultTest {

    private static final double MPA = 1e6;
    private static final double MM = 1e-3;
    private static final double DAY = 86_400;
    private static final InspectionInterval.Practice PRACTICE = new InspectionInterval.Practice(2, 365 * DAY, 30 * DAY);

    private static Given given(double value, double low, double high) {
        return new Given(new Band(value, low, high), "test", Optional.empty());
    }

    private static GrowthResult result(double low, double high, double smooth, double found, GrowthCase.Rise... rise) {
        GrowingCrack crack = new GrowingCrack(GrowingCrack.Kind.SURFACE, 1, 40 * MM, Double.POSITIVE_INFINITY);
        return new GrowthCase(crack, given((low + high) / 2 * MPA, low * MPA, high * MPA), List.of(rise),
                given(7.5 * MPA, 6 * MPA, 9 * MPA), given(1e-8, 1e-9, 1e-7), given(19.8 * MPA, 15.4 * MPA, 19.8 * MPA),
                Given.exact(found * MM, "test"), Optional.of(Given.exact(smooth * MPA, "test"))).result();
    }

    /**
     * Half-circle, shallow: K at the surface is 1.1 times that at the deepest point (the g of Newman and Raju), so the
     * surface governs: a_c = (15.4/(1.1 x 0.66254 x 100))^2/pi = 14.2 mm, less as the section is not deep: the factor at
     * a/t 0.3 is 2 to 4 % higher.
     */
    @Test
    void theCriticalDepthIsWhereTheLeastToughnessIsReachedUnderTheHighestStress() {
        double shallow = Math.pow(15.4 / (1.1 * 0.66254 * 100), 2) / Math.PI / MM;
        double critical = result(60, 100, 200, 1).criticalDepth() / MM;
        assertTrue(critical < shallow && critical > 0.85 * shallow, critical + " against " + shallow);
    }

    @Test
    void theToughnessThatIsNotReachedLeavesTheCrackToGoThroughTheSection() {
        assertEquals(0.8 * 40, result(5, 10, 200, 1).criticalDepth() / MM, 1e-9);
    }

    @Test
    void belowBothThresholdsTheCalendarSetsTheInterval() {
        InspectionInterval interval = result(60, 100, 200, 0.5).interval(PRACTICE);
        assertInstanceOf(InspectionInterval.ByCalendar.class, interval);
        assertTrue(interval.window().isEmpty());
    }

    @Test
    void whereCracksStartWithoutAFlawTheThresholdIntensityHoldsNoneBack() {
        GrowthResult result = result(60, 100, 48, 0.5);
        assertInstanceOf(InspectionInterval.TooFast.class, result.interval(PRACTICE));
        double window = result.interval(PRACTICE).window().orElseThrow();
        assertEquals((result.criticalDepth() - result.found()) / 1e-7, window, 1e-6 * window, "the plateau from the start");
    }

    @Test
    void tensionThatRisesIntoTheCoreMakesTheCriticalCrackSmaller() {
        GrowthCase.Rise surface = new GrowthCase.Rise(0, 0);
        double even = result(60, 100, 48, 1).criticalDepth();
        double rising = result(60, 100, 48, 1, surface, new GrowthCase.Rise(20 * MM, 60 * MPA)).criticalDepth();
        double falling = result(60, 100, 48, 1, surface, new GrowthCase.Rise(20 * MM, -60 * MPA)).criticalDepth();
        assertTrue(rising < even && even < falling, rising + " " + even + " " + falling);
    }

    @Test
    void whatIsComputedCarriesItsInputsCautionsAndCurve() {
        List<Computed> all = result(60, 100, 48, 1.27).computed("eddy current");
        assertEquals(List.of("crack.intensity", "crack.critical-depth", "crack.window"), all.stream().map(Computed::id).toList());
        Computed intensity = all.get(0);
        assertTrue(intensity.validity().inside());
        assertTrue(intensity.notes().stream().anyMatch(one -> one.startsWith("Cracks are known to start at smooth surfaces")));
        assertTrue(intensity.notes().stream().anyMatch(one -> one.startsWith("Corrosion product wedges")));
        assertEquals(60, intensity.profiles().get(0).x().size());
        assertTrue(all.get(2).notes().stream().anyMatch(one -> one.contains("not credited")));
    }

    @Test
    void aCrackThatIsFoundTooDeepIsOutsideOfTheEquationsAndHasNoWindow() {
        List<Computed> all = result(60, 100, 48, 39).computed("visual");
        assertEquals(List.of("crack.intensity", "crack.critical-depth"), all.stream().map(Computed::id).toList());
        assertFalse(all.get(0).validity().inside());
        assertInstanceOf(InspectionInterval.AlreadyCritical.class, result(60, 100, 48, 39).interval(PRACTICE));
    }
}
