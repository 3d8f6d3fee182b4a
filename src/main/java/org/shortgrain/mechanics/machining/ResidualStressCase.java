package org.shortgrain.mechanics.machining;

import java.util.Objects;
import java.util.OptionalDouble;
import org.shortgrain.mechanics.quench.Quench;
import org.shortgrain.mechanics.quench.QuenchMaterial;
import org.shortgrain.mechanics.quench.QuenchedSection;
import org.shortgrain.mechanics.quench.StressRelief;
import org.shortgrain.terms.GrainDirection;

/**
 * All that the residual stress at one finished surface depends on.
 *
 * @param material   the metal
 * @param section    the section as it was quenched
 * @param quench     the quench
 * @param relief     what relieved it
 * @param surface    where the finished surface lies
 * @param direction  grain direction in which the stress is wanted
 * @param finalYield tensile yield strength of the final temper in that direction, Pa, at which an elastic sum is
 *                   capped; empty when not known
 */
public record ResidualStressCase(QuenchMaterial material, QuenchedSection section, Quench quench, StressRelief relief,
        FinishedSurface surface, GrainDirection direction, OptionalDouble finalYield) {

    /** Refuses missing parts and a yield strength that is not positive. */
    public ResidualStressCase {
        Objects.requireNonNull(material, "material");
        Objects.requireNonNull(section, "section");
        Objects.requireNonNull(quench, "quench");
        Objects.requireNonNull(relief, "relief");
        Objects.requireNonNull(surface, "surface");
        Objects.requireNonNull(direction, "direction");
        if (finalYield.isPresent() && !(finalYield.getAsDouble() > 0)) {
            throw new IllegalArgumentException("yield strength " + finalYield.getAsDouble());
        }
    }

    /**
     * {@return the same case in another grain direction}
     *
     * @param other      the direction
     * @param otherYield yield strength of the final temper in it, Pa
     */
    public ResidualStressCase in(GrainDirection other, OptionalDouble otherYield) {
        return new ResidualStressCase(material, section, quench, relief, surface, other, otherYield);
    }
}
