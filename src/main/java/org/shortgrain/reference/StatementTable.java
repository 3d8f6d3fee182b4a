package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** What documents say of materials in words: limits, cautions, exemptions, gaps. */
final class StatementTable {
    private static final double MM = 1e-3;
    private static final Set<String> KINDS = Set.of("text", "temperature limit", "limit", "exemption", "caution",
            "service", "claim", "note", "gap");

    private final RowIndex<StatementRow> index = new RowIndex<>();

    /** One row. */
    record StatementRow(Scope scope, MaterialStatement statement) {
    }

    static StatementTable read(Csv csv, Scope.Reader scopes) {
        StatementTable table = new StatementTable();
        for (Row row : csv.read("data/scc-statements.csv", "alloys", "tempers", "forms", "thickness_max_mm",
                "direction", "kind", "statement", "above_degC", "limit_thickness_mm", "source", "clause", "status",
                "confidence", "remark")) {
            Scope scope = scopes.read(row).withThickness(ThicknessBand.of(OptionalDouble.empty(),
                    row.number("thickness_max_mm", 0, 1000, MM), true));
            RatingTable.direction(row);
            table.index.add(scope, new StatementRow(scope, new MaterialStatement(row.oneOf("kind", KINDS),
                    row.required("statement"), row.number("above_degC", -273, 1000, 1),
                    row.number("limit_thickness_mm", 0, 1000, MM), false, scope.describe(), row.citation(),
                    row.oneOf("confidence", RatingTable.CONFIDENCES), row.text("remark"))));
        }
        return table;
    }

    List<StatementRow> all() {
        return index.all();
    }

    List<MaterialStatement> answer(Alloy alloy, Question q) {
        List<MaterialStatement> hits = new ArrayList<>();
        index.matching(alloy, q, (row, match, open) -> {
            MaterialStatement s = row.statement();
            hits.add(match == Match.YES ? s : new MaterialStatement(s.kind(), s.statement(), s.aboveCelsius(),
                    s.limitThickness(), true, s.row(), s.citation(), s.confidence(), s.remark()));
        });
        return hits;
    }
}
