package org.shortgrain.mechanics.sustained;

import java.util.List;
import java.util.stream.Stream;

/**
 * A residual stress that was measured at the place: it replaces the computed one, which stays beside it for comparison.
 *
 * @param measured the measured residual stress
 * @param computed the computed contributions that it replaces
 */
public record MeasuredResidual(Contribution measured, List<Contribution> computed) {

    /** Copies the list. */
    public MeasuredResidual {
        computed = List.copyOf(computed);
    }

    /** {@return the measured stress, which counts, and the computed ones, which no longer do} */
    public List<Contribution> contributions() {
        return Stream.concat(Stream.of(measured.as(Standing.SUSTAINED)),
                computed.stream().map(c -> c.as(Standing.REPLACED_BY_MEASUREMENT))).toList();
    }
}
