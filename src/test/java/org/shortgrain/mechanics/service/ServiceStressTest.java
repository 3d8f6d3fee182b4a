package org.shortgrain.mechanics.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.shortgrain.mechanics.Given;

class ServiceStressTest {

    private static Given given(double value) {
        return Given.exact(value, "test");
    }

    /** Lame by hand: ri 50, ro 60 mm, p 10 MPa: 10 (3600 + 2500)/(3600 - 2500) = 55.4545 MPa. */
    @Test
    void theHoopOfAThickWallIsThatOfLame() {
        assertEquals(55.454545e6, ServiceStress.pressureHoop(given(10e6), given(0.1), given(0.01)).value().value(), 1);
    }

    /** Membrane theory of thin vessels, p r/t with r at the middle of the wall; the difference falls with (t/r) squared. */
    @Property
    void aThinWallCarriesPressureTimesRadiusOverThickness(@ForAll @DoubleRange(min = 0.05, max = 2) @Scale(6) double bore,
            @ForAll @DoubleRange(min = 1e5, max = 1e7) double pressure) {
        double wall = bore / 1000;
        double membrane = pressure * (bore + wall) / 2 / wall;
        assertEquals(1, ServiceStress.pressureHoop(given(pressure), given(bore), given(wall)).value().value() / membrane,
                1e-5);
    }

    @Property
    void aThinnerWallNeverCarriesLess(@ForAll @DoubleRange(min = 0.001, max = 0.05) @Scale(6) double wall,
            @ForAll @DoubleRange(min = 0.5, max = 1) @Scale(6) double share) {
        double thick = ServiceStress.pressureHoop(given(1e6), given(0.1), given(wall)).value().high();
        double thin = ServiceStress.pressureHoop(given(1e6), given(0.1), given(wall * share)).value().high();
        assertEquals(Math.max(thick, thin), thin, 1e-9);
    }

    @Test
    void forceOverAreaTakesTheLeastAreaForTheUpperEnd() {
        var stress = ServiceStress.overArea("spring", given(1000), Given.limits(90e-6, 110e-6, "test"));
        assertEquals(10e6, stress.value().value(), 1);
        assertEquals(1000 / 90e-6, stress.value().high(), 1);
    }

    @Test
    void aWordStandsForAnythingUpToItsShareOfTheLeastYieldStrength() {
        var stress = ServiceStress.shareOfYield("rigging", given(0.25), Given.limits(380e6, 420e6, "test"));
        assertEquals(0, stress.value().low());
        assertEquals(95e6, stress.value().high(), 1);
    }

    @Test
    void aWallOfNoThicknessIsRefused() {
        assertThrows(IllegalArgumentException.class,
                () -> ServiceStress.pressureHoop(given(1e6), given(0.1), given(0)));
    }
}
