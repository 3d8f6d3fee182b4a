package org.shortgrain.mechanics.clampup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shortgrain.mechanics.clampup.Strips.MM;
import static org.shortgrain.mechanics.clampup.Strips.MPA;
import static org.shortgrain.mechanics.clampup.Strips.pulledShut;
import static org.shortgrain.mechanics.clampup.Strips.strip;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Given;

/** Values by own arithmetic from beam theory, met to half of their last digit; 25 mm is narrow for 6.35 mm. */
class PulledShutTest {

    @ParameterizedTest
    @CsvSource({"CANTILEVER, 50, 68.29425", "CANTILEVER, 100, 17.07356", "CANTILEVER, 200, 4.26839",
        "STEP, 100, 34.14713", "SIMPLY_SUPPORTED, 100, 68.29425", "CLAMPED, 100, 136.5885"})
    void stressOfAGapPulledShut(Support support, double span, double expected) {
        assertEquals(expected, pulledShut(strip(support, span, 6.35, 25), 0.25).stress().value().value() / MPA, 5e-5);
    }

    @Test
    void forceThatClosesACantilever() {
        Computed force = pulledShut(strip(Support.CANTILEVER, 100, 6.35, 25), 0.25).closingForce().orElseThrow();
        assertEquals(28.68536, force.value().value(), 5e-6);
    }

    @ParameterizedTest
    @CsvSource({"100, 0.732126", "50, 0.183032"})
    void largestGapAtAPermittedStress(double span, double millimetres) {
        Computed gap = pulledShut(strip(Support.CANTILEVER, span, 6.35, 25), 0.25)
                .largestGap(Given.exact(50 * MPA, "test"));
        assertEquals(millimetres, gap.value().value() / MM, 5e-7);
    }

    @Test
    void theLargestGapGivesBackThePermittedStress() {
        Strip strip = strip(Support.STEP, 80, 4, 40);
        double gap = pulledShut(strip, 0.1).largestGap(Given.exact(50 * MPA, "test")).value().value();
        assertEquals(50, pulledShut(strip, gap / MM).stress().value().value() / MPA, 1e-9);
    }

    /** ASTM G39 (memory): three-point bent beam, H 250, t 1.6, y 5 mm. */
    @Test
    void simplySupportedStripIsTheThreePointBentBeam() {
        assertEquals(55.0656, pulledShut(strip(Support.SIMPLY_SUPPORTED, 250, 1.6, 6), 5).stress().value().value() / MPA,
                5e-5);
    }

    /** 1/(1 - 0.33^2) = 1.12221. */
    @Test
    void aWidePlateIsStifferThanAStrip() {
        double narrow = pulledShut(strip(Support.STEP, 100, 6.35, 25), 0.25).stress().value().value();
        double wide = pulledShut(strip(Support.STEP, 100, 6.35, 40), 0.25).stress().value().value();
        assertEquals(1.12221, wide / narrow, 5e-6);
    }

    @Test
    void aStripOfUnknownWidthIsTakenAsWide() {
        Computed unknown = pulledShut(strip(Support.STEP, 100, 6.35, 0), 0.25).stress();
        Computed wide = pulledShut(strip(Support.STEP, 100, 6.35, 40), 0.25).stress();
        assertEquals(wide.value(), unknown.value());
        assertTrue(unknown.notes().get(0).startsWith("Width not given"));
    }

    @Test
    void preloadThatCannotCloseTheGapCapsTheStressAndSaysSo() {
        Strip strip = strip(Support.CANTILEVER, 100, 6.35, 25);
        Given half = Given.exact(28.68536 / 2, "test");
        PulledShut open = new PulledShut(strip, Given.exact(0.25 * MM, "test"), new Shim.None(), Optional.of(half));
        assertEquals(17.07356 / 2, open.stress().value().value() / MPA, 5e-5);
        assertTrue(open.mayStayOpen());
        assertTrue(open.stress().notes().stream().anyMatch(n -> n.startsWith("The gap may not close")));
    }

    @Test
    void amplePreloadLeavesTheStressOfTheClosedGap() {
        Strip strip = strip(Support.CANTILEVER, 100, 6.35, 25);
        PulledShut closed = new PulledShut(strip, Given.exact(0.25 * MM, "test"), new Shim.None(),
                Optional.of(Given.limits(3000, 5000, "test")));
        assertEquals(pulledShut(strip, 0.25).stress().value(), closed.stress().value());
        assertFalse(closed.mayStayOpen());
    }

    @Test
    void aSolidShimLeavesOnlyWhatItDoesNotFill() {
        Shim shim = new Shim.Solid(Given.limits(0.18 * MM, 0.22 * MM, "test"));
        Band left = shim.left(new Band(0.25 * MM, 0.10 * MM, 0.40 * MM));
        assertEquals(0, left.low(), 0);
        assertEquals(0.05 * MM, left.value(), 1e-12);
        assertEquals(0.22 * MM, left.high(), 1e-12);
    }

    @Test
    void aShimLimitCapsTheGapThatIsPulledShut() {
        Shim shim = new Shim.WhereAbove(Given.exact(0.13 * MM, "test"));
        assertEquals(new Band(0.13 * MM, 0.10 * MM, 0.13 * MM), shim.left(new Band(0.25 * MM, 0.10 * MM, 0.40 * MM)));
    }

    @Test
    void aStockyStripIsOutsideTheRangeAndSaysSo() {
        Computed stocky = pulledShut(strip(Support.CANTILEVER, 50, 6.35, 25), 0.25).stress();
        assertFalse(stocky.validity().inside());
        assertTrue(stocky.validity().statement().contains("stockier"), stocky.validity()::statement);
        assertTrue(pulledShut(strip(Support.CANTILEVER, 100, 6.35, 25), 0.25).stress().validity().inside());
    }

    @Test
    void beyondYieldTheResultIsNoLongerInsideItsRange() {
        assertFalse(pulledShut(strip(Support.CLAMPED, 100, 6.35, 25), 1).stress().validity().inside());
    }

    @Test
    void aNegativeGapIsRefused() {
        assertThrows(IllegalArgumentException.class,
                () -> pulledShut(strip(Support.CANTILEVER, 100, 6.35, 25), -0.1));
    }

    /** ASTM G39 and G38 as remembered; values by own arithmetic. */
    @Test
    void bentSpecimensOfATest() {
        assertEquals(42.51513, BentSpecimen.fourPoint(71.7e9, 1.6 * MM, 5 * MM, 250 * MM, 80 * MM) / MPA, 5e-6);
        assertEquals(55.0656, BentSpecimen.fourPoint(71.7e9, 1.6 * MM, 5 * MM, 250 * MM, 125 * MM) / MPA, 5e-5,
                "with the inner supports together it is the three-point beam");
        assertEquals(0.664373, BentSpecimen.ringClosure(300 * MPA, 71.7e9, 19.05 * MM, 1.52 * MM, 1) / MM, 5e-7);
        assertThrows(IllegalArgumentException.class,
                () -> BentSpecimen.fourPoint(71.7e9, 1.6 * MM, 5 * MM, 250 * MM, 126 * MM));
    }
}
