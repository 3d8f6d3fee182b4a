package org.shortgrain.mechanics.quench;

import java.util.Objects;

/** What is known of the quench from the solution heat treatment. */
public sealed interface Quench {

    /**
     * A quench into a known bath by free immersion.
     *
     * @param film                the bath
     * @param solutionTemperature temperature of the metal as it enters, degC
     * @param bathOnRecord        whether the bath temperature and agitation are on record; where they are not, the
     *                            upper case takes cold water
     */
    record Known(FilmCoefficient film, double solutionTemperature, boolean bathOnRecord) implements Quench {

        /** Refuses a missing bath. */
        public Known {
            Objects.requireNonNull(film, "film");
        }
    }

    /** A quench of which the medium is not known, or one that no film coefficient stands for (spray, oil, forced air). */
    record Unknown() implements Quench {
    }
}
