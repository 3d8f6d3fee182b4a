package org.shortgrain.mechanics.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Computed.Input;
import org.shortgrain.mechanics.Computed.Validity;
import org.shortgrain.mechanics.Extremes;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.SourceStatus;

/**
 * A section made of another alloy or temper for the same load: scale of its dimension, ratio of its mass.
 *
 * <p>Of several strengths the one that falls most governs. Range of validity: same load and shape, linear in the load;
 * the new strength must be that of the new thickness, since strength falls with the thickness of the stock.
 *
 * @param mode          what governs the size
 * @param strengths     the strengths that count, one or more
 * @param densityBefore density of the old metal (kg/m3)
 * @param densityAfter  density of the new metal (kg/m3)
 */
public record Resizing(SizingMode mode, List<StrengthChange> strengths, Given densityBefore, Given densityAfter) {

    private static final List<Citation> SOURCES =
            List.of(new Citation("own-derivation", "strength indices at equal load", SourceStatus.DERIVED));
    private static final List<String> AFTERWARDS = List.of(
            "Check the envelope dimension by dimension, edge distance e/D, bearing clearance and the thickness of stock.",
            "Take the strength and the stress-corrosion level of the new temper at the new thickness.",
            "Bolt-up and pull-down stress rises with thickness at the same gap: compute it again.");

    /** Copies the list and refuses an empty one. */
    public Resizing {
        strengths = List.copyOf(strengths);
        if (strengths.isEmpty()) {
            throw new IllegalArgumentException("no strength to compare");
        }
    }

    /** {@return the strength that falls most, which governs} */
    public StrengthChange governing() {
        return strengths.stream().max(Comparator.comparingDouble((StrengthChange s) -> s.ratio().value())).orElseThrow();
    }

    /** {@return r, the greatest of the ratios of old to new strength, at each end of its range} */
    public Band ratio() {
        return new Band(greatest(Band::value), greatest(Band::low), greatest(Band::high));
    }

    private double greatest(ToDoubleFunction<Band> end) {
        return strengths.stream().map(StrengthChange::ratio).mapToDouble(end).max().orElseThrow();
    }

    /** {@return scale of the dimension that the mode names, {@code section.dimension-scale}} */
    public Computed dimensionScale() {
        return result("section.dimension-scale", "Scale of the section: " + mode.dimension(),
                "scale = r^" + exponent(mode.dimensionExponent()) + ", r = F_old/F_new",
                v -> Math.pow(v[0], mode.dimensionExponent()), List.of());
    }

    /** {@return mass of the new section over that of the old, {@code section.mass-ratio}} */
    public Computed massRatio() {
        return result("section.mass-ratio", "Mass of the new section over the old",
                "m = r^" + exponent(mode.areaExponent()) + " rho_new/rho_old, r = F_old/F_new",
                v -> Math.pow(v[0], mode.areaExponent()) * v[2] / v[1],
                List.of(densityBefore.as("rho_old", "density of the old metal", SiUnit.KILOGRAM_PER_CUBIC_METRE),
                        densityAfter.as("rho_new", "density of the new metal", SiUnit.KILOGRAM_PER_CUBIC_METRE)));
    }

    /**
     * {@return the scaled dimension, {@code section.new-dimension} (m)}
     *
     * @param before the dimension as it is (m)
     */
    public Computed newDimension(Given before) {
        Computed scale = dimensionScale();
        Band dimension = Extremes.of(v -> v[0] * v[1], before.value(), scale.value());
        List<Input> inputs = new ArrayList<>(scale.inputs());
        inputs.add(before.as("x", "dimension as it is", SiUnit.METRE));
        return new Computed("section.new-dimension", "New size: " + mode.dimension(), SiUnit.METRE, dimension,
                "x_new = x scale; " + scale.equation(), inputs, List.of(), scale.rangeBasis(), scale.validity(),
                scale.sources(), scale.notes(), List.of());
    }

    /**
     * {@return whether the scaled dimension surely fits into the room that the neighbours leave}
     *
     * @param before    the dimension as it is (m)
     * @param available the room (m)
     */
    public boolean fitsInto(Given before, Given available) {
        return newDimension(before).value().high() <= available.value().low();
    }

    private Computed result(String id, String title, String equation, ToDoubleFunction<double[]> value,
            List<Input> more) {
        List<Input> inputs = new ArrayList<>();
        for (StrengthChange strength : strengths) {
            inputs.add(strength.before().as("F_old", strength.name() + " of the old metal", SiUnit.PASCAL));
            inputs.add(strength.after().as("F_new", strength.name() + " of the new metal", SiUnit.PASCAL));
        }
        inputs.addAll(more);
        Band range = Extremes.of(value, ratio(), densityBefore.value(), densityAfter.value());
        return new Computed(id, title, SiUnit.ONE, range, equation, inputs,
                List.of(new Computed.Step("r", "old over new strength, governed by " + governing().name(),
                        SiUnit.ONE, ratio())),
                "limits of strengths and densities", new Validity(true, "Same load, same shape, linear in the load."),
                SOURCES, AFTERWARDS, List.of());
    }

    private static String exponent(double exponent) {
        return exponent == 1.0 / 3 ? "(1/3)" : exponent == 1.0 / 2 ? "(1/2)" : exponent == 2.0 / 3 ? "(2/3)"
                : String.valueOf((int) exponent);
    }
}
