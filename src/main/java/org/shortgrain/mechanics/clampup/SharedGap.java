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
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;

/**
 * Two flexible strips that close a gap between them. Both carry the same force, so {@code g1 = G k2/(k1 + k2)} and
 * {@code g2 = G k1/(k1 + k2)}: the thinner or longer strip takes most of the gap, and the stress follows. Own
 * derivation.
 *
 * <p>The range is that of the gap alone; the strips stand at their best estimates, since the stress of one strip does
 * not rise throughout with its own thickness or span (a thicker strip is stiffer and leaves more of the gap to the
 * other).
 *
 * @param first  one strip; its width must be known
 * @param second the other; its width must be known
 * @param gap    gap between them (m)
 */
public record SharedGap(Strip first, Strip second, Given gap) implements ClosedGap {

    /** Refuses strips without a width: their stiffness cannot be compared. */
    public SharedGap {
        if (first.width().isEmpty() || second.width().isEmpty()) {
            throw new IllegalArgumentException("both strips need a width to share a gap");
        }
    }

    /** {@return the share of the gap that the first strip takes, 0 to 1} */
    public double shareOfFirst() {
        double k1 = stiffness(first);
        double k2 = stiffness(second);
        return k2 / (k1 + k2);
    }

    /** {@return the force between the strips (N)} */
    public Band force() {
        return gap.value().times(stiffness(first) * shareOfFirst());
    }

    @Override
    public Band left() {
        return gap.value();
    }

    /** {@return the peak stress in the first strip, {@code clampup.shared-gap} (Pa)} */
    @Override
    public Computed stress() {
        return stress(first, gap.value().times(shareOfFirst()), "first");
    }

    /** {@return the peak stress in the second strip, {@code clampup.shared-gap} (Pa)} */
    public Computed stressInSecond() {
        return stress(second, gap.value().times(1 - shareOfFirst()), "second");
    }

    /** The largest gap for the first strip, with the second taking its share. */
    @Override
    public Computed largestGap(Given permitted) {
        Computed own = alone(first, gap.value().times(shareOfFirst())).largestGap(permitted);
        Band both = own.value().times(1 / shareOfFirst());
        List<Input> inputs = new ArrayList<>(own.inputs());
        inputs.addAll(second.inputs("2"));
        return new Computed(own.id(), own.title(), own.unit(), both, own.equation() + " (k1 + k2)/k2", inputs,
                List.of(new Step("g", "of which the first strip takes", SiUnit.METRE, own.value())),
                "limits of the permitted stress; dimensions at their best estimates", own.validity(), own.sources(), own.notes(),
                List.of());
    }

    private static PulledShut alone(Strip strip, Band ownGap) {
        return new PulledShut(atBestEstimates(strip), new Given(ownGap, "share of the gap", Optional.empty()), new Shim.None(),
                Optional.empty());
    }

    private Computed stress(Strip strip, Band ownGap, String which) {
        List<Input> inputs = new ArrayList<>(first.inputs("1"));
        inputs.addAll(second.inputs("2"));
        inputs.add(gap.as("G", "gap between the two strips", SiUnit.METRE));
        Computed result = alone(strip, ownGap).stress();
        return new Computed("clampup.shared-gap", "Bending stress in the " + which + " of two strips that share a gap, "
                + strip.support().peak(), SiUnit.PASCAL, result.value(), "g1 = G k2/(k1 + k2), g2 = G k1/(k1 + k2);"
                        + " k = c E I/L^3; sigma = k E t g/L^2", inputs,
                List.of(new Step("g", "its share of the gap", SiUnit.METRE, ownGap),
                        new Step("F", "force between the strips", SiUnit.NEWTON, force())),
                "limits of the gap; dimensions at their best estimates", validity(result.validity(), strip),
                result.sources(), strip.notes(), List.of());
    }

    private static Validity validity(Validity alone, Strip strip) {
        boolean varies = !strip.span().value().isExact() || !strip.thickness().value().isExact();
        return new Validity(alone.inside(), alone.statement()
                + (varies ? " The tolerances of span and thickness are not in the range." : ""));
    }

    private static Strip atBestEstimates(Strip strip) {
        return new Strip(strip.support(), fixed(strip.span()), fixed(strip.thickness()),
                strip.width().map(SharedGap::fixed), fixed(strip.modulus()), fixed(strip.poisson()),
                strip.yieldStrength());
    }

    private static Given fixed(Given given) {
        return new Given(Band.exact(given.value().value()), given.origin(), given.source());
    }

    private static double stiffness(Strip strip) {
        return strip.stiffness().map(Band::value)
                .orElseThrow(() -> new IllegalStateException(String.format(Locale.ROOT, "no width: %s", strip)));
    }
}
