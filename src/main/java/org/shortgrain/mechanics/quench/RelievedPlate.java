package org.shortgrain.mechanics.quench;

import java.util.Objects;

/**
 * A plate after mechanical stress relief.
 *
 * @param along           stress along L, the direction of stretching
 * @param across          stress along LT
 * @param permanentStrain permanent set reached
 */
public record RelievedPlate(StressProfile along, StressProfile across, double permanentStrain) {

    /** Refuses missing profiles. */
    public RelievedPlate {
        Objects.requireNonNull(along, "along");
        Objects.requireNonNull(across, "across");
    }
}
