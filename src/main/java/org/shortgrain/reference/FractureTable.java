package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Fracture toughness, and threshold and rate of stress-corrosion cracks. */
final class FractureTable {
    private static final double MPA = 1e6;
    /** 1 ksi sqrt(in) in Pa sqrt(m): 6894757.293168361 Pa x sqrt(0.0254 m). */
    private static final double KSI_SQRT_IN = 6894757.293168361 * Math.sqrt(0.0254);

    private final RowIndex<ToughnessRow> toughness = new RowIndex<>();
    private final RowIndex<GrowthRow> growth = new RowIndex<>();

    /** One row of toughness. */
    record ToughnessRow(Scope scope, Toughness value) {
    }

    /** One row of crack growth. */
    record GrowthRow(Scope scope, CrackGrowth value) {
    }

    static FractureTable read(Csv csv, Scope.Reader scopes) {
        FractureTable table = new FractureTable();
        for (Row row : csv.read("data/toughness.csv", "alloys", "tempers", "forms", "orientation", "kic_MPa_sqrt_m",
                "average_ksi_sqrt_in", "max_ksi_sqrt_in", "min_ksi_sqrt_in", "specimens", "product_thickness_in",
                "specification_min_ksi_sqrt_in", "source", "clause", "status", "remark")) {
            Scope scope = scopes.read(row);
            table.toughness.add(scope, new ToughnessRow(scope, new Toughness(
                    row.oneOf("orientation", Set.of("S-L", "T-L")), row.requiredNumber("kic_MPa_sqrt_m", 5, 300, MPA),
                    row.number("min_ksi_sqrt_in", 5, 300, KSI_SQRT_IN), false, scope.describe(), row.citation(),
                    row.text("remark"))));
        }
        for (Row row : csv.read("data/kiscc.csv", "alloys", "tempers", "forms", "direction", "kiscc_low_MPa_sqrt_m",
                "kiscc_high_MPa_sqrt_m", "relation", "rate_low_m_per_s", "rate_high_m_per_s", "hours", "statement",
                "source", "clause", "status", "confidence", "remark")) {
            Scope scope = scopes.read(row);
            RatingTable.direction(row);
            String confidence = row.oneOf("confidence", RatingTable.CONFIDENCES);
            table.growth.add(scope, new GrowthRow(scope, new CrackGrowth(
                    row.number("kiscc_low_MPa_sqrt_m", 1, 300, MPA), row.number("kiscc_high_MPa_sqrt_m", 1, 300, MPA),
                    row.number("rate_low_m_per_s", 1e-14, 1e-3, 1), row.number("rate_high_m_per_s", 1e-14, 1e-3, 1),
                    row.required("statement"), false, scope.describe(), row.citation(),
                    confidence.isEmpty() ? Optional.empty() : Optional.of(confidence), row.text("remark"))));
        }
        return table;
    }

    List<ToughnessRow> allToughness() {
        return toughness.all();
    }

    List<GrowthRow> allGrowth() {
        return growth.all();
    }

    List<Toughness> toughness(Alloy alloy, Question q) {
        List<Toughness> hits = new ArrayList<>();
        toughness.matching(alloy, q, (row, match, open) -> {
            Toughness t = row.value();
            hits.add(match == Match.YES ? t : new Toughness(t.orientation(), t.average(), t.least(), true, t.row(),
                    t.citation(), t.remark()));
        });
        return hits;
    }

    List<CrackGrowth> growth(Alloy alloy, Question q) {
        List<CrackGrowth> hits = new ArrayList<>();
        growth.matching(alloy, q, (row, match, open) -> {
            CrackGrowth g = row.value();
            hits.add(match == Match.YES ? g : new CrackGrowth(g.kisccLow(), g.kisccHigh(), g.rateLow(), g.rateHigh(),
                    g.statement(), true, g.row(), g.citation(), g.confidence(), g.remark()));
        });
        return hits;
    }
}
