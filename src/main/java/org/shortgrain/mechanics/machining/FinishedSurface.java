package org.shortgrain.mechanics.machining;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shortgrain.terms.GrainDirection;

/**
 * Where the finished surface lies in the section that was quenched.
 *
 * @param depth        depth of the finished surface below the quenched surface that was cut away over it, m; zero where
 *                     nothing was removed; empty when not known
 * @param thickness    finished thickness behind the surface, m; empty when not known
 * @param restraint    whether the finished part can bow
 * @param local        true for the floor or wall of a pocket, groove or slot, under which the stress of the blank stays
 *                     as it was whatever the rest of the part does
 * @param holeAxis     direction of a hole drilled through the section after the quench, where the surface is its wall
 * @param edgeDistance distance from the nearest quenched edge (narrow face) of the section, m; empty when not known
 */
public record FinishedSurface(OptionalDouble depth, OptionalDouble thickness, Restraint restraint, boolean local,
        Optional<GrainDirection> holeAxis, OptionalDouble edgeDistance) {

    /** Refuses missing parts and negative lengths. */
    public FinishedSurface {
        Objects.requireNonNull(restraint, "restraint");
        Objects.requireNonNull(holeAxis, "holeAxis");
        if (depth.isPresent() && !(depth.getAsDouble() >= 0)
                || thickness.isPresent() && !(thickness.getAsDouble() > 0)
                || edgeDistance.isPresent() && !(edgeDistance.getAsDouble() >= 0)) {
            throw new IllegalArgumentException("depth " + depth + ", thickness " + thickness + ", edge " + edgeDistance);
        }
    }

    /**
     * {@return a face of a wall or web, away from edges unknown}
     *
     * @param depth     depth below the quenched surface, m
     * @param thickness finished thickness, m
     * @param restraint whether the part can bow
     */
    public static FinishedSurface face(double depth, double thickness, Restraint restraint) {
        return new FinishedSurface(OptionalDouble.of(depth), OptionalDouble.of(thickness), restraint, false,
                Optional.empty(), OptionalDouble.empty());
    }

    /**
     * {@return whether the surface is the wall of a hole whose hoop stress acts in a direction}
     *
     * @param direction the direction
     */
    boolean isWallOfHole(GrainDirection direction) {
        return holeAxis.filter(axis -> axis != direction).isPresent();
    }

    /**
     * {@return whether the surface is still the quenched one, with nothing cut from the section}
     *
     * @param quenchedThickness thickness of the section at quench, m; empty when not known
     */
    boolean isAsQuenched(OptionalDouble quenchedThickness) {
        return holeAxis.isEmpty() && depth.isPresent() && depth.getAsDouble() == 0 && thickness.isPresent()
                && quenchedThickness.isPresent() && thickness.getAsDouble() >= quenchedThickness.getAsDouble();
    }
}
