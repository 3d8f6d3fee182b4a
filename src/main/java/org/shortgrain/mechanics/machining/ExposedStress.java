package org.shortgrain.mechanics.machining;

import java.util.Objects;
import java.util.Optional;
import org.shortgrain.mechanics.Computed;

/**
 * Residual stress at a finished surface.
 *
 * @param governing the stress to add to the other sustained stresses: the worst of the ways that the restraint allows
 * @param bow       bow of the part over one metre if it is free, where it can be computed
 */
public record ExposedStress(Computed governing, Optional<Computed> bow) {

    /** Refuses missing parts. */
    public ExposedStress {
        Objects.requireNonNull(governing, "governing");
        Objects.requireNonNull(bow, "bow");
    }
}
