package org.shortgrain.reference;

import java.util.LinkedHashMap;
import java.util.Map;
import org.shortgrain.terms.Citation;

/** Numbers that stand in for what a description does not say. Each counts against the part and is listed where used. */
public final class StandIns {

    private static final double MILLI = 1e-3;

    private final Map<String, StandIn> byKey = new LinkedHashMap<>();

    private StandIns() {
    }

    /**
     * A number that stands in for something not stated.
     *
     * @param value   the number, in the unit of the table; a length in m
     * @param meaning what it stands for
     * @param source  where it comes from
     */
    public record StandIn(double value, String meaning, Citation source) {
    }

    static StandIns read(Csv csv) {
        StandIns table = new StandIns();
        for (Row row : csv.read("data/stand-ins.csv", "key", "value", "unit", "meaning", "source", "clause", "status")) {
            StandIn one = new StandIn(value(row), row.required("meaning"), row.citation());
            if (table.byKey.put(row.required("key"), one) != null) {
                row.fault("key " + row.text("key") + " stands twice");
            }
        }
        return table;
    }

    /** Shares stay between nothing and all; the other ends are wide, against slips of the pen. */
    private static double value(Row row) {
        return switch (row.required("unit")) {
            case "1" -> row.requiredNumber("value", 0, 1, 1);
            case "deg" -> row.requiredNumber("value", 0, 45, 1);
            case "degC" -> row.requiredNumber("value", -60, 60, 1);
            case "mm" -> row.requiredNumber("value", 0, 10, MILLI);
            case "1/year" -> row.requiredNumber("value", 1, 10_000, 1);
            default -> {
                row.fault("unit " + row.text("unit") + " is not one of 1, deg, degC, mm, 1/year");
                yield 0;
            }
        };
    }

    /**
     * {@return a stand-in}
     *
     * @param key its key
     * @throws IllegalArgumentException if the table has no such key
     */
    public StandIn of(String key) {
        StandIn one = byKey.get(key);
        if (one == null) {
            throw new IllegalArgumentException("data/stand-ins.csv has no row " + key);
        }
        return one;
    }
}
