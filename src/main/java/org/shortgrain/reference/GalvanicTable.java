package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.shortgrain.terms.Citation;

/**
 * Galvanic series and groups. They come from different media and reference electrodes and do not agree: never take a
 * difference across two series. Potentials are whole hundredths of a volt, so that a limit of 0.15 V is met exactly.
 */
public final class GalvanicTable {
    private static final Set<String> SERIES = Set.of("anodic_index", "flowing_sea_water_sce", "marine_agcl",
            "nrl_aluminium_agcl", "mil_std_889_order", "niu_groups", "mil_std_889c_pairs", "mil_hdbk_419_groups");

    private final List<Entry> entries = new ArrayList<>();
    private final List<Limit> limits = new ArrayList<>();

    private GalvanicTable() {
    }

    /**
     * A metal in a series.
     *
     * @param series      series
     * @param group       group in the series
     * @param metal       metal or alloys
     * @param potential   potential (hundredths of a volt), if the series has potentials
     * @param electrode   reference electrode of the potential; empty without one
     * @param anodicIndex anodic index (hundredths of a volt), if the series has one
     * @param order       order in the series, 1 the most anodic, if it has only an order
     * @param statement   what the source says in words; empty when nothing
     * @param medium      medium
     * @param source      source
     * @param remark      remark; empty when none
     */
    public record Entry(String series, String group, String metal, OptionalInt potential, String electrode,
            OptionalInt anodicIndex, OptionalInt order, String statement, String medium, Citation source,
            String remark) {
    }

    /**
     * A limit on the difference of anodic indices.
     *
     * @param fromWetness driest wetness class for which it holds
     * @param toWetness   wettest wetness class for which it holds
     * @param hundredths  limit (hundredths of a volt)
     * @param meaning     what it is for
     * @param source      source
     */
    public record Limit(String fromWetness, String toWetness, int hundredths, String meaning, Citation source) {
    }

    static GalvanicTable read(Csv csv) {
        GalvanicTable table = new GalvanicTable();
        for (Row row : csv.read("data/galvanic.csv", "series", "group", "metal", "potential_cV", "reference_electrode",
                "anodic_index_cV", "order", "statement", "medium", "source", "clause", "status", "remark")) {
            table.entries.add(new Entry(row.oneOf("series", SERIES), row.required("group"), row.required("metal"),
                    whole(row, "potential_cV", -300, 200), row.text("reference_electrode"),
                    whole(row, "anodic_index_cV", -100, 300), whole(row, "order", 1, 200), row.text("statement"),
                    row.required("medium"), row.citation(), row.text("remark")));
        }
        for (Row row : csv.read("data/galvanic-limits.csv", "wetness_from", "wetness_to", "limit_cV", "meaning",
                "source", "clause", "status")) {
            table.limits.add(new Limit(row.required("wetness_from"), row.required("wetness_to"),
                    (int) row.requiredNumber("limit_cV", 0, 300, 1), row.required("meaning"), row.citation()));
        }
        return table;
    }

    private static OptionalInt whole(Row row, String column, int lowest, int highest) {
        var number = row.number(column, lowest, highest, 1);
        if (number.isEmpty()) {
            return OptionalInt.empty();
        }
        if (number.getAsDouble() != Math.rint(number.getAsDouble())) {
            row.fault(column + " must be a whole number");
        }
        return OptionalInt.of((int) Math.rint(number.getAsDouble()));
    }

    /** {@return all entries} */
    public List<Entry> entries() {
        return Collections.unmodifiableList(entries);
    }

    /**
     * {@return the entries of a series}
     *
     * @param series series
     */
    public List<Entry> series(String series) {
        List<Entry> found = new ArrayList<>();
        for (Entry entry : entries) {
            if (entry.series().equals(series)) {
                found.add(entry);
            }
        }
        return Collections.unmodifiableList(found);
    }

    /**
     * {@return how far apart two metals of one series are (hundredths of a volt)}
     *
     * @param one   a metal
     * @param other the other metal
     * @throws IllegalArgumentException if they stand in two series, or one has no potential
     */
    public static int difference(Entry one, Entry other) {
        if (!one.series().equals(other.series())) {
            throw new IllegalArgumentException(one.series() + " and " + other.series() + " are two series: no"
                    + " difference is taken across them");
        }
        if (one.potential().isEmpty() || other.potential().isEmpty()) {
            throw new IllegalArgumentException(one.series() + " has no potentials");
        }
        return Math.abs(one.potential().getAsInt() - other.potential().getAsInt());
    }

    /**
     * {@return the greatest difference that is usable without isolation (hundredths of a volt)}
     *
     * @param wetness wetness class, 0 to 5
     */
    public int usable(int wetness) {
        return covering(wetness).min().orElseThrow();
    }

    /**
     * {@return the difference from which isolation is asked for (hundredths of a volt)}
     *
     * @param wetness wetness class, 0 to 5
     */
    public int isolate(int wetness) {
        return covering(wetness).max().orElseThrow();
    }

    private IntStream covering(int wetness) {
        String code = "W" + wetness;
        return limits.stream()
                .filter(limit -> limit.fromWetness().compareTo(code) <= 0 && limit.toWetness().compareTo(code) >= 0)
                .mapToInt(Limit::hundredths);
    }

    /** {@return the limits} */
    public List<Limit> limits() {
        return Collections.unmodifiableList(limits);
    }
}
