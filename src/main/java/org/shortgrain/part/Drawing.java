package org.shortgrain.part;

import java.util.List;

/**
 * The drawing that governs.
 *
 * @param number drawing or model number
 * @param revision its revision
 * @param changes change notices, deviations and concessions in force, or none
 * @param origin where the group stands, and its reference
 */
public record Drawing(
        @Minimum(Minimum.Role.IDENTITY) @Verbatim @Meaning("Drawing or model number.") Stated<String> number,
        @Minimum(Minimum.Role.IDENTITY) @Verbatim @Meaning("Its revision.") Stated<String> revision,
        @Verbatim @Meaning("Change notices, deviations and concessions in force, or none.")
        Stated<List<String>> changes,
        Origin origin) {
}
