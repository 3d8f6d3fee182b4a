package org.shortgrain.mechanics.concentration;

import java.util.List;
import java.util.Locale;
import org.shortgrain.mechanics.Computed.Input;
import org.shortgrain.mechanics.Computed.Validity;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.terms.Citation;

/**
 * Transverse hole through a round bar in tension, on the gross section:
 * {@code Ktg = 12.806 - 42.602 x + 58.333 x^2}, x = d/D. Usable from about 0.15 to 0.4 (memory).
 *
 * @param hole diameter d of the hole (m)
 * @param bar  diameter D of the bar (m)
 */
public record CrossHoleInRoundBar(Given hole, Given bar) implements Concentration {

    /** Smallest usable d/D (memory). */
    private static final double SMALLEST = 0.15;
    /** Largest usable d/D (memory); the parabola has its lowest point at 0.365, so the upper end is nearly flat. */
    private static final double LARGEST = 0.4;

    /** Refuses a hole that is not smaller than the bar. */
    public CrossHoleInRoundBar {
        if (!(hole.value().low() > 0 && hole.value().high() < bar.value().low())) {
            throw new IllegalArgumentException("hole " + hole.value() + " m does not fit into " + bar.value() + " m");
        }
    }

    @Override
    public String name() {
        return "a cross hole in a round bar";
    }

    @Override
    public Section nominal() {
        return Section.GROSS;
    }

    @Override
    public String equation() {
        return "Ktg = 12.806 - 42.602 x + 58.333 x^2, x = d/D";
    }

    @Override
    public List<Given> dimensions() {
        return List.of(hole, bar);
    }

    @Override
    public List<Input> inputs() {
        return List.of(hole.as("d", "diameter of the hole", SiUnit.METRE),
                bar.as("D", "diameter of the bar", SiUnit.METRE));
    }

    @Override
    public double factor(double... dimensions) {
        double x = dimensions[0] / dimensions[1];
        return 12.806 + x * (-42.602 + 58.333 * x);
    }

    @Override
    public Validity validity() {
        double least = hole.value().low() / bar.value().high();
        double most = hole.value().high() / bar.value().low();
        return new Validity(least >= SMALLEST && most <= LARGEST, String.format(Locale.ROOT,
                "d/D from %.3f to %.3f; usable from %.2f to %.1f.", least, most, SMALLEST, LARGEST));
    }

    @Override
    public List<Citation> sources() {
        return List.of(Sources.PETERSON);
    }
}
