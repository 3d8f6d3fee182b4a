package org.shortgrain.mechanics.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shortgrain.mechanics.fit.Fits.GPA;
import static org.shortgrain.mechanics.fit.Fits.MM;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shortgrain.mechanics.Given;

class RetentionTest {

    private static Retention hub(double modulus, double friction) {
        FitMaterial steel = Fits.material("steel", modulus, 0.3, 11e-6, Optional.of(1e9));
        Interference fit = new Interference.Stated(Given.exact(50 * MM, "test"), Given.exact(0.04 * MM, "test"));
        return new Retention(new InterferenceFit(fit, Optional.of(Given.exact(80 * MM, "test")), Given.exact(0, "test"),
                steel, steel, Given.exact(20, "test"), List.of()), Given.exact(friction, "test"),
                Given.exact(40 * MM, "test"));
    }

    /**
     * Steel on steel, 50 in 80 mm, 0.04 mm, length 40 mm. Printed on press-fit calculator pages: 45,950 N and 1,149 N m
     * (200 GPa, mu 0.15); 38.6 kN and 965 N m (210 GPa, mu 0.12). Recomputed values to the right of them.
     */
    @ParameterizedTest
    @CsvSource({"200, 0.15, 45950, 5, 45945.8, 1149, 1148.645", "210, 0.12, 38600, 50, 38594, 965, 964.86"})
    void pushOutForceAndTorqueOfThePressFitCalculatorPages(double gigapascal, double friction, double printedForce,
            double printedHalfDigit, double force, double printedTorque, double torque) {
        Retention retention = hub(gigapascal * GPA, friction);
        assertEquals(printedForce, retention.force().value().value(), printedHalfDigit + 1);
        assertEquals(force, retention.force().value().value(), 0.5);
        assertEquals(printedTorque, retention.torque().value().value(), 0.5);
        assertEquals(torque, retention.torque().value().value(), 0.005);
    }

    @Test
    void retentionIsJudgedAtTheTemperatureThatLoosensTheFitMost() {
        InterferenceFit fit = Fits.bushInLug(Fits.interference(0.02 * MM, 0.03 * MM), -55, 80);
        InterferenceFit warmOnly = Fits.bushInLug(Fits.interference(0.02 * MM, 0.03 * MM), 80);
        Given friction = Given.exact(0.15, "test");
        Given length = Given.exact(10 * MM, "test");
        double low = new Retention(fit, friction, length).force().value().low();
        assertEquals(new Retention(warmOnly, friction, length).force().value().low(), low, 0);
        assertTrue(low < new Retention(Fits.bushInLug(Fits.interference(0.02 * MM, 0.03 * MM)), friction, length).force()
                .value().low());
    }

    /**
     * Own arithmetic: bush in a lug, 1708.238 MPa of pressure per millimetre of interference. 2000 N need p = 2000/(0.12 pi 14 mm
     * 12 mm) = 31.57829 MPa, 18.48589 um; from 20 to 80 degC the fit loses 14 mm (23.4 - 10.8) 1e-6 60 = 10.584 um.
     */
    @Test
    void theLeastInterferenceHoldsTheForceWhenLoosest() {
        Given friction = Given.exact(0.12, "test");
        Given length = Given.exact(12 * MM, "test");
        Retention any = new Retention(Fits.bushInLug(Fits.interference(0, 0.01 * MM), -55, 80), friction, length);
        double least = any.leastInterference(2000);
        assertEquals(29.07e-3, least / MM, 5e-6);
        assertEquals(2000, new Retention(Fits.bushInLug(Fits.interference(least, 2 * least), -55, 80), friction, length)
                .force().value().low(), 1e-6);
    }
}
