package org.shortgrain.mechanics.machining;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.shortgrain.mechanics.quench.StressProfile;
import org.shortgrain.terms.GrainDirection;

/**
 * The stress that one kept section of one field shows at its surface, for each way of release.
 *
 * <p>On a face the stress is read at the face; the worse of the two faces counts, but under a local cut only its floor.
 * On the wall of a small hole with the stresses s1 (wanted direction) and s2 (the other direction in the plane across
 * the hole), the hoop stress is 3 s1 - s2 at its worst clock position (Kirsch 1898; exact for a hole that is small
 * against the depth over which the stress changes); the worst depth along the section counts.
 *
 * @param field  the field
 * @param kept   the kept section
 * @param stress stress by way of release, Pa
 */
record Exposure(ResidualField field, KeptSection kept, Map<Release, Double> stress) {

    static Exposure of(ResidualField field, KeptSection kept, FinishedSurface surface, GrainDirection direction) {
        Map<Release, Double> stress = new EnumMap<>(Release.class);
        for (Release way : field.balanced() ? EnumSet.allOf(Release.class) : EnumSet.of(Release.AS_IS)) {
            stress.put(way, surface.holeAxis().filter(axis -> axis != direction).isPresent()
                    ? atHole(field, kept, surface.holeAxis().orElseThrow(), direction, way)
                    : atFace(released(field, kept, direction, way), surface));
        }
        return new Exposure(field, kept, stress);
    }

    /** Whether at least one of the ways can be computed in this view. */
    boolean saysOf(Set<Release> ways) {
        return stress.keySet().stream().anyMatch(ways::contains);
    }

    /** The worst stress over the given ways; the stress as it was where none of them can be computed. */
    double worstOf(Set<Release> ways) {
        return worstWay(ways).map(stress::get).orElseThrow();
    }

    Optional<Release> worstWay(Set<Release> ways) {
        return stress.keySet().stream().filter(ways::contains)
                .reduce((a, b) -> stress.get(b) > stress.get(a) ? b : a)
                .or(() -> Optional.of(Release.AS_IS));
    }

    /** Cutting through the thickness releases the two directions in its plane, never the stress along the thickness. */
    static StressProfile released(ResidualField field, KeptSection kept, GrainDirection direction, Release way) {
        if (direction == GrainDirection.ST) {
            return field.through().between(kept.from(), kept.to());
        }
        return SectionRelease.ofPlate(field.in(direction), kept.from(), kept.to()).after(way);
    }

    private static double atFace(StressProfile left, FinishedSurface surface) {
        double[] stress = left.stresses();
        double floor = stress[0];
        if (surface.holeAxis().isPresent()) {
            return left.highest();
        }
        return surface.local() ? floor : Math.max(floor, stress[stress.length - 1]);
    }

    private static double atHole(ResidualField field, KeptSection kept, GrainDirection axis, GrainDirection direction,
            Release way) {
        GrainDirection other = Arrays.stream(GrainDirection.values()).filter(d -> d != axis && d != direction)
                .findFirst().orElseThrow();
        StressProfile wanted = released(field, kept, direction, way);
        StressProfile beside = released(field, kept, other, way);
        return Arrays.stream(wanted.depths()).map(z -> 3 * wanted.at(z) - beside.at(z)).max().orElseThrow();
    }
}
