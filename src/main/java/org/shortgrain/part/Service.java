package org.shortgrain.part;

import java.util.List;

/**
 * Service so far, and what was found.
 *
 * @param entered month or date of entry into service
 * @param since time since the part was made
 * @param hours operating hours
 * @param cycles operating cycles
 * @param events events: hard landing, failure of a sister part
 * @param cracks cracks that were found, or none
 * @param origin where the group stands, and its reference
 */
public record Service(
        @IsoDate @Meaning("Month or date of entry into service.") Stated<String> entered,
        @Key("time_since_made") @In(Dimension.TIME) @Meaning("Time since the part was made.") Stated<Range> since,
        @Limits(min = 0) @Meaning("Operating hours.") Stated<Double> hours,
        @Limits(min = 0) @Meaning("Operating cycles.") Stated<Double> cycles,
        @Meaning("Events: hard landing, failure of a sister part.") Stated<List<String>> events,
        @Meaning("Cracks that were found, or none.") Stated<List<Crack>> cracks,
        Origin origin) {
}
