package org.shortgrain.mechanics.machining;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.shortgrain.mechanics.quench.StressProfile;
import org.shortgrain.terms.GrainDirection;

/**
 * The stress that one kept section of one view shows at its surface, for each way of release that the view can say.
 *
 * <p>On a face the stress is read at the face; the worse of the two faces counts, but under a local cut only its floor.
 * On the wall of a small hole with the stresses s1 (wanted direction) and s2 (the other direction in the plane across
 * the hole), the hoop stress is 3 s1 - s2 at its worst clock position (Kirsch 1898; exact for a hole that is small
 * against the depth over which the stress changes); the worst depth along the section counts.
 *
 * @param field  the view
 * @param kept   the kept section
 * @param stress stress by way of release, Pa; always holds the stress as it was
 */
record Exposure(ResidualField field, KeptSection kept, Map<Release, Double> stress) {

    static Exposure of(ResidualField field, KeptSection kept, FinishedSurface surface, GrainDirection direction) {
        Map<Release, Double> stress = new EnumMap<>(Release.class);
        for (Release way : Release.values()) {
            Optional<Double> shown = surface.isWallOfHole(direction) ? atHole(field, kept, surface, direction, way)
                    : surface.holeAxis().isPresent() ? field.released(kept, direction, way).map(StressProfile::highest)
                            : field.faces(kept, direction, way).map(faces -> atFace(faces, surface));
            shown.ifPresent(value -> stress.put(way, value));
        }
        return new Exposure(field, kept, stress);
    }

    /** Whether one of the ways can be computed in this view. */
    boolean saysOf(Set<Release> ways) {
        return stress.keySet().stream().anyMatch(ways::contains);
    }

    /** The worst stress over the given ways; the stress as it was where none of them can be computed. */
    double worstOf(Set<Release> ways) {
        return stress.entrySet().stream().filter(e -> ways.contains(e.getKey())).mapToDouble(Map.Entry::getValue)
                .max().orElseGet(() -> stress.get(Release.AS_IS));
    }

    private static double atFace(ResidualField.Faces faces, FinishedSurface surface) {
        return surface.local() ? faces.finished() : Math.max(faces.finished(), faces.opposite());
    }

    private static Optional<Double> atHole(ResidualField field, KeptSection kept, FinishedSurface surface,
            GrainDirection direction, Release way) {
        GrainDirection axis = surface.holeAxis().orElseThrow();
        GrainDirection other = Arrays.stream(GrainDirection.values()).filter(d -> d != axis && d != direction)
                .findFirst().orElseThrow();
        Optional<StressProfile> wanted = field.released(kept, direction, way);
        Optional<StressProfile> beside = field.released(kept, other, way);
        return wanted.flatMap(s1 -> beside.map(s2 -> Arrays.stream(s1.depths())
                .map(z -> 3 * s1.at(z) - s2.at(z)).max().orElseThrow()));
    }
}
