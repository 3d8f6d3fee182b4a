package org.shortgrain.mechanics.fit;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shortgrain.mechanics.fit.Fits.MM;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Given;

/** What must hold for every fit, over drawn dimensions. */
class FitPropertiesTest {

    private static Band boreHoop(double diameter, double outside, double bore, double min, double max, double coldest) {
        Interference fit = new Interference.Stated(Given.exact(diameter, "drawn"), Given.limits(min, max, "drawn"));
        return new FitStress(new InterferenceFit(fit, Optional.of(Given.exact(outside, "drawn")),
                Given.exact(bore, "drawn"), Fits.ALUMINIUM, Fits.STEEL, Given.exact(20, "drawn"),
                List.of(Given.exact(coldest, "drawn")))).boreHoop().value();
    }

    @Property
    void moreInterferenceNeverLowersTheUpperBound(@ForAll @Scale(6) @DoubleRange(min = -0.05, max = 0.1) double min,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.1) double width,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.1) double more) {
        Band less = boreHoop(14 * MM, 28 * MM, 10 * MM, min * MM, (min + width) * MM, -55);
        Band greater = boreHoop(14 * MM, 28 * MM, 10 * MM, min * MM, (min + width + more) * MM, -55);
        assertTrue(greater.high() >= less.high());
    }

    @Property
    void thinnerWallNeverLowersTheUpperBound(@ForAll @Scale(6) @DoubleRange(min = 1.05, max = 10) double ratio,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 1) double thinning,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.95) double hollow) {
        double thinner = 1 + (ratio - 1) * thinning;
        Band thick = boreHoop(14 * MM, 14 * ratio * MM, 14 * hollow * MM, 0, 0.04 * MM, 20);
        Band thin = boreHoop(14 * MM, 14 * thinner * MM, 14 * hollow * MM, 0, 0.04 * MM, 20);
        assertTrue(thin.high() >= thick.high() * (1 - 1e-12));
    }

    @Property
    void colderNeverLowersTheUpperBoundOfSteelInAluminium(@ForAll @Scale(6) @DoubleRange(min = -100, max = 80) double temperature,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 60) double colder) {
        Band warm = boreHoop(14 * MM, 28 * MM, 10 * MM, 0, 0.04 * MM, temperature);
        Band cold = boreHoop(14 * MM, 28 * MM, 10 * MM, 0, 0.04 * MM, temperature - colder);
        assertTrue(cold.high() >= warm.high());
    }

    @Property
    void noValueInsideTheRangesOfTheInputsLeavesTheBand(@ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double wall,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double bore,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double modulus,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double poisson,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double delta) {
        Band band = new FitStress(new InterferenceFit(Fits.interference(-0.01 * MM, 0.04 * MM),
                Optional.of(Given.limits(20 * MM, 30 * MM, "drawn")), Given.limits(6 * MM, 12 * MM, "drawn"),
                new FitMaterial("outer", Given.limits(66e9, 74e9, "drawn"), Given.limits(0.31, 0.35, "drawn"),
                        Given.exact(23e-6, "drawn"), Optional.empty()),
                Fits.STEEL, Given.exact(20, "drawn"), List.of())).boreHoop().value();
        LamePair inside = new LamePair(14 * MM, (20 + 10 * wall) * MM, (6 + 6 * bore) * MM, 66e9 + 8e9 * modulus,
                0.31 + 0.04 * poisson, 200e9, 0.29);
        double hoop = inside.boreHoop((-0.01 + 0.05 * delta) * MM);
        double rounding = 1e-9 * band.high();
        assertTrue(band.low() - rounding <= hoop && hoop <= band.high() + rounding);
    }
}
