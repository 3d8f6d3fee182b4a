package org.shortgrain.mechanics.quench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;

class PropertyCurveTest {

    private final PropertyCurve curve = PropertyCurve.through(new double[] {-196, 20, 100, 300},
            new double[] {17, 23, 24.2, 27});

    @Test
    void aCurveIsStraightBetweenPointsAndHeldBeyondTheEnds() {
        assertEquals(23.6, curve.at(60), 1e-12);
        assertEquals(23, curve.at(20), 1e-12);
        assertEquals(17, curve.at(-270), 0);
        assertEquals(27, curve.at(500), 0);
    }

    @Property(tries = 200)
    void theIntegralIsThatOfTheCurve(@ForAll @DoubleRange(min = -250, max = 400) double from,
            @ForAll @DoubleRange(min = -250, max = 400) double to) {
        double sum = 0;
        int pieces = 50;
        for (int i = 0; i < pieces; i++) {
            double a = from + (to - from) * i / pieces;
            double b = from + (to - from) * (i + 1) / pieces;
            sum += a == b ? 0 : Math.signum(b - a) * new GaussIntegratorFactory()
                    .legendre(5, Math.min(a, b), Math.max(a, b)).integrate(curve::at);
        }
        assertEquals(sum, curve.integral(from, to), 0.1, "of 1e4; a piece with a kink is integrated to 1e-2");
    }

    @Property(tries = 200)
    void severalTemperaturesGiveWhatEachGivesAlone(
            @ForAll @Size(min = 1, max = 8) List<@DoubleRange(min = -250, max = 400) Double> temperatures) {
        double[] celsius = temperatures.stream().mapToDouble(Double::doubleValue).toArray();
        celsius[0] = 100;
        double[] property = new double[celsius.length];

        curve.at(celsius, property);

        for (int i = 0; i < celsius.length; i++) {
            assertEquals(curve.at(celsius[i]), property[i], 0);
        }
    }

    @Test
    void temperaturesThatDoNotRiseAreRefused() {
        assertThrows(IllegalArgumentException.class,
                () -> PropertyCurve.through(new double[] {20, 20}, new double[] {1, 2}));
        assertThrows(IllegalArgumentException.class, () -> PropertyCurve.through(new double[0], new double[0]));
    }
}
