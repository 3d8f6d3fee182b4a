package org.shortgrain.mechanics.sustained;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shortgrain.mechanics.sustained.Points.MPA;
import static org.shortgrain.mechanics.sustained.Points.mpa;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Direction;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.GrainAxes;
import org.shortgrain.mechanics.StressTensor;
import org.shortgrain.terms.GrainDirection;

class PeeningTest {

    private static final double MM = 1e-3;

    private static Peening peening(double thickness, double removed) {
        return new Peening(Given.exact(0.25 * MM, "test"), Given.limits(1.2, 1.6, "test"), mpa(200), mpa(300),
                Given.exact(0.3, "test"), Given.exact(thickness * MM, "test"), Given.exact(removed * MM, "test"));
    }

    /** Own arithmetic, layers of 0.3 mm at a mean of 180 MPa: why thin webs are exempt. */
    @ParameterizedTest
    @CsvSource({"10, 11.4894", "2, 77.1429"})
    void tensionBelowTheLayersBalancesTheirCompression(double thickness, double expected) {
        assertEquals(expected, Peening.coreTension(thickness * MM, 0.3 * MM, 180 * MPA) / MPA, 5e-5);
    }

    @Test
    void theLayerIsAsDeepAsTheArcHeightTimesItsFactor() {
        Band depth = peening(10, 0).depth().value();
        assertEquals(0.35 * MM, depth.value(), 1e-12);
        assertEquals(0.30 * MM, depth.low(), 1e-12);
        assertEquals(0.40 * MM, depth.high(), 1e-12);
    }

    @Test
    void forcesBalanceOverTheSection() {
        Peening peening = peening(4, 0);
        double depth = 0.35 * MM;
        double integral = 0;
        int slices = 2000;
        for (int i = 0; i < slices; i++) {
            double z = (i + 0.5) / slices * depth;
            integral += peening(4, z / MM).surfaceStress().value().value() * depth / slices;
        }
        double core = peening.coreTension().value().value() * (4 * MM - 2 * depth);
        assertEquals(core, -2 * integral, 1e-4 * core);
    }

    @Test
    void removalMovesTheSurfaceIntoTheLayerAndThroughIt() {
        assertEquals(-200 * MPA, peening(10, 0).surfaceStress().value().value(), 1);
        assertEquals(-300 * MPA, peening(10, 0.105).surfaceStress().value().value(), 1);
        assertEquals(0, peening(10, 0.36).surfaceStress().value().value(), 0);
    }

    /** MIL-STD-1568C 5.2.3.1.4: clean-up of peened aluminium up to 0.076 mm (0.003 in). */
    @Test
    void removalAboveTheLimitIsMarked() {
        assertTrue(peening(10, 0.05).surfaceStress().validity().inside());
        assertFalse(peening(10, 0.10).surfaceStress().validity().inside());
    }

    @Test
    void compressionIsShownButNeverCredited() {
        List<Contribution> peened = peening(10, 0).contributions(Direction.X, Band.exact(0));
        SustainedPoint point = new SustainedPoint(GrainAxes.ALONG_PART_AXES, 0, peened);
        assertEquals(StressTensor.ZERO, point.total());
        assertTrue(point.stress(GrainDirection.ST).notes().get(0).contains("is not credited"));
    }

    @Test
    void belowTheLayerItsBalancingTensionCounts() {
        Band pit = new Band(0.1 * MM, 0, 0.5 * MM);
        List<Contribution> peened = peening(2, 0).contributions(Direction.X, pit);
        SustainedPoint point = new SustainedPoint(GrainAxes.ALONG_PART_AXES, 0, peened);
        assertEquals(peening(2, 0).coreTension().value().high(),
                point.stress(GrainDirection.ST).value().high(), 1);
        assertEquals(0, point.stress(GrainDirection.L).value().high(), 1e-6, "it acts along the surface, X across it");
    }

    @Test
    void aLayerThatDoesNotFitIntoTheSectionIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> peening(0.8, 0));
    }
}
