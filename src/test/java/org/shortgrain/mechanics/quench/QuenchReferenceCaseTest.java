package org.shortgrain.mechanics.quench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.shortgrain.mechanics.quench.Quenches.MM;
import static org.shortgrain.mechanics.quench.Quenches.MPA;
import static org.shortgrain.mechanics.quench.Quenches.of7050;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.interpolation.LinearInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The reference case: a 7050 plate of 75 mm, from 475 degC into water of 20 degC. The expected values come from an
 * independent implementation in another language on a grid four times finer, and agree with a third, explicit scheme of
 * 640,000 steps on a uniform grid.
 */
class QuenchReferenceCaseTest {

    private final QuenchSolver normal = new QuenchSolver(QuenchResolution.NORMAL, 8);

    /** Fine-grid values; 0.5 MPa at skin and core, 1.5 MPa elsewhere because the kink at 10 to 12.5 mm moves with the grid. */
    @ParameterizedTest
    @CsvSource({"0, -173.7", "1, -169.7", "2.5, -164.6", "5, -157.6", "7.5, -152.6", "10, -140", "12.5, -140",
        "15, -75.6", "20, 39.3", "25, 121.7", "30, 151.9", "37.5, 154.1"})
    void theStressThroughThePlateAgreesWithTheFineReference(double depth, double expected) {
        double tolerance = depth == 0 || depth == 37.5 ? 0.5 : 1.5;
        assertEquals(expected * MPA, normal.plate(of7050(75, "water20")).profile().at(depth * MM), tolerance * MPA);
    }

    /** The same grid and time steps in the other implementation: agreement to the printed digit. */
    @ParameterizedTest
    @CsvSource({"0, -173.66", "1, -169.62", "2.5, -164.54", "5, -157.52", "7.5, -152.60", "10, -140.25",
        "12.5, -139.71", "15, -75.36", "20, 39.19", "25, 121.21", "30, 151.85", "37.5, 154.07"})
    void theSameGridAndStepsGiveTheSameStressToAHundredthOfAMegapascal(double depth, double expected) {
        assertEquals(expected * MPA, normal.plate(of7050(75, "water20")).profile().at(depth * MM), 0.01 * MPA);
        assertEquals(399, normal.plate(of7050(75, "water20")).history().moments().size());
    }

    @Test
    void theStressChangesSignAtADepthOfEighteenMillimetres() {
        assertEquals(18.09 * MM, normal.plate(of7050(75, "water20")).zeroCrossing().orElseThrow(), 0.05 * MM);
    }

    @Test
    void theSkinHasHardenedSixTimesAsMuchAsTheCore() {
        StressProfile hardening = normal.plate(of7050(75, "water20")).hardeningStrain();
        assertEquals(0.005928, hardening.at(0), 2e-5);
        assertEquals(0.001034, hardening.at(37.5 * MM), 2e-5);
    }

    /** Steps are about 2 K apart and the grid is four times coarser than the reference: 1 K and 2 MPa. */
    @ParameterizedTest
    @CsvSource({"1, 332.0, 475.0, 63.2, -19.3", "2, 251.1, 473.2, 97.2, -19.7", "5, 150.3, 434.0, 71.1, -28.6",
        "10, 123.7, 329.1, -82.8, 23.2", "20, 96.8, 195.8, -150.1, 117.5", "30, 76.9, 130.4, -158.5, 135.3",
        "60, 46.4, 60.6, -167.9, 148.3"})
    void theQuenchRunsThroughTheReferenceHistory(double time, double surface, double centre,
            double surfaceStress, double centreStress) {
        List<CoolingHistory.Moment> moments = normal.plate(of7050(75, "water20")).history().moments();

        assertEquals(surface, history(moments, CoolingHistory.Moment::surfaceTemperature).value(time), 1);
        assertEquals(centre, history(moments, CoolingHistory.Moment::centreTemperature).value(time), 1);
        assertEquals(surfaceStress * MPA, history(moments, CoolingHistory.Moment::surfaceStress).value(time), 2 * MPA);
        assertEquals(centreStress * MPA, history(moments, CoolingHistory.Moment::centreStress).value(time), 2 * MPA);
    }

    @Test
    void theSkinIsPulledTo122MpaAfterThreeSecondsBeforeItEndsInCompression() {
        CoolingHistory.Moment peak = normal.plate(of7050(75, "water20")).history().moments().stream()
                .max((a, b) -> Double.compare(a.surfaceStress(), b.surfaceStress())).orElseThrow();

        assertEquals(122.2 * MPA, peak.surfaceStress(), 0.5 * MPA);
        assertEquals(3.20, peak.time(), 0.1);
    }

    private static PolynomialSplineFunction history(List<CoolingHistory.Moment> moments,
            ToDoubleFunction<CoolingHistory.Moment> value) {
        return new LinearInterpolator().interpolate(
                moments.stream().mapToDouble(CoolingHistory.Moment::time).toArray(),
                moments.stream().mapToDouble(value).toArray());
    }

    /** Fine resolution of both implementations; printed to 0.1 MPa. */
    @ParameterizedTest
    @CsvSource({"20, water20, -89.1, 37.5", "75, water60, -152.3, 62.1", "100, water80, -112.3, 22.2",
        "100, water100, -59.9, 5.7", "100, pag20, -150.8, 84.9"})
    void otherSectionsAndBathsAgreeWithTheSecondPins(double millimetres, String bath, double skin,
            double core) {
        QuenchedPlate plate = new QuenchSolver(QuenchResolution.FINE, 1).plate(of7050(millimetres, bath));

        assertEquals(skin * MPA, plate.skin(), 0.1 * MPA);
        assertEquals(core * MPA, plate.core(), 0.1 * MPA);
    }

    @Test
    void withoutHardeningSkinAndCoreBothEndExactlyAtTheYield() {
        QuenchMaterial base = Quenches.metal("7050");
        QuenchMaterial soft = new QuenchMaterial("7050 without hardening", base.density(), base.poissonRatio(),
                base.conductivity(), base.heatCapacity(), base.youngsModulus(), base.expansion(), base.wYield(),
                PropertyCurve.constant(0), base.hardeningKept(), 475, base.source());

        QuenchedPlate plate = normal.plate(new SectionQuench(soft, Quenches.bath("water20"), 76.2 * MM, 475));

        assertEquals(-150 * MPA, plate.skin(), 1);
        assertEquals(150 * MPA, plate.core(), 1);
    }

    /** Coarse resolution of both implementations; printed to 1 MPa. */
    @ParameterizedTest
    @CsvSource({"10, water20, -23, 2", "30, water20, -151, 85", "50, water20, -163, 151", "100, water20, -182, 155",
        "200, water20, -210, 155", "250, water20, -217, 155", "30, water60, -10, 0", "50, water60, -65, 9",
        "150, water60, -170, 150", "75, water80, -61, 4", "200, water80, -167, 112", "150, water100, -138, 41",
        "250, water100, -163, 112", "20, pag10, -7, 0", "75, pag10, -135, 66", "40, pag20, -45, 10",
        "150, pag20, -158, 136", "50, pag30, -56, 16", "100, pag30, -144, 71"})
    void theMapOfSectionsAndBathsComesOut(double millimetres, String bath, double skin, double core) {
        QuenchedPlate plate = new QuenchSolver(QuenchResolution.COARSE, 1).plate(of7050(millimetres, bath));

        assertEquals(skin * MPA, plate.skin(), 1 * MPA);
        assertEquals(core * MPA, plate.core(), 1 * MPA);
    }

    /** Thin sections in mild baths hardly strain beyond yield: the core stays under 5 MPa. */
    @ParameterizedTest
    @CsvSource({"10, water20", "30, water60", "50, water80", "50, water100"})
    void thinSectionsInMildBathsKeepLessThan5MpaInTheCore(double millimetres, String bath) {
        assertEquals(0, normal.plate(of7050(millimetres, bath)).core(), 5 * MPA);
    }
}
