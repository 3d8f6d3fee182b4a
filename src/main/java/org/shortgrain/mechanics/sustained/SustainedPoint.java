package org.shortgrain.mechanics.sustained;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Computed.Input;
import org.shortgrain.mechanics.Computed.Step;
import org.shortgrain.mechanics.Computed.Validity;
import org.shortgrain.mechanics.Extremes;
import org.shortgrain.mechanics.GrainAxes;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.mechanics.StressTensor;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.GrainDirection;

/**
 * A point of a part with all that pulls at it, and how the grain lies there.
 *
 * <p>The contributions that last add as tensors, {@code sigma = sum a_i S_i}; along a grain direction e the normal
 * stress is {@code e . sigma . e}. If the flow lines are known only within a cone about e, the upper end of the range
 * is the largest normal stress over the cone with every contribution at its worse limit, the lower end the smallest;
 * the value stays that along e as stated. The normal stress is linear in each size, so corners of their ranges are
 * extremes.
 *
 * @param grain         how the grain lies, in part axes
 * @param uncertainty   half-angle of the cone within which each grain direction is known (rad), 0 to pi/2
 * @param contributions what pulls, counted or not
 */
public record SustainedPoint(GrainAxes grain, double uncertainty, List<Contribution> contributions) {

    /** Copies the list. */
    public SustainedPoint {
        contributions = List.copyOf(contributions);
    }

    /** {@return the contributions that count} */
    public List<Contribution> counted() {
        return those(true);
    }

    /** {@return the contributions that do not count; each says why} */
    public List<Contribution> leftOut() {
        return those(false);
    }

    private List<Contribution> those(boolean counted) {
        List<Contribution> those = new ArrayList<>();
        for (Contribution one : contributions) {
            if (one.counts() == counted) {
                those.add(one);
            }
        }
        return those;
    }

    /** {@return the state of stress of the contributions that count, at their best estimates} */
    public StressTensor total() {
        return total(sizes());
    }

    /**
     * {@return the directions that a grain direction may have}
     *
     * @param along the grain direction
     */
    public Cone cone(GrainDirection along) {
        return new Cone(grain.of(along), uncertainty);
    }

    /**
     * {@return the counted contributions along a grain direction as stated, the largest upper end first}
     *
     * @param along the grain direction
     */
    public List<Part> parts(GrainDirection along) {
        List<Part> parts = new ArrayList<>();
        for (Contribution c : counted()) {
            parts.add(new Part(c.source(), c.stressAlong(grain.of(along))));
        }
        parts.sort(Comparator.comparingDouble((Part p) -> p.stress().high()).reversed());
        return parts;
    }

    /**
     * What one contribution adds along a grain direction.
     *
     * @param source what causes it
     * @param stress its normal stress (Pa)
     */
    public record Part(String source, Band stress) {
    }

    /**
     * {@return the sustained stress along a grain direction, {@code sustained.stress} (Pa), tension positive}
     *
     * @param along the grain direction
     */
    public Computed stress(GrainDirection along) {
        List<Step> steps = new ArrayList<>();
        for (Part p : parts(along)) {
            steps.add(new Step("e.S.e", p.source(), SiUnit.PASCAL, p.stress()));
        }
        return new Computed("sustained.stress", "Sustained stress along " + along, SiUnit.PASCAL, range(along),
                "sigma = e . (sum a_i S_i) . e" + (uncertainty > 0 ? ", ends of the range over the cone about e" : ""),
                inputs(), steps, rangeBasis(), validity(), sources(), notes(along), List.of());
    }

    private Band range(GrainDirection along) {
        Cone cone = cone(along);
        Band[] sizes = sizes();
        Band worst = Extremes.of(v -> cone.worst(total(v)).stress(), sizes);
        Band least = Extremes.of(v -> cone.least(total(v)), sizes);
        return new Band(total().normal(cone.axis()), least.low(), worst.high());
    }

    private Band[] sizes() {
        return counted().stream().map(c -> c.size().value()).toArray(Band[]::new);
    }

    private StressTensor total(Band... sizes) {
        return total(Arrays.stream(sizes).mapToDouble(Band::value).toArray());
    }

    private StressTensor total(double... sizes) {
        List<Contribution> counted = counted();
        StressTensor total = StressTensor.ZERO;
        for (int i = 0; i < sizes.length; i++) {
            total = total.plus(counted.get(i).shape().times(sizes[i]));
        }
        return total;
    }

    private List<Input> inputs() {
        List<Input> inputs = new ArrayList<>();
        for (Contribution c : counted()) {
            inputs.add(c.size().as("a" + (inputs.size() + 1), c.source(), SiUnit.PASCAL));
        }
        if (uncertainty > 0) {
            inputs.add(new Input("beta", "half-angle of the cone within which the grain direction is known",
                    SiUnit.RADIAN, Band.exact(uncertainty), "basis of the grain direction", Optional.empty()));
        }
        return inputs;
    }

    private String rangeBasis() {
        return uncertainty > 0 ? "limits of every contribution and of the grain direction, all at once"
                : "limits of every contribution, all at once";
    }

    /** {@return whether every counted contribution lies inside the range of its method} */
    Validity validity() {
        List<String> outside = new ArrayList<>();
        for (Contribution c : counted()) {
            if (!c.validity().inside()) {
                outside.add(c.source() + ": " + c.validity().statement());
            }
        }
        return outside.isEmpty()
                ? new Validity(true, "Linear superposition at one point; every contribution inside the range of its method.")
                : new Validity(false, "Outside the range of its method: " + String.join(" ", outside));
    }

    private List<Citation> sources() {
        return uncertainty > 0
                ? List.of(Sources.WHAT_COUNTS, Sources.SUM_OF_ALL, Sources.TENSORS, Sources.CONE)
                : List.of(Sources.WHAT_COUNTS, Sources.SUM_OF_ALL, Sources.TENSORS);
    }

    private List<String> notes(GrainDirection along) {
        return leftOut().stream().map(c -> {
            Band stress = c.stressAlong(grain.of(along));
            return String.format(Locale.ROOT, "Left out (%s): %s, %.1f MPa along %s (%.1f to %.1f).", c.standing().reason(),
                    c.source(), stress.value() / 1e6, along, stress.low() / 1e6, stress.high() / 1e6);
        }).toList();
    }
}
