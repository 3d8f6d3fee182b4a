package org.shortgrain.mechanics.quench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shortgrain.mechanics.quench.Quenches.MPA;
import static org.shortgrain.mechanics.quench.Quenches.of7050;

import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Stretching, ideal compression and uphill quench, against an independent implementation in another language. */
class StressReliefTest {

    private static final QuenchSolver SOLVER = new QuenchSolver(QuenchResolution.NORMAL, 20);

    /**
     * Two equal layers at -150 and +150 MPa, no hardening: as the set grows both end in uniaxial yield, so nothing is
     * left. 200 steps; 1 % or 0.01 MPa for the size of the step.
     */
    @ParameterizedTest
    @CsvSource({"0.002, 32.0, 64.0", "0.005, 9.75, 19.5", "0.01, 1.44, 2.88", "0.02, 0.034, 0.068",
        "0.03, 0.0008, 0.0017"})
    void twoOpposedLayersArePulledTogether(double set, double along, double across) {
        QuenchMaterial base = Quenches.metal("7050");
        QuenchMaterial soft = new QuenchMaterial("7050 without hardening", base.density(), base.poissonRatio(),
                base.conductivity(), base.heatCapacity(), base.youngsModulus(), base.expansion(), base.wYield(),
                PropertyCurve.constant(0), base.hardeningKept(), 475, base.source());
        Stretching.Layers layers = new Stretching(soft).new Layers(new double[] {1, 1},
                new double[] {-150 * MPA, 150 * MPA}, new double[2]);

        layers.stretch(set, 200);

        assertEquals(along, Math.abs(layers.along()[0]) / MPA, Math.max(0.01 * along, 0.01));
        assertEquals(across, Math.abs(layers.across()[0]) / MPA, Math.max(0.01 * across, 0.01));
        assertEquals(0, layers.along()[0] + layers.along()[1], 1);
    }

    /** The reference plate; printed to 0.1 MPa on a finer grid: 0.5 MPa. */
    @ParameterizedTest
    @CsvSource({"0.005, -11, 19.5, -43.6, 23.3", "0.01, 7.3, 10.8, -11.4, 5.6", "0.02, 12.5, 8.2, -1.1, 0.5",
        "0.03, 13.0, 8.0, -0.2, 0.1"})
    void stretchingTheReferencePlateLeavesATenth(double set, double alongSkin, double alongCore,
            double acrossSkin, double acrossCore) {
        RelievedPlate plate = SOLVER.stretched(of7050(75, "water20"), set);
        double middle = 0.5 * plate.along().thickness();

        assertEquals(alongSkin * MPA, plate.along().at(0), 0.5 * MPA);
        assertEquals(alongCore * MPA, plate.along().at(middle), 0.5 * MPA);
        assertEquals(acrossSkin * MPA, plate.across().at(0), 0.5 * MPA);
        assertEquals(acrossCore * MPA, plate.across().at(middle), 0.5 * MPA);
        assertEquals(0, plate.along().force(), 1, "N/m of 1e7");
        assertEquals(0, plate.across().force(), 1);
    }

    /** Altschuler, Kaatz and Cina, ASTM STP 993 (1988) 19-28, abstract: best at about 1.4 %, never complete. */
    @ParameterizedTest
    @CsvSource({"0.005", "0.01", "0.02", "0.03"})
    void theBestStretchIsNearOnePointFourPerCent(double other) {
        double best = largest(SOLVER.stretched(of7050(75, "water20"), 0.014).along());

        assertEquals(11.0 * MPA, best, 0.5 * MPA);
        assertTrue(best < largest(SOLVER.stretched(of7050(75, "water20"), other).along()));
    }

    @ParameterizedTest
    @CsvSource({"0.0025, -41, 19, 41.2", "0.005, 6.9, 11.7, 13.4", "0.02, 6.9, 11.7, 13.4"})
    void idealCompressionOfTheReferencePlateComesOut(double set, double skin, double core, double largest) {
        StressProfile left = SOLVER.compressed(of7050(75, "water20"), set).along();

        assertEquals(skin * MPA, left.at(0), 0.5 * MPA);
        assertEquals(core * MPA, left.at(0.5 * left.thickness()), 0.5 * MPA);
        assertEquals(largest * MPA, largest(left), 0.5 * MPA);
        assertEquals(0, left.force(), 1, "N/m of 1e7");
    }

    /** From liquid nitrogen into 100 degC; the strongest turns the skin to tension. */
    @ParameterizedTest
    @CsvSource({"1, -144.1, 146.0", "2, -107.5, 133.6", "3, -76.9, 120.2", "5, -29.1, 99.6", "10, 47.5, 68.5"})
    void uphillQuenchingRelievesTheSkinFarMoreThanTheCore(double kilowatts, double skin, double core) {
        FilmCoefficient heating = Quenches.constantFilm(1000 * kilowatts, 100);

        QuenchedPlate plate = SOLVER.uphill(of7050(75, "water20"), heating);

        assertEquals(skin * MPA, plate.skin(), 1.5 * MPA);
        assertEquals(core * MPA, plate.core(), 1.5 * MPA);
    }

    private static double largest(StressProfile profile) {
        return Arrays.stream(profile.stresses()).map(Math::abs).max().orElseThrow();
    }
}
