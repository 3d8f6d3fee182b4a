package org.shortgrain.mechanics.concentration;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Computed.Input;
import org.shortgrain.mechanics.Computed.Step;
import org.shortgrain.mechanics.Computed.Validity;
import org.shortgrain.mechanics.Extremes;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;

/**
 * Stress at the surface of a hole, fillet or notch: Kt times nominal, held to the yield strength, both shown.
 *
 * <p>A peak above yield redistributes; the local stress then stays at about the yield strength in its grain direction.
 * Common practice.
 */
public final class LocalStress {

    private LocalStress() {
    }

    /**
     * {@return the local stress, {@code concentration.local-stress} (Pa); the elastic one is a step of it}
     *
     * @param nominal       nominal stress on the section that the factor names
     * @param factor        concentration factor
     * @param yieldStrength yield strength in the grain direction (Pa); empty when not known, and then nothing is held
     *                      back
     */
    public static Computed of(Computed nominal, Computed factor, Optional<Given> yieldStrength) {
        Band elastic = Extremes.of(v -> v[0] * v[1], nominal.value(), factor.value());
        Band local = yieldStrength.map(y -> held(elastic, y.value())).orElse(elastic);
        List<Input> inputs = Stream.concat(Stream.of(input("S", nominal), input("Kt", factor)),
                yieldStrength.map(y -> y.as("Fty", "yield strength in the grain direction", SiUnit.PASCAL)).stream())
                .toList();
        return new Computed("concentration.local-stress", "Local stress at the surface", SiUnit.PASCAL, local,
                "sigma = min(Kt S, Fty)", inputs,
                List.of(new Step("Kt S", "elastic local stress", SiUnit.PASCAL, elastic)),
                "limits of nominal stress and factor", validity(nominal, factor),
                List.of(Sources.LOCAL_STRESS, Sources.SURFACE_TENSION, Sources.YIELD_CAP),
                List.of(note(elastic, yieldStrength)), List.of());
    }

    private static Band held(Band elastic, Band yield) {
        return new Band(held(elastic.value(), yield.value()), held(elastic.low(), yield.low()),
                held(elastic.high(), yield.high()));
    }

    private static double held(double elastic, double yield) {
        return Math.max(-yield, Math.min(elastic, yield));
    }

    private static Input input(String symbol, Computed computed) {
        return new Input(symbol, computed.title(), computed.unit(), computed.value(), computed.id(), Optional.empty());
    }

    private static Validity validity(Computed nominal, Computed factor) {
        return new Validity(nominal.validity().inside() && factor.validity().inside(),
                nominal.validity().statement() + " " + factor.validity().statement());
    }

    private static String note(Band elastic, Optional<Given> yieldStrength) {
        return yieldStrength.map(y -> elastic.high() > y.value().low()
                        ? "The elastic peak may pass yield and redistributes; the local stress is held to the yield strength."
                        : "The elastic peak stays below yield.")
                .orElse("Yield strength not given: the elastic peak is not held back.");
    }
}
