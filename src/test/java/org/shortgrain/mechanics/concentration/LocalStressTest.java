package org.shortgrain.mechanics.concentration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Computed.Validity;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;

class LocalStressTest {

    private static final double MPA = 1e6;
    private static final Computed HOLE = new HoleInWidePlate().compute();

    private static Computed nominal(double value, double low, double high) {
        return new Computed("test.nominal", "nominal stress", SiUnit.PASCAL, new Band(value * MPA, low * MPA, high * MPA),
                "stated", List.of(), List.of(), "stated", new Validity(true, "Stated."), List.of(), List.of(), List.of());
    }

    private static Optional<Given> yieldAt(double value) {
        return Optional.of(Given.exact(value * MPA, "test"));
    }

    @Test
    void belowYieldTheLocalStressIsTheElasticPeak() {
        Computed local = LocalStress.of(nominal(50, 40, 60), HOLE, yieldAt(400));
        assertEquals(new Band(150 * MPA, 120 * MPA, 180 * MPA), local.value());
    }

    @Test
    void aPeakAboveYieldIsHeldToYieldAndBothAreShown() {
        Computed local = LocalStress.of(nominal(150, 100, 200), HOLE, yieldAt(400));
        assertEquals(new Band(400 * MPA, 300 * MPA, 400 * MPA), local.value());
        assertEquals(600 * MPA, local.steps().get(0).value().high(), 0);
        assertTrue(local.notes().get(0).contains("redistributes"));
    }

    @Test
    void withoutAYieldStrengthNothingIsHeldBack() {
        Computed local = LocalStress.of(nominal(150, 100, 200), HOLE, Optional.empty());
        assertEquals(600 * MPA, local.value().high(), 0);
    }

    @Property
    void aHigherNominalStressNeverLowersTheUpperBound(@ForAll @Scale(6) @DoubleRange(min = -300, max = 300) double nominal,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 300) double more) {
        Computed less = LocalStress.of(nominal(nominal, nominal, nominal), HOLE, yieldAt(400));
        Computed greater = LocalStress.of(nominal(nominal, nominal, nominal + more), HOLE, yieldAt(400));
        assertTrue(greater.value().high() >= less.value().high());
    }
}
