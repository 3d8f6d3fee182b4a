package org.shortgrain.mechanics.water;

import java.util.List;
import java.util.Optional;
import org.shortgrain.mechanics.Computed.Input;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;

/**
 * A liquid that may stand in a part.
 *
 * @param name    its name
 * @param density density rho (kg/m3), above 0
 * @param tension surface tension gamma against air (N/m), above 0
 */
public record Liquid(String name, Given density, Given tension) {

    /** Standard gravity (m/s2): exact by definition. */
    public static final double GRAVITY = 9.80665;

    /** Clean water at 20 degC. Salt raises the surface tension by a few per cent, soap and oil lower it by half. */
    public static final Liquid WATER = new Liquid("water at 20 degC", constant(998.2), constant(0.0728));

    /** Refuses a liquid that cannot be. */
    public Liquid {
        if (!(density.value().low() > 0 && tension.value().low() > 0)) {
            throw new IllegalArgumentException("no liquid: density " + density.value() + " kg/m3, surface tension "
                    + tension.value() + " N/m");
        }
    }

    private static Given constant(double value) {
        return new Given(Band.exact(value), "property of clean water at 20 degC", Optional.of(Sources.WATER));
    }

    /** {@return what a computation with surface tension puts among its inputs} */
    List<Input> inputs() {
        return List.of(tension.as("gamma", "surface tension of " + name, SiUnit.NEWTON_PER_METRE),
                density.as("rho", "density of " + name, SiUnit.KILOGRAM_PER_CUBIC_METRE), gravity());
    }

    /** {@return standard gravity as an input} */
    static Input gravity() {
        return Given.exact(GRAVITY, "standard gravity, by definition").as("g", "gravity", SiUnit.METRE_PER_SECOND_SQUARED);
    }
}
