package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shortgrain.terms.Citation;

/** Kinds of change that clear a finding: what they edit, when they apply, who must agree, and what they cost in paper. */
public final class RemedyCatalogue {

    private final Map<String, Kind> kinds = new LinkedHashMap<>();

    private RemedyCatalogue() {
    }

    /**
     * A kind of change.
     *
     * @param key       its key
     * @param name      what is done
     * @param edits     what it edits in the description
     * @param when      when it applies
     * @param agree     who must agree
     * @param drawings  number of drawings that it touches
     * @param processes number of processes or cards that it touches
     * @param requalify what must be qualified again
     * @param source    source
     */
    public record Kind(String key, String name, List<String> edits, String when, List<String> agree, int drawings,
            int processes, String requalify, Citation source) {
        /** Copies the lists. */
        public Kind {
            edits = List.copyOf(edits);
            agree = List.copyOf(agree);
        }
    }

    static RemedyCatalogue read(Csv csv) {
        RemedyCatalogue table = new RemedyCatalogue();
        for (Row row : csv.read("data/remedies.csv", "key", "name", "edits", "when", "agree", "drawings", "processes",
                "requalify", "source", "clause", "status")) {
            Kind kind = new Kind(row.required("key"), row.required("name"), row.list("edits"), row.required("when"),
                    row.list("agree"), (int) row.requiredNumber("drawings", 0, 9, 1),
                    (int) row.requiredNumber("processes", 0, 9, 1), row.required("requalify"), row.citation());
            if (table.kinds.put(kind.key(), kind) != null) {
                row.fault("key " + kind.key() + " stands twice");
            }
        }
        return table;
    }

    /** {@return the kinds of change, in the order of the table} */
    public List<Kind> all() {
        return new ArrayList<>(kinds.values());
    }

    /**
     * {@return a kind of change}
     *
     * @param key its key
     * @throws IllegalArgumentException if the table has no such key
     */
    public Kind of(String key) {
        Kind kind = kinds.get(key);
        if (kind == null) {
            throw new IllegalArgumentException("data/remedies.csv has no row " + key);
        }
        return kind;
    }
}
