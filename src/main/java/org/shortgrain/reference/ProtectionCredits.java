package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shortgrain.terms.Citation;

/**
 * What a measure of protection is credited with: it delays attack, or reduces tension at the surface. None clears a factor,
 * and a table that says so is refused.
 */
public final class ProtectionCredits {

    private static final Set<String> FACTORS = Set.of("environment", "stress");

    private final Map<Measure, Credit> byMeasure = new LinkedHashMap<>();

    private ProtectionCredits() {
    }

    /** A measure of protection that a description can state. */
    public enum Measure {
        /** Paint over a primer. */
        TOPCOAT,
        /** Primer. */
        PRIMER,
        /** Anodize, conversion coat, passivation. */
        PRETREATMENT,
        /** Plating. */
        PLATING,
        /** Cladding of sheet and plate. */
        CLADDING,
        /** Inhibiting compound. */
        INHIBITOR,
        /** Sealant between joined faces. */
        FAYING_SEALANT,
        /** Fasteners or bush put in wet with sealant. */
        WET_INSTALLATION,
        /** Shot peening. */
        SHOT_PEENING,
        /** Cold working of a hole. */
        COLD_WORK
    }

    /** What a measure does. */
    public enum Effect {
        /** Attack comes later. */
        DELAY("delays attack"),
        /** Tension at the surface is less. */
        REDUCE("reduces tension at the surface");

        private final String words;

        Effect(String words) {
            this.words = words;
        }

        /** {@return in words} */
        public String words() {
            return words;
        }
    }

    /**
     * A credit.
     *
     * @param measure the measure
     * @param factor  the factor it bears on: environment or stress
     * @param effect  what it does
     * @param words   its name in a report
     * @param meaning why no more
     * @param source  where that comes from
     */
    public record Credit(Measure measure, String factor, Effect effect, String words, String meaning, Citation source) {
    }

    static ProtectionCredits read(Csv csv) {
        ProtectionCredits table = new ProtectionCredits();
        for (Row row : csv.read("data/protection-credits.csv", "measure", "factor", "effect", "words", "meaning", "source",
                "clause", "status")) {
            Measure measure = row.constant("measure", Measure.values());
            Credit credit = new Credit(measure, row.oneOf("factor", FACTORS), row.constant("effect", Effect.values()),
                    row.required("words"), row.required("meaning"), row.citation());
            if (table.byMeasure.put(measure, credit) != null) {
                row.fault("measure " + row.text("measure") + " stands twice");
            }
        }
        List<Measure> missing = new ArrayList<>(List.of(Measure.values()));
        missing.removeAll(table.byMeasure.keySet());
        if (!missing.isEmpty()) {
            csv.faults().add("data/protection-credits.csv", "has no row for " + missing);
        }
        return table;
    }

    /**
     * {@return what a measure is credited with}
     *
     * @param measure the measure
     */
    public Credit of(Measure measure) {
        return byMeasure.get(measure);
    }
}
