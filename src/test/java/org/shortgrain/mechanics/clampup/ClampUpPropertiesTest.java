package org.shortgrain.mechanics.clampup;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shortgrain.mechanics.clampup.Strips.MM;
import static org.shortgrain.mechanics.clampup.Strips.strip;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Given;

/** What must hold for every gap, over drawn dimensions. */
class ClampUpPropertiesTest {

    private static Band stress(Strip strip, double min, double max, Optional<Given> preload) {
        return new PulledShut(strip, Given.limits(min * MM, max * MM, "drawn"), new Shim.None(), preload).stress().value();
    }

    @Property
    void moreGapNeverLowersTheUpperBound(@ForAll Support support,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 2) double min,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 2) double width,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 2) double more,
            @ForAll @Scale(6) @DoubleRange(min = 1, max = 5000) double preload) {
        Strip strip = strip(support, 120, 6, 25);
        Optional<Given> cap = Optional.of(Given.limits(0.75 * preload, 1.25 * preload, "drawn"));
        assertTrue(stress(strip, min, min + width + more, cap).high() >= stress(strip, min, min + width, cap).high());
    }

    @Property
    void noValueInsideTheRangesOfTheInputsLeavesTheBand(@ForAll Support support,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double gap,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double span,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double thickness,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double preload) {
        Strip ranged = new Strip(support, Given.limits(90 * MM, 130 * MM, "drawn"), Given.limits(4 * MM, 7 * MM, "drawn"),
                Optional.of(Given.exact(20 * MM, "drawn")), Given.exact(71.7e9, "drawn"), Given.exact(0.33, "drawn"),
                Optional.empty());
        Band band = stress(ranged, 0.1, 0.8, Optional.of(Given.limits(10, 400, "drawn")));
        double inside = stress(strip(support, 90 + 40 * span, 4 + 3 * thickness, 20), 0.1 + 0.7 * gap, 0.1 + 0.7 * gap,
                Optional.of(Given.exact(10 + 390 * preload, "drawn"))).value();
        double rounding = 1e-9 * band.high();
        assertTrue(band.low() - rounding <= inside && inside <= band.high() + rounding);
    }
}
