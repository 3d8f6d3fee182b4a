package org.shortgrain.mechanics.clampup;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Computed.Input;
import org.shortgrain.mechanics.Computed.Step;
import org.shortgrain.mechanics.Computed.Validity;
import org.shortgrain.mechanics.Extremes;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;

/**
 * A strip whose gap is pulled shut by fasteners: {@code sigma = k E t g / L^2}, k from {@link Support}; for a wide
 * plate times 1/(1 - nu^2).
 *
 * <p>The fasteners cannot pull harder than their preload. If closing the gap needs more, the gap stays open and the
 * stress is that under the preload; the greatest preload is the upper bound for stress corrosion.
 *
 * <p>Range of validity: small deflection (g/L up to 0.1), slender strip (L/t above 10; below that shear flexibility
 * makes the formula conservative), elastic. Common practice for the two limits.
 *
 * @param strip   the strip
 * @param gap     gap between the parts as they lie, before any shim (m)
 * @param shim    what fills it
 * @param preload total preload of the fasteners that pull (N); empty when not known, and then the gap is taken as
 *                closed
 */
public record PulledShut(Strip strip, Given gap, Shim shim, Optional<Given> preload) implements ClosedGap {

    /** Largest deflection, as a share of the span, that counts as small. Common practice. */
    private static final double SMALL_DEFLECTION = 0.1;
    /** Smallest span, in thicknesses, at which shear flexibility may be left out. Common practice. */
    private static final double SLENDER = 10;
    private static final String EQUATION = "sigma = k E t g / L^2; wide plate: x 1/(1 - nu^2);"
            + " not above the stress under the preload";

    /** Refuses a negative gap. */
    public PulledShut {
        if (gap.value().low() < 0) {
            throw new IllegalArgumentException("a gap is not negative: " + gap.value());
        }
    }

    @Override
    public Band left() {
        return shim.left(gap.value());
    }

    /** {@return the peak surface stress, {@code clampup.pulled-shut} (Pa)} */
    @Override
    public Computed stress() {
        Band left = left();
        Band stress = lesser(strip.stress(left), underPreload());
        return new Computed("clampup.pulled-shut", "Bending stress from a gap pulled shut, " + strip.support().peak(),
                SiUnit.PASCAL, stress, EQUATION, inputs(), steps(left), "limits of the gap, of the preload and of every"
                + " other input", validity(left, stress), Sources.BEAMS, notes(), List.of());
    }

    /** {@return the force that closes the gap, {@code clampup.closing-force} (N); empty when the width is not known} */
    public Optional<Computed> closingForce() {
        Band left = left();
        return closingForce(left).map(force -> new Computed("clampup.closing-force", "Force that pulls the gap shut",
                SiUnit.NEWTON, force, "P = c E I g / L^3, I = b t^3/12", inputs(), steps(left), "limits of every input",
                validity(left, strip.stress(left)), Sources.BEAMS, notes(), List.of()));
    }

    /** {@return whether the preload may be too small to close the gap} */
    public boolean mayStayOpen() {
        Band left = left();
        return preload.flatMap(p -> closingForce(left).map(force -> force.high() > p.value().low())).orElse(false);
    }

    @Override
    public Computed largestGap(Given permitted) {
        Band perMetre = strip.stress(Band.exact(1));
        Band largest = Extremes.of(v -> v[0] / v[1], permitted.value(), perMetre);
        List<Input> inputs = new ArrayList<>(strip.inputs(""));
        inputs.add(0, permitted.as("sigma_perm", "permitted sustained stress", SiUnit.PASCAL));
        return new Computed("clampup.largest-gap", "Largest gap that may be pulled shut without shim", SiUnit.METRE,
                largest, "g_max = sigma_perm L^2/(k E t)", inputs, List.of(), "limits of every input",
                validity(largest, permitted.value()), Sources.BEAMS, strip.notes(), List.of());
    }

    private Optional<Band> underPreload() {
        return preload.flatMap(p -> strip.stressUnder(p.value()));
    }

    /** The lesser of both stresses: its upper end is not above either, so the bound holds whichever governs. */
    private static Band lesser(Band closed, Optional<Band> underPreload) {
        return underPreload.map(open -> new Band(Math.min(closed.value(), open.value()),
                Math.min(closed.low(), open.low()), Math.min(closed.high(), open.high()))).orElse(closed);
    }

    private static Band product(Band a, Band b) {
        return new Band(a.value() * b.value(), a.low() * b.low(), a.high() * b.high());
    }

    private List<Input> inputs() {
        List<Input> inputs = new ArrayList<>();
        inputs.add(new Input("k", "factor of the support, " + name(strip.support()), SiUnit.ONE,
                Band.exact(strip.support().stressFactor()), "how the strip is held", Optional.of(Sources.BEAMS.get(0))));
        inputs.addAll(strip.inputs(""));
        inputs.add(gap.as("g", "gap as the parts lie", SiUnit.METRE));
        inputs.addAll(shim.inputs());
        preload.ifPresent(p -> inputs.add(p.as("F", "total preload of the fasteners", SiUnit.NEWTON)));
        return inputs;
    }

    private List<Step> steps(Band left) {
        List<Step> steps = new ArrayList<>();
        steps.add(new Step("g_left", "gap left to be pulled shut", SiUnit.METRE, left));
        steps.add(new Step("sigma_closed", "stress if the gap closes", SiUnit.PASCAL, strip.stress(left)));
        closingForce(left).ifPresent(p -> steps.add(new Step("P", "force that closes the gap", SiUnit.NEWTON, p)));
        underPreload().ifPresent(s -> steps.add(new Step("sigma_F", "stress under the preload", SiUnit.PASCAL, s)));
        return steps;
    }

    private Optional<Band> closingForce(Band left) {
        return strip.stiffness().map(stiffness -> product(stiffness, left));
    }

    private Validity validity(Band left, Band stress) {
        double slope = left.high() / strip.span().value().low();
        double slenderness = strip.span().value().low() / strip.thickness().value().high();
        boolean small = slope <= SMALL_DEFLECTION;
        boolean slender = slenderness > SLENDER;
        Optional<Boolean> elastic = strip.yieldStrength().map(y -> stress.high() <= y.value().low());
        String statement = String.format(Locale.ROOT, "Straight elastic strip: g/L = %.4f (up to %.1f); L/t = %.1f (above"
                + " %.0f%s); %s.", slope, SMALL_DEFLECTION, slenderness, SLENDER,
                slender ? "" : "; a stockier strip is less stressed than this", elasticity(elastic));
        return new Validity(small && slender && elastic.orElse(false), statement);
    }

    private static String elasticity(Optional<Boolean> elastic) {
        return elastic.map(below -> below ? "below yield" : "above yield, where the elastic stress is an upper bound")
                .orElse("yield strength not given, so that the elastic range is not known");
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>(strip.notes());
        notes.add(shim.note());
        if (preload.isPresent() && strip.width().isEmpty()) {
            notes.add("Width not given: whether the preload closes the gap is not known; taken as closed.");
        }
        if (mayStayOpen()) {
            notes.add("The gap may not close: closing it needs more than the least preload.");
        }
        notes.add("Multiply by the concentration factor of a bolt hole or fillet at the peak.");
        return notes;
    }

    private static String name(Support support) {
        return support.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
