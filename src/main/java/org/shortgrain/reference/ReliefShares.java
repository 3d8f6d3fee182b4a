package org.shortgrain.reference;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.shortgrain.mechanics.quench.FilmCoefficient;
import org.shortgrain.mechanics.quench.PropertyCurve;
import org.shortgrain.mechanics.quench.PublishedRelief;
import org.shortgrain.mechanics.quench.RetainedShare;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.SourceStatus;

/** Reads what publications found left of the as-quenched stress, one treatment or bath a row. */
final class ReliefShares {

    private static final String FILE = "data/stress-relief.csv";
    private static final double MPA = 1e6;
    private static final double MILLIMETRE = 1e-3;
    /** Stands for a missing row until its fault is reported. */
    private static final Citation MISSING = new Citation("missing", "", SourceStatus.MEMORY);

    private final Map<String, RetainedShare> shares = new LinkedHashMap<>();
    private final Map<String, Double> reaches = new LinkedHashMap<>();
    private final Faults faults;

    private ReliefShares(Faults faults) {
        this.faults = faults;
    }

    static ReliefShares read(Csv csv) {
        ReliefShares table = new ReliefShares(csv.faults());
        for (Row row : csv.read(FILE, "key", "treatment", "retained_low", "retained_high", "at_least_MPa", "reaches_mm",
                "source", "clause", "status")) {
            table.add(row);
        }
        return table;
    }

    private void add(Row row) {
        String key = row.required("key");
        double low = row.requiredNumber("retained_low", 0, 2, 1);
        double high = row.requiredNumber("retained_high", 0, 2, 1);
        if (low > high) {
            row.fault("retained_low is above retained_high");
            low = high;
        }
        RetainedShare share = new RetainedShare(row.required("treatment"), low, high,
                row.number("at_least_MPa", 0, 500, MPA).orElse(0), row.citation());
        if (shares.put(key, share) != null) {
            row.fault(key + " stands twice");
        }
        OptionalDouble reach = row.number("reaches_mm", 0, 100, MILLIMETRE);
        if (reach.isPresent()) {
            reaches.put(key, reach.getAsDouble());
        }
    }

    RetainedShare of(String key) {
        if (!shares.containsKey(key)) {
            faults.add(FILE, "has no row for " + key);
        }
        return shares.getOrDefault(key, new RetainedShare(key, 1, 1, 0, MISSING));
    }

    PublishedRelief published() {
        RetainedShare reach = of("uphill_reach");
        if (!reaches.containsKey("uphill_reach")) {
            faults.add(FILE, "uphill_reach has no reaches_mm");
        }
        return new PublishedRelief(of("stretch"), of("compress_hand_forging"), of("compress_die_forging"),
                of("compress_light"), of("uphill_boiling_water"), of("uphill_strong"),
                new PublishedRelief.UphillReach(reaches.getOrDefault("uphill_reach", 0.0), reach.source()),
                of("ageing"), of("model"), of("upper_yield"));
    }

    /** A bath that takes no heat, to stand for a missing row until its fault is reported. */
    static FilmCoefficient nothing() {
        return new FilmCoefficient("missing", 0, PropertyCurve.constant(0), 1, MISSING, MISSING);
    }
}
