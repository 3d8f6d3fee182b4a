package org.shortgrain.mechanics.quench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.shortgrain.mechanics.quench.Quenches.MPA;
import static org.shortgrain.mechanics.quench.Quenches.of7050;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Round bars of 7050 in cold water, against an independent implementation in another language.
 */
class BarQuenchTest {

    /** Fine resolution; printed to three digits. Between element middles the stress is read on straight lines. */
    @ParameterizedTest
    @CsvSource({"0, 86.6, 86.6, 227", "0.25, 82.2, 73.6, 196", "0.5, 69.2, 33.3, 110", "0.75, 43.1, -74.7, -37.0",
        "0.9, 16.2, -138, -140", "1, 0.3, -156, -172"})
    void aBarOf75MmAgreesWithTheReference(double share, double radial, double hoop, double axial) {
        QuenchedBar bar = new QuenchSolver(QuenchResolution.FINE, 1).bar(of7050(75, "water20"));
        double r = share * bar.radius();

        assertEquals(radial * MPA, bar.radial().at(r), 0.5 * MPA);
        assertEquals(hoop * MPA, bar.hoop().at(r), 0.5 * MPA);
        assertEquals(axial * MPA, bar.axial().at(r), 0.5 * MPA);
    }

    /** Coarse resolution of both implementations; printed to 1 MPa. */
    @ParameterizedTest
    @CsvSource({"25, 12, 40, -73, -67", "50, 62, 169, -151, -156", "75, 86, 225, -155, -170",
        "100, 91, 240, -159, -180", "150, 94, 244, -166, -192", "200, 96, 246, -171, -198"})
    void barsOf25To200MmAgreeWithTheReference(double millimetres, double across, double along,
            double skinHoop, double skinAlong) {
        QuenchedBar bar = new QuenchSolver(QuenchResolution.COARSE, 1).bar(of7050(millimetres, "water20"));

        assertEquals(across * MPA, bar.radial().at(0), 1 * MPA);
        assertEquals(across * MPA, bar.hoop().at(0), 1 * MPA);
        assertEquals(along * MPA, bar.axial().at(0), 1 * MPA);
        assertEquals(skinHoop * MPA, bar.hoop().at(bar.radius()), 1 * MPA);
        assertEquals(skinAlong * MPA, bar.axial().at(bar.radius()), 1 * MPA);
    }
}
