package org.shortgrain.mechanics.crack;

/** Velocity of a stress-corrosion crack against stress intensity. Never falls as the intensity rises. */
public sealed interface GrowthLaw {

    /**
     * {@return the velocity (m/s); 0 below the threshold}
     *
     * @param intensity stress intensity (Pa sqrt(m))
     */
    double velocity(double intensity);

    /** {@return the stress intensity below which the crack does not grow (Pa sqrt(m)); 0 if there is none} */
    double threshold();

    /** {@return the stress intensity at which the law bends (Pa sqrt(m)); the threshold if it does not} */
    default double bend() {
        return threshold();
    }

    /**
     * The plateau from the threshold on: on the safe side of every law that rises to it.
     *
     * @param threshold K_ISCC (Pa sqrt(m))
     * @param plateau   velocity of the plateau (m/s)
     */
    record Plateau(double threshold, double plateau) implements GrowthLaw {

        /** Refuses a threshold below zero and a velocity that is not above it. */
        public Plateau {
            require(threshold >= 0 && plateau > 0, "threshold " + threshold + ", plateau " + plateau);
        }

        @Override
        public double velocity(double intensity) {
            return intensity < threshold ? 0 : plateau;
        }
    }

    /**
     * A steep rise, straight in ln v against K, up to the plateau.
     *
     * @param threshold K_ISCC (Pa sqrt(m))
     * @param bend      stress intensity at which the plateau begins (Pa sqrt(m))
     * @param plateau   velocity of the plateau (m/s)
     * @param decades   powers of ten of velocity for one Pa sqrt(m)
     */
    record Rise(double threshold, double bend, double plateau, double decades) implements GrowthLaw {

        /** Refuses a plateau that begins below the threshold, and anything below zero. */
        public Rise {
            require(threshold >= 0 && bend >= threshold && plateau > 0 && decades >= 0,
                    "threshold " + threshold + ", bend " + bend + ", plateau " + plateau + ", decades " + decades);
        }

        @Override
        public double velocity(double intensity) {
            if (intensity < threshold) {
                return 0;
            }
            return plateau * Math.pow(10, decades * Math.min(0, intensity - bend));
        }
    }

    /**
     * {@code v = C K^n}.
     *
     * @param threshold K below which it does not grow (Pa sqrt(m)); 0 for none
     * @param constant  C, velocity at 1 Pa sqrt(m) (m/s)
     * @param exponent  n
     */
    record Power(double threshold, double constant, double exponent) implements GrowthLaw {

        /** Refuses a law that falls. */
        public Power {
            require(threshold >= 0 && constant > 0 && exponent >= 0,
                    "threshold " + threshold + ", C " + constant + ", n " + exponent);
        }

        @Override
        public double velocity(double intensity) {
            return intensity < threshold ? 0 : constant * Math.pow(intensity, exponent);
        }
    }

    private static void require(boolean holds, String what) {
        if (!holds) {
            throw new IllegalArgumentException("no law of growth: " + what);
        }
    }
}
