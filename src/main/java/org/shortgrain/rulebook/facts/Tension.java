package org.shortgrain.rulebook.facts;

import java.util.OptionalDouble;
import org.shortgrain.terms.GrainDirection;

/**
 * Sustained tension in one grain direction at a place, against its threshold. Stresses in Pa.
 *
 * @param direction   grain direction
 * @param value       best estimate of the sum
 * @param high        upper end of the sum
 * @param threshold   lower end of the threshold, before the project's factor; empty if none is published
 * @param factor      the project's factor on it
 */
public record Tension(GrainDirection direction, double value, double high, OptionalDouble threshold, double factor) {

    /** {@return upper end over threshold times factor; empty if there is no threshold} */
    public OptionalDouble utilisation() {
        return threshold.isPresent() ? OptionalDouble.of(high / (threshold.getAsDouble() * factor))
                : OptionalDouble.empty();
    }

    /** {@return whether the upper end reaches the threshold times the project's factor} */
    public boolean reachesLimit() {
        return utilisation().orElse(0) >= 1;
    }

    /** {@return whether the upper end reaches the threshold itself} */
    public boolean reachesThreshold() {
        return threshold.isPresent() && high >= threshold.getAsDouble();
    }

    /** {@return upper end, in words with its unit} */
    public String say() {
        return String.format(java.util.Locale.ROOT, "%.0f MPa along %s", high / 1e6, direction);
    }
}
