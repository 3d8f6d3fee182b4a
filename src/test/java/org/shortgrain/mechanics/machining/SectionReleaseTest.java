package org.shortgrain.mechanics.machining;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shortgrain.mechanics.machining.SectionRelease.Strip;
import org.shortgrain.mechanics.quench.StressProfile;

/**
 * The release of stress by cutting, against the closed forms of a balanced parabola s = S (1 - 3 x^2), x = 2 z / t from
 * the middle (own algebra).
 */
class SectionReleaseTest {

    private static final double MPA = 1e6;
    private static final double MM = 1e-3;
    private static final double MODULUS = 71e9;
    private static final double POISSON = 0.33;
    private static final double CORE = 100 * MPA;
    private static final double THICKNESS = 50 * MM;

    /** Straight pieces between so many points miss the parabola by S (3/2) / n^2, here 4 Pa in 100 MPa. */
    private static final int POINTS = 6000;

    private static StressProfile parabola() {
        double[] z = IntStream.rangeClosed(0, POINTS).mapToDouble(i -> THICKNESS * i / POINTS).toArray();
        return StressProfile.through(z, Arrays.stream(z).map(SectionReleaseTest::parabolaAt).toArray());
    }

    private static double parabolaAt(double z) {
        double x = 2 * z / THICKNESS - 1;
        return CORE * (1 - 3 * x * x);
    }

    /** Printed digits: the curvature to 1e-8 1/m, so 1e-7 relative; the stresses are round numbers. */
    @ParameterizedTest
    @CsvSource({
            "50,   -200,  100,    0,    0, 0,          -200",
            "40,   -128,   64,   24,  4.8, 0.04529577,  -32",
            "30,    -72,   36,   16,  9.6, 0.09059155,   72",
            "25,    -50,   25,    0,   12, 0.11323944,  100",
            "12.5, -12.5, 6.25, -75,   18, 0.16985915,  100"})
    void aBalancedParabolaCutFromOneSideFollowsTheClosedForm(double kept, double face, double core,
            double mean, double gradient, double curvature, double heldFace) {
        SectionRelease release = SectionRelease.ofPlate(parabola(), 0, kept * MM);

        StressProfile free = release.after(Release.FREE_TO_BOW);
        assertEquals(mean * MPA, release.meanStress(), 50);
        assertEquals(gradient * MPA / MM, release.gradient(), 2e4, "Pa/m, of 1e9");
        assertEquals(face * MPA, free.at(0), 200);
        assertEquals(face * MPA, free.at(kept * MM), 200);
        assertEquals(core * MPA, free.at(0.5 * kept * MM), 200);
        assertEquals(heldFace * MPA, release.stressAt(kept * MM, Release.HELD_FLAT), 100);
        assertEquals(curvature, Bow.ofPlate(release, release, MODULUS, POISSON).curvature(), 2e-7);
        assertEquals(parabolaAt(kept * MM), release.stressAt(kept * MM, Release.AS_IS), 5);
    }

    @Test
    void equalCutsFromBothSidesLeaveFacesAtHalfTheirCompressionAndNoBow() {
        SectionRelease release = SectionRelease.ofPlate(parabola(), 12.5 * MM, 37.5 * MM);

        assertEquals(-50 * MPA, release.after(Release.FREE_TO_BOW).at(12.5 * MM), 200);
        assertEquals(25 * MPA, release.after(Release.FREE_TO_BOW).at(25 * MM), 200);
        assertEquals(0, Bow.ofPlate(release, release, MODULUS, POISSON).over(1), 1e-12);
    }

    /**
     * Layer removal read backwards: the curvatures that the release predicts, put into the integral of Treuting and
     * Read (J. Appl. Phys. 22 (1951) 130; formula from memory), give the parabola back.
     */
    @ParameterizedTest
    @CsvSource({"45", "37.5", "25", "10", "2.5"})
    void theIntegralOfTreutingAndReadReturnsTheProfileThatWasCut(double left) {
        double h = left * MM;
        StressProfile blank = parabola();
        double step = 0.2 * MM;
        double slope = (curvature(blank, h + step) - curvature(blank, h - step)) / (2 * step);
        double integral = new IterativeLegendreGaussIntegrator(5, 1e-8, 1e-12).integrate(10_000,
                x -> curvature(blank, x), h, THICKNESS);

        double stress = MODULUS / (6 * (1 - POISSON))
                * (h * h * slope + 4 * h * curvature(blank, h) - 2 * integral);

        assertEquals(parabolaAt(h), stress, 2e3, "Pa, of 1e8: the pieces of the parabola and the quadrature");
    }

    /** Curvature for the thickness left, positive where the ends bend towards the removed face. */
    private static double curvature(StressProfile blank, double left) {
        SectionRelease release = SectionRelease.ofPlate(blank, 0, left);
        return Bow.ofPlate(release, release, MODULUS, POISSON).curvature();
    }

    /** Stoney, Proc. R. Soc. A 82 (1909) 172 (from memory): the thin-skin limit, 1 % off for a skin of 1 %. */
    @Test
    void aStressedSkinBendsAPlateAsTheSectionFormulaSaysAndStoneyNearly() {
        double h = 10 * MM;
        double skin = 0.1 * MM;
        double sharp = 1e-12;
        StressProfile blank = StressProfile.through(new double[] {0, h - skin - sharp, h - skin, h},
                new double[] {0, 0, -100 * MPA, -100 * MPA});

        SectionRelease release = SectionRelease.ofPlate(blank, 0, h);

        double found = -Bow.ofPlate(release, release, MODULUS, POISSON).curvature();
        assertEquals(5.6053521e-3, found, 1e-9, "1/m; the ramp into the skin is 1 pm wide");
        double stoney = 6 * 100 * MPA * skin * (1 - POISSON) / (MODULUS * h * h);
        assertEquals(5.6619718e-3, stoney, 1e-10);
    }

    /** Rosenthal and Norton's split of thick-plate stress into a linear part and a remainder (from memory). */
    @Test
    void aProfileIsItsLinearPartAndARemainderWithoutForceOrMoment() {
        SectionRelease release = SectionRelease.ofPlate(parabola(), 0, 30 * MM);

        StressProfile remainder = release.after(Release.FREE_TO_BOW);

        assertEquals(16 * MPA, release.meanStress(), 50);
        assertEquals(9.6 * MPA / MM, release.gradient(), 2e4);
        assertEquals(0, remainder.force(), 1e-6, "N/m, of 3e6");
        assertEquals(0, remainder.moment(release.centroid()), 1e-6, "N, of 7e3");
    }

    /** Web 100 mm wide from 2.5 to 7.5 mm, rib 10 mm wide from 7.5 to 47.5 mm. */
    @Test
    void aWebWithARibIsReleasedAboutItsOwnCentroid() {
        SectionRelease release = SectionRelease.ofSection(parabola(), List.of(
                new Strip(2.5 * MM, 7.5 * MM, 100 * MM), new Strip(7.5 * MM, 47.5 * MM, 10 * MM)));

        assertEquals(900e-6, release.area(), 1e-15);
        assertEquals(15 * MM, release.centroid(), 1e-12);
        assertEquals(166_875e-12, release.secondMoment(), 1e-17);
        assertEquals(-37.0 * MPA, release.meanStress(), 100);
        assertEquals(3.1280899 * MPA / MM, release.gradient(), 2e4);
        assertEquals(0.0440576, Bow.ofBeam(release, MODULUS).curvature(), 1e-6);
        double[] depth = {2.5, 7.5, 25, 47.5};
        double[] free = {-66.899, 13.461, 105.719, -207.663};
        double[] flat = {-106, -10, 137, -106};
        for (int i = 0; i < depth.length; i++) {
            assertEquals(free[i] * MPA, release.stressAt(depth[i] * MM, Release.FREE_TO_BOW), 2e3);
            assertEquals(flat[i] * MPA, release.stressAt(depth[i] * MM, Release.HELD_FLAT), 2e3);
        }
    }
}
