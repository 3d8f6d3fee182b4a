package org.shortgrain.mechanics.concentration;

import java.util.List;
import java.util.Locale;
import org.shortgrain.mechanics.Computed.Input;
import org.shortgrain.mechanics.Computed.Validity;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.terms.Citation;

/**
 * Central round hole in a strip in tension, on the net section: {@code Ktn = 3 - 3.13 x + 3.66 x^2 - 1.53 x^3}, x =
 * d/W.
 *
 * <p>A calculator page calls the same polynomial a gross-section factor. It is not: only as net-section factor does it
 * meet Howland's results, within 0.4 % from x = 0.1 to 0.5, which is the range claimed here.
 *
 * @param diameter diameter d of the hole (m)
 * @param width    width W of the strip (m)
 */
public record HoleInStrip(Given diameter, Given width) implements Concentration {

    /** Widest hole, in widths of the strip, at which the polynomial was held against Howland's results. */
    private static final double LARGEST_CHECKED = 0.5;

    /** Refuses a hole that is not smaller than the strip. */
    public HoleInStrip {
        if (!(diameter.value().low() > 0 && diameter.value().high() < width.value().low())) {
            throw new IllegalArgumentException("hole " + diameter.value() + " m does not fit into " + width.value() + " m");
        }
    }

    @Override
    public String name() {
        return "a hole in a strip";
    }

    @Override
    public Section nominal() {
        return Section.NET;
    }

    @Override
    public String equation() {
        return "Ktn = 3 - 3.13 x + 3.66 x^2 - 1.53 x^3, x = d/W";
    }

    @Override
    public List<Given> dimensions() {
        return List.of(diameter, width);
    }

    @Override
    public List<Input> inputs() {
        return List.of(diameter.as("d", "diameter of the hole", SiUnit.METRE),
                width.as("W", "width of the strip", SiUnit.METRE));
    }

    @Override
    public double factor(double... dimensions) {
        double x = dimensions[0] / dimensions[1];
        return 3 + x * (-3.13 + x * (3.66 - 1.53 * x));
    }

    /** {@return the factor on the gross section at the best estimates, Ktn/(1 - x)} */
    public double grossFactor() {
        double x = diameter.value().value() / width.value().value();
        return factor(x, 1) / (1 - x);
    }

    @Override
    public Validity validity() {
        double x = diameter.value().high() / width.value().low();
        return new Validity(x <= LARGEST_CHECKED,
                String.format(Locale.ROOT, "d/W = %.3f; checked against Howland up to %.1f.", x, LARGEST_CHECKED));
    }

    @Override
    public List<Citation> sources() {
        return List.of(Sources.PETERSON, Sources.HOWLAND);
    }
}
