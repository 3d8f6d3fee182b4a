package org.shortgrain.mechanics.machining;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.shortgrain.mechanics.quench.StressProfile;
import org.shortgrain.terms.GrainDirection;

/**
 * The stress that one kept section of one view shows at its surface, for each way of release that the field can say.
 *
 * <p>On a face the stress is read at the face; the worse of the two faces counts, but under a local cut only its floor.
 * On the wall of a small hole with the stresses s1 (wanted direction) and s2 (the other direction in the plane across
 * the hole), the hoop stress is 3 s1 - s2 at its worst clock position (Kirsch 1898; exact for a hole that is small
 * against the depth over which the stress changes); the worst depth along the section counts.
 *
 * @param view   the view
 * @param kept   the kept section
 * @param stress stress by way of release, Pa; always holds the stress as it was
 */
record Exposure(View view, KeptSection kept, Map<Release, Double> stress) {

    static Exposure of(ResidualField field, KeptSection kept, FinishedSurface surface, GrainDirection direction) {
        Map<Release, Double> stress = new EnumMap<>(Release.class);
        if (surface.holeAxis().isPresent()) {
            for (Release way : Release.values()) {
                alongHole(field, kept, surface.holeAxis().get(), direction, way)
                        .ifPresent(profile -> stress.put(way, profile.highest()));
            }
        } else {
            for (Map.Entry<Release, ResidualField.Faces> one : field.faces(kept, direction).entrySet()) {
                ResidualField.Faces faces = one.getValue();
                stress.put(one.getKey(), surface.local() ? faces.finished()
                        : Math.max(faces.finished(), faces.opposite()));
            }
        }
        return new Exposure(new View(field, 1), kept, stress);
    }

    /** The same exposure in a view that takes another share of its field: every stress is proportional to it. */
    Exposure in(View other) {
        Map<Release, Double> scaled = new EnumMap<>(stress);
        scaled.replaceAll((way, s) -> s * other.share());
        return new Exposure(other, kept, scaled);
    }

    /** Whether one of the ways can be computed in this view. */
    boolean saysOf(Set<Release> ways) {
        return stress.keySet().stream().anyMatch(ways::contains);
    }

    /** The worst stress over the given ways; the stress as it was where none of them can be computed. */
    double worstOf(Set<Release> ways) {
        double worst = Double.NEGATIVE_INFINITY;
        for (Map.Entry<Release, Double> one : stress.entrySet()) {
            if (ways.contains(one.getKey())) {
                worst = Math.max(worst, one.getValue());
            }
        }
        return worst == Double.NEGATIVE_INFINITY ? stress.get(Release.AS_IS) : worst;
    }

    /** Stress on the wall of the hole along its run; along its axis the hole changes nothing. */
    private static Optional<StressProfile> alongHole(ResidualField field, KeptSection kept, GrainDirection axis,
            GrainDirection direction, Release way) {
        Optional<StressProfile> wanted = field.released(kept, direction, way);
        if (axis == direction) {
            return wanted;
        }
        GrainDirection other = EnumSet.complementOf(EnumSet.of(axis, direction)).iterator().next();
        return wanted.flatMap(s1 -> field.released(kept, other, way).map(s2 -> s1.times(3).minus(s2)));
    }
}
