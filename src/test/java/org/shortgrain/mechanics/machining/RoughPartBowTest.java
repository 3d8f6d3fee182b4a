package org.shortgrain.mechanics.machining;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shortgrain.mechanics.quench.Quenches.MM;
import static org.shortgrain.mechanics.quench.Quenches.of7050;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.quench.QuenchMaterial;
import org.shortgrain.mechanics.quench.QuenchResolution;
import org.shortgrain.mechanics.quench.QuenchSolver;
import org.shortgrain.mechanics.quench.Quenches;
import org.shortgrain.mechanics.quench.RetainedShare;
import org.shortgrain.mechanics.quench.StressProfile;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.SourceStatus;

/**
 * A balanced parabola s = S (1 - 3 x^2), x = 2 z / t, by own algebra: the half next to one face has m = S t^2 / 16, so faces at
 * shares a and b bow by kappa = 0.75 S (b - a)(1 - nu)/(E t); with a face cut to leave h, kappa = 12 S (1 - nu)/(E t) (1 - h/t).
 */
class RoughPartBowTest {

    private static final QuenchMaterial METAL = Quenches.metal("7050");
    private static final double S = 100e6;
    private static final double T = 50e-3;
    private static final double STIFFNESS = METAL.modulusAtRoomTemperature() / (1 - METAL.poissonRatio());
    private static final int POINTS = 2000;

    private static RetainedShare scatter(double low, double high) {
        return new RetainedShare("model", low, high, 0, new Citation("test", "", SourceStatus.DERIVED));
    }

    private static StressProfile parabola() {
        double[] depth = new double[POINTS + 1];
        double[] stress = new double[POINTS + 1];
        for (int i = 0; i <= POINTS; i++) {
            double x = 2.0 * i / POINTS - 1;
            depth[i] = T * i / POINTS;
            stress[i] = S * (1 - 3 * x * x);
        }
        return StressProfile.through(depth, stress);
    }

    /** Straight lines between 2,000 points miss the parabola by 1 in 10 million of its moment. */
    @Test
    void aParabolaBowsByItsClosedFormWhereTheFacesCoolUnlike() {
        double length = 0.6;
        Band bow = new RoughPartBow(parabola(), METAL, scatter(0.75, 1.25)).afterQuench(length).value();
        double most = 0.75 * S * 0.5 / (STIFFNESS * T) * length * length / 8;
        assertEquals(most, bow.high(), 1e-5 * most);
        assertEquals(0, bow.low());
        assertEquals(most / 2, bow.value(), 1e-5 * most);
    }

    @Test
    void facesThatCoolAlikeDoNotBowThePart() {
        assertEquals(0, new RoughPartBow(parabola(), METAL, scatter(1, 1)).afterQuench(1).value().high());
    }

    @ParameterizedTest
    @CsvSource({"10", "20", "25"})
    void aParabolaBowsByItsClosedFormWhenOneFaceIsFinished(double cut) {
        Band bow = new RoughPartBow(parabola(), METAL, scatter(0.75, 1.25)).afterFirstFace(cut * MM, 1).value();
        double expected = 12 * S / (STIFFNESS * T) * (cut * MM / T) / 8;
        assertEquals(expected, bow.value(), 1e-5 * expected);
        assertEquals(0.75 * expected, bow.low(), 1e-5 * expected);
        assertEquals(1.25 * expected, bow.high(), 1e-5 * expected);
    }

    /**
     * 7050, cold water, a wall of 25 mm rough machined with an allowance a side and cut on one side, against an independent implementation in another
     * language, which prints to 0.1 mm in a metre; half a digit, and 0.01 mm for its coarser grid.
     */
    @ParameterizedTest
    @CsvSource({"27, 1, 1.3", "30, 2.5, 2.8", "33, 4, 3.9", "35, 5, 4.6"})
    void aQuenchedWallCutOnOneSideBowsAsAnotherImplementationFinds(double rough, double cut, double bow) {
        StressProfile blank = new QuenchSolver(QuenchResolution.FINE, 1).plate(of7050(rough, "water20")).profile();
        assertEquals(bow * MM, new RoughPartBow(blank, METAL, scatter(1, 1)).afterFirstFace(cut * MM, 1).value().value(), 0.06 * MM);
    }

    @Test
    void aThickerRoughPartBowsLessInTheQuenchThanItsStressAloneWouldTell() {
        QuenchSolver solver = new QuenchSolver(QuenchResolution.NORMAL, 2);
        double thin = new RoughPartBow(solver.plate(of7050(25, "water20")).profile(), METAL, scatter(0.75, 1.25)).afterQuench(1).value()
                .high();
        double thick = new RoughPartBow(solver.plate(of7050(100, "water20")).profile(), METAL, scatter(0.75, 1.25)).afterQuench(1)
                .value().high();
        assertTrue(thick < thin && thick > 0, thick + " and " + thin);
    }
}
