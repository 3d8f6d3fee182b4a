package org.shortgrain.mechanics.fit;

import java.util.ArrayList;
import java.util.List;
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
 * Stresses that an interference fit keeps up for life, at the lasting temperature that tightens it most.
 *
 * <p>Equation: {@link LamePair}, with the interference grown by temperature,
 * {@code delta(T) = delta + d (alpha_i - alpha_o)(T - T0)}. A steel bush in aluminium is tightest in the cold, an
 * aluminium bush in titanium in the heat; every lasting temperature is evaluated and the worst counts.
 *
 * <p>The range is that of the tolerance extremes: greatest interference at the upper end, smallest at the lower end,
 * together with the ends of every other input that has a range. Each stress rises or falls throughout with each input,
 * so the corners of the box are its extremes: greater interference, stiffer parts and a thinner wall raise the bore
 * hoop. The interface diameter stands at its nominal value in the Lam&eacute; constants; its own tolerance moves the
 * stresses by its relative size, some 0.1 %.
 */
public final class FitStress {

    private static final String EQUATION = "p = (delta/d) / {(co + nu_o)/Eo + (ci - nu_i)/Ei};"
            + " co = (do^2 + d^2)/(do^2 - d^2); ci = (d^2 + di^2)/(d^2 - di^2);"
            + " delta = delta0 + d (alpha_i - alpha_o)(T - T0)";
    private static final String RANGE_BASIS = "tolerance extremes: smallest to greatest interference at the temperature"
            + " evaluated, with the limits of every other input";

    private final InterferenceFit fit;
    private final Given governing;
    private final Given loosest;

    /**
     * Finds the governing temperatures of a fit.
     *
     * @param fit the fit
     */
    public FitStress(InterferenceFit fit) {
        this.fit = fit;
        Given tight = fit.assembly();
        Given loose = fit.assembly();
        for (Given temperature : fit.lasting()) {
            if (interferenceAt(temperature).high() > interferenceAt(tight).high()) {
                tight = temperature;
            }
            if (interferenceAt(temperature).low() < interferenceAt(loose).low()) {
                loose = temperature;
            }
        }
        this.governing = tight;
        this.loosest = loose;
    }

    /** {@return the temperature at which the fit is tightest (degC)} */
    public Given governingTemperature() {
        return governing;
    }

    /** {@return the temperature at which the fit is loosest (degC)} */
    public Given loosestTemperature() {
        return loosest;
    }

    /** {@return the diametral interference that the loosest pair loses from assembly to the loosest temperature (m), 0 or more} */
    public double lostWhenLoosest() {
        return fit.interference().diametral().low() - interferenceAt(loosest).low();
    }

    /** {@return the most that the diametral interference of the tightest pair gains from assembly on (m), 0 or more} */
    public double gainedWhenTightest() {
        return interferenceAt(governing).high() - fit.interference().diametral().high();
    }

    /** {@return contact pressure per diametral interference, while there is any (Pa/m)} */
    Band pressurePerInterference() {
        return rangeOver(Band.exact(1), LamePair::pressure);
    }

    /** {@return hoop tension in the outer part at the bore, {@code fit.bore-hoop} (Pa)} */
    public Computed boreHoop() {
        return boreHoopAt(governing);
    }

    /** {@return hoop tension in the outer part at its outside, {@code fit.outside-hoop} (Pa)} */
    public Computed outsideHoop() {
        return result("fit.outside-hoop", "Hoop stress at the outside of the outer part",
                "sigma = 2 p d^2/(do^2 - d^2)", LamePair::outsideHoop);
    }

    /** {@return the radial stress at the bore per unit hoop stress there, -1/co: always compressive} */
    public double radialPerHoop() {
        return -1 / pair().outerShape();
    }

    /** {@return contact pressure, {@code fit.pressure} (Pa)} */
    public Computed pressure() {
        return pressureAt(governing);
    }

    /** {@return contact pressure at the loosest temperature, {@code fit.pressure} (Pa)} */
    public Computed pressureWhenLoosest() {
        return pressureAt(loosest);
    }

    /** {@return hoop stress in the inner part at the interface, {@code fit.inner-interface-hoop} (Pa)} */
    public Computed innerInterfaceHoop() {
        return result("fit.inner-interface-hoop", "Hoop stress at the outside of the inner part",
                "sigma = -p ci", LamePair::innerInterfaceHoop);
    }

    /** {@return hoop stress in the inner part at its bore, {@code fit.inner-bore-hoop} (Pa)} */
    public Computed innerBoreHoop() {
        return result("fit.inner-bore-hoop", "Hoop stress at the bore of the inner part",
                "sigma = -2 p d^2/(d^2 - di^2); -p for a solid pin", LamePair::innerBoreHoop);
    }

    /** Bore hoop at a temperature other than the governing one (Pa). */
    Computed boreHoopAt(Given temperature) {
        return result("fit.bore-hoop", "Hoop stress at the bore of the outer part", "sigma = p co", LamePair::boreHoop,
                temperature);
    }

    private Computed result(String id, String title, String last, LameStress stress) {
        return result(id, title, last, stress, governing);
    }

    /** Contact pressure at a temperature other than the governing one (Pa). */
    Computed pressureAt(Given temperature) {
        return result("fit.pressure", "Contact pressure of the fit", "p", LamePair::pressure, temperature);
    }

    private Computed result(String id, String title, String last, LameStress stress, Given temperature) {
        return new Computed(id, title, SiUnit.PASCAL, rangeAt(temperature, stress), EQUATION + "; " + last,
                inputs(temperature), steps(stress, temperature), RANGE_BASIS, validity(temperature),
                List.of(Sources.LAME_SHIGLEY, Sources.LAME_BROWN, Sources.THERMAL_GROWTH), notes(temperature),
                List.of());
    }

    /** Diametral interference at a temperature (m): bilinear in its inputs, so its extremes lie at corners. */
    Band interferenceAt(Given temperature) {
        return Extremes.of(v -> interference(v[0], v[1], v[2], v[3], v[4]), fit.interference().diametral(),
                fit.outer().expansion().value(), fit.inner().expansion().value(), fit.assembly().value(),
                temperature.value());
    }

    private double interference(double assembled, double outerExpansion, double innerExpansion, double assembly,
            double temperature) {
        return assembled + fit.interference().diameter() * (innerExpansion - outerExpansion) * (temperature - assembly);
    }

    private LamePair pair() {
        return new LamePair(fit.interference().diameter(), outside().value(), fit.bore().value().value(),
                fit.outer().modulus().value().value(), fit.outer().poisson().value().value(),
                fit.inner().modulus().value().value(), fit.inner().poisson().value().value());
    }

    private Band outside() {
        return fit.outerDiameter().map(Given::value).orElse(Band.exact(Double.POSITIVE_INFINITY));
    }

    private Band rangeAt(Given temperature, LameStress stress) {
        return rangeOver(interferenceAt(temperature), stress);
    }

    private Band rangeOver(Band interference, LameStress stress) {
        return Extremes.of(v -> stress.of(
                        new LamePair(fit.interference().diameter(), v[0], v[1], v[2], v[3], v[4], v[5]), v[6]),
                outside(), fit.bore().value(), fit.outer().modulus().value(), fit.outer().poisson().value(),
                fit.inner().modulus().value(), fit.inner().poisson().value(), interference);
    }

    private List<Input> inputs(Given temperature) {
        List<Input> inputs = new ArrayList<>(fit.interference().inputs());
        fit.outerDiameter().ifPresent(o -> inputs.add(o.as("do", "outside diameter: twice the smallest distance from the"
                + " hole centre to an edge", SiUnit.METRE)));
        inputs.add(fit.bore().as("di", "bore of the inner part", SiUnit.METRE));
        inputs.addAll(material(fit.outer(), "o"));
        inputs.addAll(material(fit.inner(), "i"));
        inputs.add(fit.assembly().as("T0", "temperature of assembly", SiUnit.DEGREE_CELSIUS));
        inputs.add(temperature.as("T", "temperature evaluated", SiUnit.DEGREE_CELSIUS));
        return inputs;
    }

    private static List<Input> material(FitMaterial material, String part) {
        return List.of(material.modulus().as("E" + part, "Young's modulus of " + material.name(), SiUnit.PASCAL),
                material.poisson().as("nu_" + part, "Poisson's ratio of " + material.name(), SiUnit.ONE),
                material.expansion().as("alpha_" + part, "thermal expansion of " + material.name(), SiUnit.PER_KELVIN));
    }

    private List<Step> steps(LameStress stress, Given temperature) {
        List<Step> steps = new ArrayList<>();
        steps.add(new Step("delta0", "diametral interference as assembled", SiUnit.METRE, fit.interference().diametral()));
        steps.add(new Step("delta", "diametral interference at the temperature evaluated", SiUnit.METRE,
                interferenceAt(temperature)));
        steps.add(new Step("p", "contact pressure", SiUnit.PASCAL, rangeAt(temperature, LamePair::pressure)));
        temperatures().forEach(t -> steps.add(new Step("sigma(T)", "the stress at " + t.value().value() + " degC",
                SiUnit.PASCAL, rangeAt(t, stress))));
        return steps;
    }

    private Stream<Given> temperatures() {
        return Stream.concat(Stream.of(fit.assembly()), fit.lasting().stream());
    }

    private Validity validity(Given temperature) {
        return ElasticRange.of(fit, rangeAt(temperature, LamePair::outerEquivalent).high(),
                rangeAt(temperature, LamePair::innerEquivalent).high());
    }

    private List<String> notes(Given temperature) {
        List<String> notes = new ArrayList<>();
        notes.add(fit.interference().equation());
        fit.interference().caution().ifPresent(notes::add);
        if (interferenceAt(temperature).high() <= 0) {
            notes.add("Clearance at every limit: no stress.");
        } else if (interferenceAt(temperature).low() < 0) {
            notes.add("Transition fit: at the smallest interference there is clearance and no stress.");
        }
        if (fit.outerDiameter().isEmpty()) {
            notes.add("Taken as a hole in a wide plate: the nearest edge is far away.");
        } else {
            notes.add("Concentric rings: an eccentric lug peaks a little higher at its thinnest wall.");
        }
        if (fit.lasting().isEmpty()) {
            notes.add("No lasting temperature given: evaluated at assembly temperature only.");
        }
        notes.add("No allowance for flattened asperities, which would lower the stress.");
        return notes;
    }

    /** One of the stresses of a pair of rings, as a function of the interference (m). */
    @FunctionalInterface
    private interface LameStress {
        double of(LamePair pair, double interference);
    }
}
