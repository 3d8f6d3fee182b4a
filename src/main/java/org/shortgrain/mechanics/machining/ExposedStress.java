package org.shortgrain.mechanics.machining;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.shortgrain.mechanics.Computed;

/**
 * Residual stress at a finished surface.
 *
 * @param governing the stress to add to the other sustained stresses: the worst of the ways that the restraint allows
 * @param ways      the same surface as it was in the blank, held flat and free to bow, as far as each can be computed
 * @param bow       bow of the part over one metre if it is free, where it can be computed
 */
public record ExposedStress(Computed governing, List<Computed> ways, Optional<Computed> bow) {

    /** Copies the list and refuses missing parts. */
    public ExposedStress {
        Objects.requireNonNull(governing, "governing");
        Objects.requireNonNull(bow, "bow");
        ways = List.copyOf(ways);
    }
}
