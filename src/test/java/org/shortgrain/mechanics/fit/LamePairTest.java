package org.shortgrain.mechanics.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.shortgrain.mechanics.fit.Fits.GPA;
import static org.shortgrain.mechanics.fit.Fits.MM;
import static org.shortgrain.mechanics.fit.Fits.MPA;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The Lam&eacute; equations against printed worked examples and against values worked out by hand for them.
 *
 * <p>Two kinds of tolerance: a number of n printed digits is met to half of its last digit; a value recomputed in
 * double precision is met to 1e-6 of itself, which only rounding of its printed form can disturb.
 */
class LamePairTest {

    private static final double RECOMPUTED = 1e-6;
    private static final double INCH = 0.0254;
    private static final double PSI = 6894.757293168361;

    private static LamePair sameMaterial(double d, double outside, double bore, double modulus) {
        return new LamePair(d, outside, bore, modulus, 0.3, modulus, 0.3);
    }

    private static LamePair bushInLug(double outside) {
        return new LamePair(14 * MM, outside, 10 * MM, 71.7 * GPA, 0.33, 200 * GPA, 0.29);
    }

    private static void assertRelative(double expected, double actual) {
        assertEquals(expected, actual, Math.abs(expected) * RECOMPUTED);
    }

    /** Brown, Marks' Calculations for Machine Design (2005), 3.2 Example 6, US units; delta is printed as radial. */
    @Test
    void solidShaftInCollarOfBrownExample6InUsUnits() {
        LamePair pair = sameMaterial(4 * INCH, 6 * INCH, 0, 30e6 * PSI);
        double interference = 2 * 0.0005 * INCH;
        double printed = 2100;
        assertEquals(printed, pair.pressure(interference) / PSI, 0.01 * printed,
                "the print rounds (R/ro)^2 early and comes out 0.8 % high");
        assertRelative(2083.0 + 1.0 / 3, pair.pressure(interference) / PSI);
        assertRelative(5416.0 + 2.0 / 3, pair.boreHoop(interference) / PSI);
    }

    /** Same example in SI units: radius 0.05 m, outer radius 0.08 m, radial interference 0.00001 m, 207 GPa. */
    @Test
    void solidShaftInCollarOfBrownExample6InSiUnits() {
        LamePair pair = sameMaterial(0.10, 0.16, 0, 207 * GPA);
        double interference = 2 * 0.00001;
        assertEquals(12.627, pair.pressure(interference) / MPA, 0.015, "printed before rounding to 12.6");
        assertEquals(12.6141, pair.pressure(interference) / MPA, 0.00005);
        assertEquals(28.786, pair.boreHoop(interference) / MPA, 0.0005);
    }

    /**
     * Brown, Example 7: 1.5 in is the diameter of the shaft, but the text sets R = 1.5 in, which halves the pressure.
     * Greatest radial interference 0.0008 in, outer radius twice the inner one, 11e6 psi.
     */
    @ParameterizedTest
    @CsvSource({"1.50, 2200", "0.75, 4400"})
    void takingTheDiameterForTheRadiusHalvesThePressure(double radius, double psi) {
        LamePair pair = sameMaterial(2 * radius * INCH, 4 * radius * INCH, 0, 11e6 * PSI);
        assertRelative(psi, pair.pressure(2 * 0.0008 * INCH) / PSI);
    }

    /** Steel on steel, 50 in 80 mm, 0.04 mm: a worked example on two press-fit calculator pages (200 GPa). */
    @Test
    void steelHubOfThePressFitCalculatorPages() {
        LamePair pair = sameMaterial(50 * MM, 80 * MM, 0, 200 * GPA);
        assertEquals(48.75, pair.pressure(0.04 * MM) / MPA, 0.005, "printed");
        assertEquals(111.3, pair.boreHoop(0.04 * MM) / MPA, 0.05 + 1e-9, "printed");
        assertRelative(48.7500, pair.pressure(0.04 * MM) / MPA);
        assertRelative(111.250, pair.boreHoop(0.04 * MM) / MPA);
    }

    /** The same hub on a third page with 210 GPa prints a hoop of 117 MPa. */
    @Test
    void hoopIsProportionalToTheModulus() {
        LamePair pair = sameMaterial(50 * MM, 80 * MM, 0, 210 * GPA);
        assertEquals(117, pair.boreHoop(0.04 * MM) / MPA, 0.5, "printed");
        assertEquals(116.81, pair.boreHoop(0.04 * MM) / MPA, 0.005);
    }

    /** Every term active: steel bush in an aluminium lug. Own arithmetic, closed by the displacements below. */
    @Test
    void bushInLug() {
        LamePair pair = bushInLug(28 * MM);
        double interference = 0.025 * MM;
        assertRelative(42.70595, pair.pressure(interference) / MPA);
        assertRelative(71.17658, pair.boreHoop(interference) / MPA);
        assertRelative(28.47063, pair.outsideHoop(interference) / MPA);
        assertRelative(-131.67668, pair.innerInterfaceHoop(interference) / MPA);
        assertRelative(-174.38263, pair.innerBoreHoop(interference) / MPA);
        assertRelative(142.35317, pair.boreHoop(2 * interference) / MPA);
    }

    /**
     * Outward growth of the hole and inward growth of the bush, from hoop and radial strain, make up the interference.
     */
    @Test
    void displacementsCloseTheInterference() {
        LamePair pair = bushInLug(28 * MM);
        double interference = 0.025 * MM;
        double p = pair.pressure(interference);
        double holeStrain = (pair.boreHoop(interference) + 0.33 * p) / (71.7 * GPA);
        double bushStrain = (pair.innerInterfaceHoop(interference) + 0.29 * p) / (200 * GPA);
        assertEquals(interference, 14 * MM * (holeStrain - bushStrain), 1e-15);
    }

    @ParameterizedTest
    @CsvSource({"21, 84.675", "28, 71.177", "42, 61.999", "140, 55.546", "Infinity, 54.918"})
    void thinnerWallGivesHigherBoreHoop(double outsideMillimetres, double hoop) {
        assertEquals(hoop, bushInLug(outsideMillimetres * MM).boreHoop(0.025 * MM) / MPA, 0.0005);
    }

    @Test
    void inAWidePlateTheBoreHoopIsThePressure() {
        LamePair pair = bushInLug(Double.POSITIVE_INFINITY);
        assertEquals(pair.pressure(0.025 * MM), pair.boreHoop(0.025 * MM), 0);
        assertEquals(0, pair.outsideHoop(0.025 * MM), 0);
    }

    @Test
    void hoopThroughTheWallRunsFromBoreToOutside() {
        LamePair pair = bushInLug(28 * MM);
        assertRelative(pair.boreHoop(0.025 * MM), pair.outerHoopAt(0.025 * MM, 7 * MM));
        assertRelative(pair.outsideHoop(0.025 * MM), pair.outerHoopAt(0.025 * MM, 14 * MM));
        assertThrows(IllegalArgumentException.class, () -> pair.outerHoopAt(0.025 * MM, 6.9 * MM));
    }

    /** Same material, solid inner part: p = E delta (do^2 - d^2)/(2 d do^2), Shigley 9th ed. eq. 3-57. */
    @Test
    void sameMaterialReducesToTheShortFormula() {
        LamePair pair = sameMaterial(14 * MM, 28 * MM, 0, 71.7 * GPA);
        double shortFormula = 71.7 * GPA * 0.025 * (28 * 28 - 14 * 14) / (2.0 * 14 * 28 * 28);
        assertEquals(shortFormula, pair.pressure(0.025 * MM), 1e-6 * shortFormula);
    }

    @Test
    void clearanceGivesNoStress() {
        assertEquals(0, bushInLug(28 * MM).boreHoop(-0.01 * MM), 0);
    }

    @Test
    void ringsThatAreNotNestedAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> bushInLug(14 * MM));
        assertThrows(IllegalArgumentException.class, () -> bushInLug(Double.NaN));
    }
}
