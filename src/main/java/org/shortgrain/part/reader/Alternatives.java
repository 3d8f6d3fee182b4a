package org.shortgrain.part.reader;

import java.util.List;
import org.shortgrain.part.Location;
import org.shortgrain.part.Minimum;

/**
 * A key at which several values stand of which one holds.
 *
 * @param role    what an open answer holds back
 * @param at      where it stands
 * @param values  the values as read, in the order of the description; at least two that differ
 * @param meaning what the key means
 */
public record Alternatives(Minimum.Role role, Location at, List<?> values, String meaning) {

    /** Copies the list. */
    public Alternatives {
        values = List.copyOf(values);
    }
}
