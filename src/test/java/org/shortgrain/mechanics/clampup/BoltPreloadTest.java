package org.shortgrain.mechanics.clampup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.clampup.BoltPreload.Lubrication;

class BoltPreloadTest {

    private static final double POUND_FORCE = 4.4482216152605;
    private static final double INCH = 0.0254;

    /** 60 in-lb on 0.25 in with an assumed K of 0.20; own arithmetic on the cited spread of torque control. */
    @ParameterizedTest
    @CsvSource({"LUBRICATED, 900, 1500", "AS_RECEIVED, 780, 1620", "UNKNOWN, 780, 1620"})
    void preloadAndItsSpread(Lubrication lubrication, double low, double high) {
        Band preload = new BoltPreload(Given.exact(60 * INCH * POUND_FORCE, "test"), Given.exact(0.20, "assumed"),
                Given.exact(0.25 * INCH, "test"), lubrication).preload().value();
        assertEquals(1200, preload.value() / POUND_FORCE, 1e-9);
        assertEquals(low, preload.low() / POUND_FORCE, 1e-9);
        assertEquals(high, preload.high() / POUND_FORCE, 1e-9);
    }
}
