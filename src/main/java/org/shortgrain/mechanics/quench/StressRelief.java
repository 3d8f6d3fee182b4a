package org.shortgrain.mechanics.quench;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What was done between the quench and the age to relieve the quench stress. An unknown relief is {@link None}.
 */
public sealed interface StressRelief {

    /**
     * {@return what published measurements leave after this relief; empty where nothing was relieved}
     *
     * @param published the published figures
     */
    Optional<RetainedShare> retained(PublishedRelief published);

    /** {@return the relief in the words of the trade} */
    String words();

    /** No relief, or none on record. */
    record None() implements StressRelief {

        @Override
        public Optional<RetainedShare> retained(PublishedRelief published) {
            return Optional.empty();
        }

        @Override
        public String words() {
            return "none";
        }
    }

    /**
     * Stretched along L (Tx51, Tx510, Tx511: 1.5 to 3 % for plate, 1 to 3 % for extrusions, from memory of ANSI H35.1).
     *
     * @param permanentStrain permanent set, such as 0.02; empty when not on record
     */
    record Stretched(OptionalDouble permanentStrain) implements StressRelief {

        /** Set below which it is no stress-relief stretch, and no published figure stands for it. */
        private static final double PARTIAL_BELOW = 0.01;

        /** Refuses a strain that is not positive. */
        public Stretched {
            requirePositive(permanentStrain);
        }

        @Override
        public Optional<RetainedShare> retained(PublishedRelief published) {
            boolean partial = permanentStrain.isPresent() && permanentStrain.getAsDouble() < PARTIAL_BELOW;
            return partial ? Optional.empty() : Optional.of(published.stretched());
        }

        @Override
        public String words() {
            return "stretched";
        }
    }

    /**
     * Compressed or restruck (Tx52, Tx54).
     *
     * @param permanentStrain permanent set through the thickness, such as 0.03; empty when not on record
     * @param dieForging      true for a die forging, of which the dies relieve less than flat platens
     */
    record Compressed(OptionalDouble permanentStrain, boolean dieForging) implements StressRelief {

        /** Strain below which published relief is partial and shows no trend. */
        private static final double LIGHT_BELOW = 0.005;

        /** Refuses a strain that is not positive. */
        public Compressed {
            requirePositive(permanentStrain);
        }

        @Override
        public Optional<RetainedShare> retained(PublishedRelief published) {
            if (permanentStrain.isPresent() && permanentStrain.getAsDouble() < LIGHT_BELOW) {
                return Optional.of(published.compressedLightly());
            }
            return Optional.of(dieForging ? published.compressedDie() : published.compressedHand());
        }

        @Override
        public String words() {
            return dieForging ? "compressed between dies" : "compressed";
        }
    }

    /**
     * Cooled to -196 degC and heated fast (uphill quench).
     *
     * @param film the heating medium
     * @param strong whether it is stronger than boiling water
     */
    record UphillQuenched(FilmCoefficient film, boolean strong) implements StressRelief {

        /** Refuses a missing medium. */
        public UphillQuenched {
            Objects.requireNonNull(film, "film");
        }

        @Override
        public Optional<RetainedShare> retained(PublishedRelief published) {
            return Optional.of(strong ? published.uphillStrong() : published.uphillBoilingWater());
        }

        @Override
        public String words() {
            return strong ? "uphill quenched" : "uphill quenched in boiling water";
        }
    }

    private static void requirePositive(OptionalDouble strain) {
        if (strain.isPresent() && !(strain.getAsDouble() > 0)) {
            throw new IllegalArgumentException("permanent strain " + strain.getAsDouble());
        }
    }
}
