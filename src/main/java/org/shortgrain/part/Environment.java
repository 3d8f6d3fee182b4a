package org.shortgrain.part;

import java.util.List;

/**
 * Where the part lives.
 *
 * @param zone zone of the vehicle or structure, the worst of several. Unknown: the worst of the list
 * @param salt salt in the air. Absent or unknown: coastal
 * @param temperature lowest and highest temperature
 * @param humidity relative humidity, or the word moist or dry
 * @param fluids fluids that wet the part, or none
 * @param storage storage before service and between
 * @param origin where the group stands, and its reference
 */
public record Environment(
        @Minimum(Minimum.Role.JUDGING) @Vocabulary(Vocabulary.List.ZONES)
        @Meaning("Zone of the vehicle or structure, the worst of several. Unknown: the worst of the list.")
        Stated<List<String>> zone,
        @Meaning("Salt in the air. Absent or unknown: coastal.") Stated<Salt> salt,
        @In(Dimension.TEMPERATURE) @Meaning("Lowest and highest temperature.") Stated<Range> temperature,
        @Meaning("Relative humidity, or the word moist or dry.") Stated<Humidity> humidity,
        @Meaning("Fluids that wet the part, or none.") Stated<List<Fluid>> fluids,
        @Meaning("Storage before service and between.") Stated<List<Storage>> storage,
        Origin origin) {
}
