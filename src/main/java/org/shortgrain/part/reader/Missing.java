package org.shortgrain.part.reader;

import org.shortgrain.part.Location;
import org.shortgrain.part.Minimum;

/**
 * A field of the minimum set that holds no answer.
 *
 * @param role    what its absence holds back
 * @param at      place; for an absent key, the group that misses it
 * @param state   how it fails to answer
 * @param meaning what the key means
 */
public record Missing(Minimum.Role role, Location at, State state, String meaning) {

    /** How a field fails to answer. */
    public enum State {
        /** The key is not there: nobody looked. */
        ABSENT,
        /** Somebody looked and found nothing. */
        UNKNOWN,
        /** None is stated, where none is no answer. */
        NONE
    }
}
