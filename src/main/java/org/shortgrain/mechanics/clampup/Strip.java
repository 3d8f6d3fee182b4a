package org.shortgrain.mechanics.clampup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed.Input;
import org.shortgrain.mechanics.Extremes;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;

/**
 * A straight strip of constant thickness that is bent when a gap is pulled shut.
 *
 * @param support       how it is held
 * @param span          length L from support to the pulled place, or between supports (m)
 * @param thickness     thickness t (m)
 * @param width         width b (m); empty when not known, and then the strip is taken as wide
 * @param modulus       Young's modulus E (Pa)
 * @param poisson       Poisson's ratio
 * @param yieldStrength yield strength (Pa); empty when not known
 */
public record Strip(Support support, Given span, Given thickness, Optional<Given> width, Given modulus, Given poisson,
        Optional<Given> yieldStrength) {

    /** A strip wider than so many thicknesses is kept from curling across and bends as a plate. Common practice. */
    private static final double WIDE = 5;

    /** Refuses dimensions and moduli that are not above zero. */
    public Strip {
        if (!(span.value().low() > 0 && thickness.value().low() > 0 && modulus.value().low() > 0
                && width.map(w -> w.value().low() > 0).orElse(true))) {
            throw new IllegalArgumentException("span, thickness, width and modulus must be above zero");
        }
    }

    /** {@return whether it bends as a wide plate; a strip of unknown width does, which is the higher stress} */
    public boolean isWide() {
        return width.map(w -> w.value().high() > WIDE * thickness.value().low()).orElse(true);
    }

    /** {@return E, or E/(1 - nu^2) for a wide plate (Pa)} */
    double stiffModulus(double youngs, double poissons) {
        return isWide() ? youngs / (1 - poissons * poissons) : youngs;
    }

    /**
     * {@return the peak surface stress when bent by a deflection, k E t g/L^2 (Pa)}
     *
     * <p>Rises with gap, thickness and modulus and falls with span throughout, so corners are extremes.
     *
     * @param gap deflection (m)
     */
    public Band stress(Band gap) {
        return Extremes.of(v -> support.stressFactor() * stiffModulus(v[0], v[1]) * v[2] * v[3] / (v[4] * v[4]),
                modulus.value(), poisson.value(), thickness.value(), gap, span.value());
    }

    /**
     * {@return the stiffness of the strip, c E I/L^3 (N/m); empty when the width is not known}
     */
    public Optional<Band> stiffness() {
        return width.map(b -> Extremes.of(
                v -> support.forceFactor() * stiffModulus(v[0], v[1]) * secondMoment(v[2], v[3]) / (v[4] * v[4] * v[4]),
                modulus.value(), poisson.value(), b.value(), thickness.value(), span.value()));
    }

    /**
     * {@return the peak surface stress under a force that cannot close the gap (Pa); empty when the width is not known}
     *
     * <p>k t L F/(c I): falls with thickness and width and rises with span, so corners are extremes.
     *
     * @param force the force (N)
     */
    public Optional<Band> stressUnder(Band force) {
        return width.map(b -> Extremes.of(
                v -> support.stressFactor() / support.forceFactor() * v[0] * v[1] * v[2] / secondMoment(v[3], v[1]),
                force, thickness.value(), span.value(), b.value()));
    }

    private static double secondMoment(double width, double thickness) {
        return width * thickness * thickness * thickness / 12;
    }

    /**
     * {@return the inputs of the strip, in the order of the equation}
     *
     * @param suffix mark of this strip among several; may be empty
     */
    List<Input> inputs(String suffix) {
        List<Input> inputs = new ArrayList<>();
        inputs.add(modulus.as("E" + suffix, "Young's modulus", SiUnit.PASCAL));
        inputs.add(poisson.as("nu" + suffix, "Poisson's ratio", SiUnit.ONE));
        inputs.add(thickness.as("t" + suffix, "thickness of the strip", SiUnit.METRE));
        inputs.add(span.as("L" + suffix, "span", SiUnit.METRE));
        width.ifPresent(b -> inputs.add(b.as("b" + suffix, "width of the strip", SiUnit.METRE)));
        return inputs;
    }

    /** {@return notes on how the strip was taken} */
    List<String> notes() {
        if (width.isEmpty()) {
            return List.of("Width not given: taken as a wide plate, which is the higher stress.");
        }
        return isWide() ? List.of("Wider than 5 thicknesses: plate factor 1/(1 - nu^2) applied.") : List.of();
    }
}
