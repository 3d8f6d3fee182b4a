package org.shortgrain.mechanics.machining;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.shortgrain.mechanics.quench.QuenchedBar;
import org.shortgrain.mechanics.quench.StressProfile;
import org.shortgrain.terms.GrainDirection;

/** The residual stress in the blank, as one model or bound has it, and what it can say of cutting. */
sealed interface ResidualField {

    /** Where the field comes from, in words. */
    String basis();

    /** Stress of the blank through its thickness in one direction. */
    StressProfile in(GrainDirection direction);

    /** Stress of the kept section after a release; empty where the field cannot say. */
    Optional<StressProfile> released(KeptSection kept, GrainDirection direction, Release way);

    /** Stress at the two faces of the kept section, for each release that the field can say. */
    Map<Release, Faces> faces(KeptSection kept, GrainDirection direction);

    /** Whether the field shows how the stress changes through the thickness, so that it can be drawn. */
    boolean drawable();

    /**
     * Stress at the faces of a section.
     *
     * @param finished at the finished surface, Pa
     * @param opposite at the face opposite to it, Pa
     */
    record Faces(double finished, double opposite) {

        private static Faces of(StressProfile left) {
            return new Faces(left.at(left.start()), left.at(left.end()));
        }
    }

    /** The thickness of the blank, m. */
    default double thickness() {
        return in(GrainDirection.L).thickness();
    }

    /**
     * A wide plate: what is cut from it releases its in-plane stress, never the stress along the thickness.
     *
     * @param basis   where it comes from
     * @param along   stress along L
     * @param across  stress along LT
     * @param through stress along ST
     */
    record Plate(String basis, StressProfile along, StressProfile across, StressProfile through)
            implements ResidualField {

        @Override
        public StressProfile in(GrainDirection direction) {
            return switch (direction) {
                case L -> along;
                case LT -> across;
                case ST -> through;
            };
        }

        @Override
        public Optional<StressProfile> released(KeptSection kept, GrainDirection direction, Release way) {
            return Optional.of(release(kept, direction).after(possible(direction, way)));
        }

        @Override
        public Map<Release, Faces> faces(KeptSection kept, GrainDirection direction) {
            SectionRelease release = release(kept, direction);
            Map<Release, Faces> faces = new EnumMap<>(Release.class);
            for (Release way : Release.values()) {
                Release possible = possible(direction, way);
                faces.put(way, new Faces(release.stressAt(kept.from(), possible),
                        release.stressAt(kept.to(), possible)));
            }
            return faces;
        }

        /** What a cut through the thickness releases in one direction. */
        SectionRelease release(KeptSection kept, GrainDirection direction) {
            return SectionRelease.ofPlate(in(direction), kept.from(), kept.to());
        }

        private static Release possible(GrainDirection direction, Release way) {
            return direction == GrainDirection.ST ? Release.AS_IS : way;
        }

        @Override
        public boolean drawable() {
            return true;
        }
    }

    /**
     * A compact bar, stressed alike in every direction across. Of what machining releases only turning all round can be
     * computed.
     *
     * @param basis  where it comes from
     * @param bar    the quenched bar
     * @param round  whether it is a round bar that is turned, or another compact section that the bar stands for
     * @param along  stress along the bar through its diameter
     * @param across stress across the bar through its diameter
     */
    record Bar(String basis, QuenchedBar bar, boolean round, StressProfile along, StressProfile across)
            implements ResidualField {

        /** Unequal removal over the diameter up to which a bar counts as turned all round. */
        private static final double CONCENTRIC = 0.01;

        static Bar of(String basis, QuenchedBar bar, boolean round) {
            return new Bar(basis, bar, round, bar.alongByDepth(), bar.acrossByDepth());
        }

        @Override
        public StressProfile in(GrainDirection direction) {
            return direction == GrainDirection.L ? along : across;
        }

        @Override
        public Optional<StressProfile> released(KeptSection kept, GrainDirection direction, Release way) {
            if (way == Release.AS_IS) {
                return Optional.of(in(direction).between(kept.from(), kept.to()));
            }
            double eccentric = Math.abs(kept.from() + kept.to() - 2 * bar.radius());
            if (!round || eccentric > CONCENTRIC * 2 * bar.radius()) {
                return Optional.empty();
            }
            QuenchedBar turned = BarMachining.turned(bar, bar.radius() - kept.from()).asBar(bar.history());
            StressProfile left = direction == GrainDirection.L ? turned.alongByDepth() : turned.acrossByDepth();
            return Optional.of(left.shiftedBy(kept.from()));
        }

        @Override
        public Map<Release, Faces> faces(KeptSection kept, GrainDirection direction) {
            Map<Release, Faces> faces = new EnumMap<>(Release.class);
            faces.put(Release.AS_IS, new Faces(in(direction).at(kept.from()), in(direction).at(kept.to())));
            released(kept, direction, Release.FREE_TO_BOW).map(Faces::of).ifPresent(turned -> {
                faces.put(Release.HELD_FLAT, turned);
                faces.put(Release.FREE_TO_BOW, turned);
            });
            return faces;
        }

        @Override
        public boolean drawable() {
            return true;
        }
    }

    /**
     * The largest stress that any quench may have left, at any depth; says nothing of what cutting releases.
     *
     * @param basis     where it comes from
     * @param thickness thickness of the blank, or any length where that is not known, m
     * @param along     stress along L, Pa
     * @param across    stress along LT, Pa
     * @param through   stress along ST, Pa
     */
    record Bound(String basis, double thickness, double along, double across, double through)
            implements ResidualField {

        @Override
        public StressProfile in(GrainDirection direction) {
            return StressProfile.uniform(thickness, switch (direction) {
                case L -> along;
                case LT -> across;
                case ST -> through;
            });
        }

        @Override
        public Optional<StressProfile> released(KeptSection kept, GrainDirection direction, Release way) {
            return way == Release.AS_IS ? Optional.of(in(direction).between(kept.from(), kept.to()))
                    : Optional.empty();
        }

        @Override
        public Map<Release, Faces> faces(KeptSection kept, GrainDirection direction) {
            return Map.of(Release.AS_IS, Faces.of(in(direction)));
        }

        @Override
        public boolean drawable() {
            return false;
        }
    }
}
