package org.shortgrain.mechanics.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shortgrain.mechanics.fit.Fits.GPA;
import static org.shortgrain.mechanics.fit.Fits.MM;
import static org.shortgrain.mechanics.fit.Fits.MPA;
import static org.shortgrain.mechanics.fit.Fits.bushInLug;
import static org.shortgrain.mechanics.fit.Fits.interference;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Given;

class FitStressTest {

    private static final Interference NOMINAL = interference(0.025 * MM, 0.025 * MM);

    /** Own arithmetic: delta = 0.025 mm + 14 mm (10.8e-6 - 23.4e-6)(T - 20 degC). */
    @ParameterizedTest
    @CsvSource({"-55, 0.03823, 108.8432", "80, 0.014416, 41.0433"})
    void steelBushInAluminiumTightensInTheCold(double celsius, double deltaMillimetres, double hoop) {
        FitStress stress = new FitStress(bushInLug(NOMINAL, celsius));
        Given temperature = Given.exact(celsius, "test");
        assertEquals(deltaMillimetres, stress.interferenceAt(temperature).value() / MM, 1e-9);
        assertEquals(hoop, stress.boreHoopAt(temperature).value().value() / MPA, 0.00005);
    }

    @Test
    void coldestLastingTemperatureGovernsSteelInAluminium() {
        Computed hoop = new FitStress(bushInLug(NOMINAL, 70, -55, 40)).boreHoop();
        assertEquals(108.8432, hoop.value().value() / MPA, 0.00005);
        assertEquals(4, hoop.steps().stream().filter(s -> s.symbol().equals("sigma(T)")).count(),
                "assembly and every lasting temperature are shown");
    }

    @Test
    void roomTemperatureGovernsWhereThePartOnlyGetsWarmer() {
        FitStress stress = new FitStress(bushInLug(NOMINAL, 80));
        assertEquals(20, stress.governingTemperature().value().value(), 0);
    }

    @Test
    void warmestTemperatureGovernsAluminiumInSteel() {
        InterferenceFit fit = new InterferenceFit(NOMINAL, Optional.empty(), Given.exact(0, "test"), Fits.STEEL,
                Fits.ALUMINIUM, Given.exact(20, "test"), List.of(Given.exact(-55, "test"), Given.exact(80, "test")));
        assertEquals(80, new FitStress(fit).governingTemperature().value().value(), 0);
    }

    /** Brown, Marks' Calculations (2005), Example 7: hole 1.5000/1.5010 in, shaft 1.5016/1.5010 in. */
    @Test
    void limitsOfSizeGiveGreatestAndSmallestInterference() {
        double inch = 0.0254;
        Interference fit = new Interference.FromLimits(Given.limits(1.5000 * inch, 1.5010 * inch, "hole"),
                Given.limits(1.5010 * inch, 1.5016 * inch, "shaft"));
        assertEquals(0.0008, fit.diametral().high() / inch / 2, 1e-9, "printed, radial");
        assertEquals(0, fit.diametral().low() / inch / 2, 1e-9, "printed, radial");
    }

    /** Taper of 1/4 in per foot on diameter, 0.150 in protrusion: geometry; the taper itself from memory. */
    @Test
    void protrusionOfATaperSeatedFastenerGivesItsInterference() {
        Interference fit = new Interference.FromTaper(Given.exact(6.35 * MM, "hole"),
                Given.exact(0.150 * 0.0254, "protrusion"), Given.exact(1.0 / 48, "taper"));
        assertEquals(0.003125, fit.diametral().value() / 0.0254, 1e-12);
        assertEquals(0.0794, fit.diametral().value() / MM, 0.00005);
    }

    @Test
    void toleranceExtremesMakeTheBand() {
        Band hoop = new FitStress(bushInLug(interference(0.010 * MM, 0.040 * MM))).boreHoop().value();
        double perMillimetre = 2847.0634;
        assertEquals(0.010 * perMillimetre, hoop.low() / MPA, 0.0001);
        assertEquals(0.025 * perMillimetre, hoop.value() / MPA, 0.0001);
        assertEquals(0.040 * perMillimetre, hoop.high() / MPA, 0.0001);
    }

    @Test
    void clearanceHasNoStressAndSaysSo() {
        Computed hoop = new FitStress(bushInLug(interference(-0.030 * MM, -0.005 * MM))).boreHoop();
        assertEquals(Band.exact(0), hoop.value());
        assertTrue(hoop.validity().inside());
        assertTrue(hoop.notes().contains("Clearance at every limit: no stress."));
    }

    @Test
    void transitionFitIsStressedAtItsUpperEndOnly() {
        Computed hoop = new FitStress(bushInLug(interference(-0.010 * MM, 0.005 * MM))).boreHoop();
        assertEquals(0, hoop.value().low(), 0);
        assertEquals(0, hoop.value().value(), 0);
        assertTrue(hoop.value().high() > 10 * MPA);
    }

    @Test
    void clearanceAtRoomTemperatureCanBecomeAnInterferenceInTheCold() {
        Computed hoop = new FitStress(bushInLug(interference(-0.005 * MM, -0.005 * MM), -55)).boreHoop();
        assertTrue(hoop.value().value() > 0);
    }

    @Test
    void beyondYieldTheResultIsNoLongerInsideItsValidity() {
        Computed hoop = new FitStress(bushInLug(interference(0.20 * MM, 0.20 * MM))).boreHoop();
        assertFalse(hoop.validity().inside());
        assertTrue(hoop.validity().statement().contains("The outer part yields"), hoop.validity()::statement);
    }

    @Test
    void withoutAYieldStrengthTheElasticRangeIsNotClaimed() {
        FitMaterial unknown = Fits.material("7075", 71.7 * GPA, 0.33, 23.4e-6, Optional.empty());
        InterferenceFit fit = new InterferenceFit(NOMINAL, Optional.empty(), Given.exact(0, "test"), unknown, Fits.STEEL,
                Given.exact(20, "test"), List.of());
        Computed hoop = new FitStress(fit).boreHoop();
        assertFalse(hoop.validity().inside());
        assertTrue(hoop.validity().statement().contains("unknown"), hoop.validity()::statement);
    }

    @Test
    void everyInputIsShownWithItsOrigin() {
        Computed hoop = new FitStress(bushInLug(NOMINAL, -55)).boreHoop();
        assertEquals(List.of("d", "delta", "do", "di", "Eo", "nu_o", "alpha_o", "Ei", "nu_i", "alpha_i", "T0", "T"),
                hoop.inputs().stream().map(Computed.Input::symbol).toList());
    }

    @Test
    void aWallSmallerThanTheHoleIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new InterferenceFit(NOMINAL,
                Optional.of(Given.exact(13 * MM, "test")), Given.exact(0, "test"), Fits.ALUMINIUM, Fits.STEEL,
                Given.exact(20, "test"), List.of()));
    }
}
