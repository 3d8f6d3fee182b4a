package org.shortgrain.mechanics.concentration;

import java.util.List;
import java.util.Locale;
import org.shortgrain.mechanics.Computed.Input;
import org.shortgrain.mechanics.Computed.Validity;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.terms.Citation;

/**
 * Fillets on both sides of a step from a larger to a smaller section, nominal stress on the smaller one.
 *
 * <p>Range: h/r from 0.1 to 20 with h = (D - d)/2. Outside it the result is marked as outside its range.
 *
 * @param loading shape of the section and loading
 * @param larger  larger height or diameter D (m)
 * @param smaller smaller height or diameter d (m)
 * @param radius  fillet radius r (m)
 */
public record ShoulderFillet(Loading loading, Given larger, Given smaller, Given radius) implements Concentration {

    /** Shape of the section and loading, each with its fitted charts. */
    public enum Loading {
        /** Flat bar in tension. Fitted Peterson charts, quoted on an engineering-formula site (secondary). */
        FLAT_TENSION("flat bar in tension", Sources.PETERSON,
                new StepFit(0.1, 2, new double[][] {{1.006, 1.008, -0.044}, {-0.115, -0.584, 0.315},
                    {0.245, -1.006, -0.257}, {-0.135, 0.582, -0.017}}),
                new StepFit(2, 20, new double[][] {{1.020, 1.009, -0.048}, {-0.065, -0.165, -0.007},
                    {-3.459, 1.266, -0.016}, {3.505, -2.109, 0.069}})),
        /** Round bar in tension. Fitted Peterson charts, quoted on an engineering-formula site (secondary). */
        ROUND_TENSION("round bar in tension", Sources.PETERSON,
                new StepFit(0.1, 2, new double[][] {{0.926, 1.157, -0.099}, {0.012, -3.036, 0.961},
                    {-0.302, 3.977, -1.744}, {0.365, -2.098, 0.878}}),
                new StepFit(2, 20, new double[][] {{1.200, 0.860, -0.022}, {-1.805, -0.346, -0.038},
                    {2.198, -0.486, 0.165}, {-0.593, -0.028, -0.106}})),
        /** Flat bar in bending in its plane. Roark's Formulas, 7th ed., Table 17.1 (memory). */
        FLAT_BENDING("flat bar in bending", Sources.ROARK,
                new StepFit(0.1, 2, new double[][] {{1.007, 1.000, -0.031}, {-0.270, -2.404, 0.749},
                    {0.677, 1.133, -0.904}, {-0.414, 0.271, 0.186}}),
                new StepFit(2, 20, new double[][] {{1.042, 0.982, -0.036}, {-3.599, 1.619, -0.431},
                    {6.084, -5.607, 1.158}, {-2.527, 3.006, -0.691}}));

        private final String word;
        private final Citation source;
        private final StepFit shallow;
        private final StepFit deep;

        Loading(String word, Citation source, StepFit shallow, StepFit deep) {
            this.word = word;
            this.source = source;
            this.shallow = shallow;
            this.deep = deep;
        }

        StepFit fit(double ratio) {
            return ratio <= shallow.toRatio() ? shallow : deep;
        }
    }

    /** Refuses sections that do not step down and a fillet without a radius. */
    public ShoulderFillet {
        if (!(smaller.value().low() > 0 && smaller.value().high() < larger.value().low() && radius.value().low() > 0)) {
            throw new IllegalArgumentException("no fillet: D " + larger.value() + ", d " + smaller.value() + ", r "
                    + radius.value() + " m");
        }
    }

    @Override
    public String name() {
        return "a shoulder fillet, " + loading.word;
    }

    @Override
    public Section nominal() {
        return Section.NET;
    }

    @Override
    public String equation() {
        return "Kt = C1 + C2 q + C3 q^2 + C4 q^3, Ci = ai + bi sqrt(h/r) + ci h/r, q = 2h/D, h = (D - d)/2";
    }

    @Override
    public List<Given> dimensions() {
        return List.of(larger, smaller, radius);
    }

    @Override
    public List<Input> inputs() {
        return List.of(larger.as("D", "larger height or diameter", SiUnit.METRE),
                smaller.as("d", "smaller height or diameter", SiUnit.METRE),
                radius.as("r", "fillet radius", SiUnit.METRE));
    }

    @Override
    public double factor(double... dimensions) {
        double depth = (dimensions[0] - dimensions[1]) / 2;
        double ratio = depth / dimensions[2];
        return loading.fit(ratio).factor(ratio, 2 * depth / dimensions[0]);
    }

    @Override
    public Validity validity() {
        double least = (larger.value().low() - smaller.value().high()) / 2 / radius.value().high();
        double most = (larger.value().high() - smaller.value().low()) / 2 / radius.value().low();
        double from = loading.shallow.fromRatio();
        double to = loading.deep.toRatio();
        return new Validity(least >= from && most <= to, String.format(Locale.ROOT,
                "h/r from %.3f to %.3f; the charts are fitted from %.1f to %.0f.", least, most, from, to));
    }

    @Override
    public List<Citation> sources() {
        return List.of(loading.source);
    }
}
