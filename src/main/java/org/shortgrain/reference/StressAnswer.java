package org.shortgrain.reference;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Stresses that the sustained tension in one direction may be compared with.
 *
 * @param governing     the lowest of them, if any
 * @param high          the highest of them (Pa): the upper end of what is published
 * @param restsOnMemory whether none of them was seen that surely applies: below the lowest, confirm against the source.
 *                      Where one was seen, it lies at or above the lowest and bears out what the lowest clears
 * @param open          data that are missing and matter: with any, the figure can raise a concern but not clear one
 * @param hits          every row that applies or may apply
 */
public record StressAnswer(Optional<SccStress> governing, OptionalDouble high, boolean restsOnMemory,
        Set<OpenDatum> open, List<SccStress> hits) {

    /** Copies the collections. */
    public StressAnswer {
        open = Set.copyOf(open);
        hits = List.copyOf(hits);
    }

    /** {@return the lower end of the governing stress (Pa)} */
    public OptionalDouble low() {
        return governing.isEmpty() ? OptionalDouble.empty() : governing.get().low();
    }
}
