package org.shortgrain.part;

import java.util.Optional;

/**
 * Relative humidity, as a number or in a word.
 *
 * @param relative relative humidity as a share; empty if only a word is given
 * @param word     the word; empty if a number is given
 */
public record Humidity(Optional<Range> relative, Optional<HumidityWord> word) {

    /** Humidity in a word. */
    public enum HumidityWord implements Word {
        /** Moist enough for the most susceptible alloys. */
        MOIST,
        /** Kept dry. */
        DRY
    }
}
