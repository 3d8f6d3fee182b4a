package org.shortgrain.mechanics.clampup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.shortgrain.mechanics.clampup.Strips.MM;
import static org.shortgrain.mechanics.clampup.Strips.MPA;
import static org.shortgrain.mechanics.clampup.Strips.strip;

import org.junit.jupiter.api.Test;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Given;

class SharedGapTest {

    private static final SharedGap SHARED = new SharedGap(strip(Support.CANTILEVER, 80, 4, 20),
            strip(Support.CANTILEVER, 80, 8, 20), Given.exact(0.5 * MM, "test"));

    /**
     * Own arithmetic: stiffness goes as the cube of the thickness, so the strip half as thick takes eight ninths.
     * (Width 20 mm instead of the usual 25 mm keeps both strips narrow; it cancels in gap and stress.)
     */
    @Test
    void theThinnerStripTakesMostOfTheGapAndTheStressFollows() {
        assertEquals(0.444444, 0.5 * SHARED.shareOfFirst(), 5e-7);
        assertEquals(0.055556, 0.5 * (1 - SHARED.shareOfFirst()), 5e-7);
        assertEquals(29.875, SHARED.stress().value().value() / MPA, 5e-4);
        assertEquals(7.46875, SHARED.stressInSecond().value().value() / MPA, 5e-6);
    }

    @Test
    void stiffnessAndForceAtAWidthOf25Millimetres() {
        double widerBy = 25.0 / 20;
        assertEquals(56.015625, widerBy * stiffness(SHARED.first()), 5e-6);
        assertEquals(448.125, widerBy * stiffness(SHARED.second()), 5e-4);
        assertEquals(24.89583, widerBy * SHARED.force().value(), 5e-6);
    }

    private static double stiffness(Strip strip) {
        return strip.stiffness().map(Band::value).orElseThrow() * MM;
    }

    /** The stress above is that of a gap of 0.5 mm, so its gap is 0.5 mm. */
    @Test
    void theLargestGapIsTheOneThatGivesThePermittedStress() {
        assertEquals(0.5 * MM, SHARED.largestGap(Given.exact(SHARED.stress().value().value(), "test")).value().value(),
                1e-12);
    }

    @Test
    void bothStripsCarryTheSameForce() {
        double second = SHARED.second().stiffness().orElseThrow().value() * 0.5 * MM * (1 - SHARED.shareOfFirst());
        assertEquals(SHARED.force().value(), second, 1e-9);
    }

    @Test
    void stripsWithoutAWidthAreRefused() {
        Strip unknown = strip(Support.CANTILEVER, 80, 4, 0);
        assertThrows(IllegalArgumentException.class,
                () -> new SharedGap(unknown, SHARED.second(), Given.exact(0.5 * MM, "test")));
    }
}
