package org.shortgrain.mechanics.crack;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WeightFunctionTest {

    private static final double WIDE = Double.POSITIVE_INFINITY;

    /** Tension and bending are what it was made from; only rounding and quadrature part them. */
    @ParameterizedTest
    @CsvSource({"0.2, 0.2", "0.2, 0.8", "0.6, 0.4", "1, 0.05", "1, 0.8", "1.6, 0.5"})
    void itReturnsTheCasesItWasMadeFrom(double ac, double at) {
        SurfaceCrack crack = new SurfaceCrack(at, at / ac, 1, WIDE);
        WeightFunction weight = new WeightFunction(crack);
        assertEquals(crack.intensity(1, 0, SurfaceCrack.DEEPEST), weight.atDepth(x -> 1), 1e-9);
        assertEquals(crack.intensity(1, 0, SurfaceCrack.AT_SURFACE), weight.atSurface(x -> 1), 1e-9);
        assertEquals(crack.intensity(0, 1, SurfaceCrack.DEEPEST), weight.atDepth(x -> 1 - 2 * x), 1e-9);
        assertEquals(crack.intensity(0, 1, SurfaceCrack.AT_SURFACE), weight.atSurface(x -> 1 - 2 * x), 1e-9);
    }

    /**
     * A very long crack is an edge crack. Powers of x/a on the faces of an edge crack in a half-plane, K/(S sqrt(pi a)):
     * 1.1215, 0.6825, 0.5240, 0.4410 (handbooks of stress intensity, from memory). The equation it rests on is 0.8 % high
     * there and its bending factor is a fit: 3 %.
     */
    @ParameterizedTest
    @CsvSource({"0, 1.1215", "1, 0.6825", "2, 0.5240", "3, 0.4410"})
    void aVeryLongCrackIsAnEdgeCrack(int power, double handbook) {
        double depth = 1e-3;
        WeightFunction weight = new WeightFunction(new SurfaceCrack(depth, 1, 1, WIDE));
        assertEquals(1, weight.atDepth(x -> Math.pow(x / depth, power)) / Math.sqrt(Math.PI * depth) / handbook, 0.03);
    }

    /** The curve at 500 depths against the crack itself. */
    @ParameterizedTest
    @CsvSource({"SURFACE, 1", "SURFACE, 0.2", "CORNER, 0.6"})
    void theCurveMeetsTheCrackBetweenItsPoints(GrowingCrack.Kind kind, double aspect) {
        GrowingCrack crack = new GrowingCrack(kind, aspect, 0.03, WIDE);
        StressAlongDepth even = StressAlongDepth.uniform(1e8);
        IntensityCurve curve = crack.curve(even);
        for (int i = 1; i < 500; i++) {
            double depth = IntensityCurve.LEAST_DEPTH * Math.pow(crack.greatestDepth() / IntensityCurve.LEAST_DEPTH, i / 500.0);
            assertEquals(1, curve.at(depth) / crack.intensity(depth, even), 2e-3);
        }
    }

    @Test
    void stressThatRisesWithDepthCountsMoreAtTheDeepestPoint() {
        StressAlongDepth rising = new StressAlongDepth(List.of(0.0, 0.01, 0.02), List.of(10e6, 60e6, 90e6));
        GrowingCrack crack = new GrowingCrack(GrowingCrack.Kind.SURFACE, 1, 0.02, WIDE);
        double depth = 0.005;
        double asAtTheSurface = crack.atDepth(depth, StressAlongDepth.uniform(10e6));
        double asAtTheDepth = crack.atDepth(depth, StressAlongDepth.uniform(35e6));
        double between = crack.atDepth(depth, rising);
        assertEquals(true, asAtTheSurface < between && between < asAtTheDepth, asAtTheSurface + " " + between + " "
                + asAtTheDepth);
    }
}
