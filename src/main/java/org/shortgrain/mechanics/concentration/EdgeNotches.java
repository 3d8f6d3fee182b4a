package org.shortgrain.mechanics.concentration;

import java.util.List;
import java.util.Locale;
import org.shortgrain.mechanics.Computed.Input;
import org.shortgrain.mechanics.Computed.Validity;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.terms.Citation;

/**
 * Two equal U-shaped notches in opposite edges of a flat bar in tension, nominal stress on the section between them.
 *
 * <p>Range: h/r from 0.1 to 50. At h = r the fit is that of semicircular notches,
 * {@code Kt = 3.065 - 3.370 q + 0.647 q^2 + 0.659 q^3}. Roark's Formulas, 7th ed., Table 17.1 (memory).
 *
 * @param height height D of the bar (m)
 * @param depth  depth h of each notch (m)
 * @param radius radius r at the root (m)
 */
public record EdgeNotches(Given height, Given depth, Given radius) implements Concentration {

    private static final StepFit SHALLOW = new StepFit(0.1, 2, new double[][] {{0.850, 2.628, -0.413},
        {-1.119, -4.826, 2.575}, {3.563, -0.514, -2.402}, {-2.294, 2.713, 0.240}});
    private static final StepFit DEEP = new StepFit(2, 50, new double[][] {{0.833, 2.069, -0.009},
        {2.732, -4.157, 0.176}, {-8.859, 5.327, -0.320}, {6.294, -3.239, 0.154}});

    /** Refuses notches that meet or have no radius. */
    public EdgeNotches {
        if (!(depth.value().low() > 0 && 2 * depth.value().high() < height.value().low() && radius.value().low() > 0)) {
            throw new IllegalArgumentException("no notches: D " + height.value() + ", h " + depth.value() + ", r "
                    + radius.value() + " m");
        }
    }

    @Override
    public String name() {
        return "two edge notches, flat bar in tension";
    }

    @Override
    public Section nominal() {
        return Section.NET;
    }

    @Override
    public String equation() {
        return "Kt = C1 + C2 q + C3 q^2 + C4 q^3, Ci = ai + bi sqrt(h/r) + ci h/r, q = 2h/D";
    }

    @Override
    public List<Given> dimensions() {
        return List.of(height, depth, radius);
    }

    @Override
    public List<Input> inputs() {
        return List.of(height.as("D", "height of the bar", SiUnit.METRE),
                depth.as("h", "depth of each notch", SiUnit.METRE),
                radius.as("r", "radius at the root", SiUnit.METRE));
    }

    @Override
    public double factor(double... dimensions) {
        double ratio = dimensions[1] / dimensions[2];
        return fit(ratio).factor(ratio, 2 * dimensions[1] / dimensions[0]);
    }

    static StepFit fit(double ratio) {
        return ratio <= SHALLOW.toRatio() ? SHALLOW : DEEP;
    }

    @Override
    public Validity validity() {
        double least = depth.value().low() / radius.value().high();
        double most = depth.value().high() / radius.value().low();
        return new Validity(least >= SHALLOW.fromRatio() && most <= DEEP.toRatio(), String.format(Locale.ROOT,
                "h/r from %.3f to %.3f; fitted from %.1f to %.0f.", least, most, SHALLOW.fromRatio(), DEEP.toRatio()));
    }

    @Override
    public List<Citation> sources() {
        return List.of(Sources.ROARK);
    }
}
