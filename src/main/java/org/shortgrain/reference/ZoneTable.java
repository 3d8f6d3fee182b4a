package org.shortgrain.reference;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.SourceStatus;

/** Zones of a vehicle or structure: how wet they are and what else is in them. */
public final class ZoneTable {
    private final Map<String, Wetness> classes = new LinkedHashMap<>();
    private final Map<String, Zone> zones = new LinkedHashMap<>();
    private final Words words = new Words();

    private ZoneTable() {
    }

    /**
     * A wetness class.
     *
     * @param code     W0 (controlled and dry) to W5 (immersed)
     * @param rank     0 to 5
     * @param meaning  in words
     * @param humidity relative humidity that goes with it; empty where none is named
     * @param source   source
     */
    public record Wetness(String code, int rank, String meaning, String humidity, Citation source) {
    }

    /**
     * A zone.
     *
     * @param word              word of the part description
     * @param name              name in the trade
     * @param wetness           wetness class
     * @param chemicals         what may be there besides water
     * @param minCelsius        lowest temperature (degC), typical of design
     * @param maxCelsius        highest temperature (degC), typical of design
     * @param severity          1 mild to 5 extreme
     * @param source            source of wetness and chemicals
     * @param temperatureStatus how the temperatures are known
     * @param remark            remark; empty when none
     */
    public record Zone(String word, String name, Wetness wetness, List<String> chemicals, double minCelsius,
            double maxCelsius, int severity, Citation source, SourceStatus temperatureStatus, String remark) {

        /** Copies the list. */
        public Zone {
            chemicals = List.copyOf(chemicals);
        }
    }

    static ZoneTable read(Csv csv) {
        ZoneTable table = new ZoneTable();
        for (Row row : csv.read("data/wetness-classes.csv", "class", "rank", "meaning", "relative_humidity", "source",
                "clause", "status")) {
            String code = row.required("class");
            if (table.classes.put(code, new Wetness(code, (int) row.requiredNumber("rank", 0, 5, 1),
                    row.required("meaning"), row.text("relative_humidity"), row.citation())) != null) {
                row.fault("class " + code + " stands twice");
            }
        }
        for (Row row : csv.read("data/zones.csv", "zone", "name", "wetness", "chemicals", "temperature_min_degC",
                "temperature_max_degC", "severity", "source", "clause", "status", "temperature_status", "remark")) {
            String word = row.required("zone");
            Wetness wetness = table.classes.get(row.oneOf("wetness", table.classes.keySet()));
            Zone zone = new Zone(word, row.required("name"), wetness, row.list("chemicals"),
                    row.requiredNumber("temperature_min_degC", -273, 500, 1),
                    row.requiredNumber("temperature_max_degC", -273, 500, 1),
                    (int) row.requiredNumber("severity", 1, 5, 1), row.citation(),
                    row.status("temperature_status"), row.text("remark"));
            if (zone.minCelsius() > zone.maxCelsius()) {
                row.fault("the temperatures are the wrong way round");
            }
            table.words.add(row, word);
            table.zones.put(word, zone);
        }
        return table;
    }

    /**
     * {@return a zone}
     *
     * @param word a word of the list; case, blanks and hyphens do not matter
     */
    public Optional<Zone> find(String word) {
        return words.find(word).map(zones::get);
    }

    /** {@return the zone to take when none is stated: the wettest, of these the most severe, first in the list} */
    public Zone worst() {
        Zone worst = null;
        for (Zone zone : zones.values()) {
            if (worst == null || rank(zone) > rank(worst)) {
                worst = zone;
            }
        }
        if (worst == null) {
            throw new IllegalStateException("no zones");
        }
        return worst;
    }

    private static int rank(Zone zone) {
        return 10 * zone.wetness().rank() + zone.severity();
    }

    /** {@return the wetness classes, driest first} */
    public Collection<Wetness> classes() {
        return Collections.unmodifiableCollection(classes.values());
    }

    /** {@return all zones} */
    public Collection<Zone> all() {
        return Collections.unmodifiableCollection(zones.values());
    }

    /** {@return the words that a part description may use} */
    public Set<String> words() {
        return Collections.unmodifiableSet(words.names());
    }
}
