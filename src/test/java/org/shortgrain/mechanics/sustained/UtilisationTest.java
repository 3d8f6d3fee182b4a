package org.shortgrain.mechanics.sustained;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shortgrain.mechanics.sustained.Points.MPA;
import static org.shortgrain.mechanics.sustained.Points.mpa;
import static org.shortgrain.mechanics.sustained.Points.point;
import static org.shortgrain.mechanics.sustained.Points.shortTransverse;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Direction;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.GrainAxes;
import org.shortgrain.mechanics.fit.FitMaterial;
import org.shortgrain.mechanics.fit.FitStress;
import org.shortgrain.mechanics.fit.HoopDirection;
import org.shortgrain.mechanics.fit.Interference;
import org.shortgrain.mechanics.fit.InterferenceFit;
import org.shortgrain.mechanics.uncertainty.Distribution.Shape;
import org.shortgrain.mechanics.uncertainty.MonteCarlo;
import org.shortgrain.terms.GrainDirection;

class UtilisationTest {

    private static final double KSI = 6.894757293168361e6;
    private static final MonteCarlo DRAWS = new MonteCarlo(10_000, 1);

    private static Given exact(double value) {
        return Given.exact(value, "test");
    }

    private static Utilisation utilisation(SustainedPoint point, double threshold, double factor) {
        return new Utilisation(point, Map.of(GrainDirection.ST, mpa(threshold)), exact(factor));
    }

    /** 14 mm steel bush in a 7075 lug, 0.025 mm interference, bore along LT so that the hoop acts along ST. */
    private static SustainedPoint bushedLug(double... lasting) {
        InterferenceFit fit = new InterferenceFit(
                new Interference.Stated(exact(0.014), exact(0.025e-3)), Optional.of(exact(0.028)), exact(0.010),
                new FitMaterial("7075", exact(71.7e9), exact(0.33), exact(23.4e-6), Optional.of(exact(450e6))),
                new FitMaterial("steel", exact(200e9), exact(0.29), exact(10.8e-6), Optional.of(exact(1000e6))),
                exact(20), Arrays.stream(lasting).mapToObj(UtilisationTest::exact).toList());
        FitStress stress = new FitStress(fit);
        HoopDirection hoop = new HoopDirection(Direction.Y, GrainAxes.ALONG_PART_AXES);
        Contribution contribution = Contribution.computed("press fit of the bush",
                hoop.at(hoop.clockPosition(GrainDirection.ST).orElseThrow(), stress.radialPerHoop()), stress.boreHoop(),
                Shape.TRIANGULAR);
        return new SustainedPoint(GrainAxes.ALONG_PART_AXES, 0, List.of(contribution));
    }

    /**
     * Thresholds taken as exactly 7 ksi (7075-T651, ST; Corrosion 23 (11), 335, 1967, abstract) and 42 ksi (T7351, test
     * stress of MIL-HDBK-5J Table 3.1.2.3.1(b)); utilisations by own arithmetic.
     */
    @ParameterizedTest
    @CsvSource({"20, 7, 1, 1.474756", "20, 42, 0.5, 0.491585", "-55, 7, 1, 2.255197", "-55, 42, 0.5, 0.751732"})
    void bushedLugInTwoTempersAtTwoTemperatures(double lasting, double ksi, double factor, double expected) {
        Utilisation utilisation = new Utilisation(bushedLug(lasting),
                Map.of(GrainDirection.ST, exact(ksi * KSI)), exact(factor));
        double value = utilisation.of(GrainDirection.ST).orElseThrow().value().value();
        assertEquals(expected, value, 1e-6 * expected);
    }

    @Test
    void upperEndOfTheStressMeetsLowerEndOfTheThreshold() {
        SustainedPoint point = point(0, shortTransverse("residual", 96, 60, 130));
        Utilisation utilisation = new Utilisation(point, Map.of(GrainDirection.ST, mpa(48, 48, 60)), exact(1));
        Band u = utilisation.of(GrainDirection.ST).orElseThrow().value();
        assertEquals(new Band(2, 1, 130.0 / 48), u);
        Band margin = utilisation.margin(GrainDirection.ST).orElseThrow().value();
        assertEquals(-82 * MPA, margin.low(), 1e-6);
    }

    @Test
    void compressionIsNoUtilisation() {
        SustainedPoint point = point(0, shortTransverse("residual", -100, -150, -20));
        assertEquals(Band.exact(0), utilisation(point, 48, 1).of(GrainDirection.ST).orElseThrow().value());
    }

    @Test
    void withoutAThresholdNothingIsSaid() {
        Utilisation utilisation = utilisation(point(0, shortTransverse("residual", 96, 60, 130)), 48, 1);
        assertTrue(utilisation.of(GrainDirection.L).isEmpty());
        assertTrue(utilisation.margin(GrainDirection.L).isEmpty());
        assertTrue(utilisation.likelihood(GrainDirection.L, DRAWS).isEmpty());
    }

    @Test
    void theDirectionWithTheHighestUpperEndGoverns() {
        Contribution along = Contribution.stated("fit", Contribution.along(Direction.X), mpa(200), Shape.RECTANGULAR);
        SustainedPoint point = point(0, shortTransverse("residual", 30, 30, 30), along);
        Utilisation utilisation = new Utilisation(point,
                Map.of(GrainDirection.ST, mpa(48), GrainDirection.L, mpa(400)), exact(0.5));
        assertEquals(Optional.of(GrainDirection.ST), utilisation.governing());
    }

    @Test
    void aFactorAboveOneIsRefused() {
        SustainedPoint point = point(0, shortTransverse("residual", 30, 30, 30));
        assertThrows(IllegalArgumentException.class, () -> utilisation(point, 48, 1.5));
        assertThrows(IllegalArgumentException.class, () -> utilisation(point, 0, 1));
    }
}
