package org.shortgrain.reference;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.shortgrain.terms.Citation;

/** Physical data at room temperature. */
final class PhysicalTable {
    private static final double GPA = 1e9;
    private static final double G_PER_CM3 = 1000;
    private static final double PER_MILLION = 1e-6;

    private final RowIndex<PhysicalRow> index = new RowIndex<>();

    /** One row, in SI. */
    record PhysicalRow(Scope scope, String key, OptionalDouble modulus, OptionalDouble poisson, OptionalDouble density,
            OptionalDouble expansion, OptionalDouble conductivity, OptionalDouble specificHeat, Citation citation) {
    }

    static PhysicalTable read(Csv csv, Scope.Reader scopes) {
        PhysicalTable table = new PhysicalTable();
        for (Row row : csv.read("data/physical.csv", "alloys", "tempers", "forms", "E_GPa", "nu", "rho_g_cm3",
                "alpha_1e6_K", "k_W_mK", "cp_J_kgK", "source", "clause", "status", "remark")) {
            Scope scope = scopes.read(row);
            table.index.add(scope, new PhysicalRow(scope, scope.describe(), row.number("E_GPa", 30, 450, GPA), row.number("nu", 0.2, 0.45, 1),
                    row.number("rho_g_cm3", 1.3, 20, G_PER_CM3), row.number("alpha_1e6_K", 1, 35, PER_MILLION),
                    row.number("k_W_mK", 1, 450, 1), row.number("cp_J_kgK", 100, 2000, 1), row.citation()));
        }
        return table;
    }

    List<PhysicalRow> all() {
        return index.all();
    }

    PhysicalData answer(Alloy alloy, Question q) {
        List<PhysicalRow> rows = index.of(alloy);
        if (rows.isEmpty()) {
            return PhysicalData.NONE;
        }
        int[] near = new int[rows.size()];
        for (int i = 0; i < near.length; i++) {
            Scope scope = rows.get(i).scope();
            Match temper = scope.tempers().match(q.temper());
            near[i] = 10 * temper.ordinal() + temper.and(q.forms().match(scope.forms(), q.form())).ordinal();
        }
        return new PhysicalData(nearest(rows, near, PhysicalRow::modulus), nearest(rows, near, PhysicalRow::poisson),
                nearest(rows, near, PhysicalRow::density), nearest(rows, near, PhysicalRow::expansion),
                nearest(rows, near, PhysicalRow::conductivity), nearest(rows, near, PhysicalRow::specificHeat));
    }

    /** Each datum from the nearest row that has it: same temper and form, then same temper, then the alloy. */
    private static Optional<PhysicalData.Value> nearest(List<PhysicalRow> rows, int[] near,
            Function<PhysicalRow, OptionalDouble> datum) {
        int best = -1;
        for (int i = 0; i < near.length; i++) {
            if (datum.apply(rows.get(i)).isPresent() && (best < 0 || near[i] > near[best])) {
                best = i;
            }
        }
        if (best < 0) {
            return Optional.empty();
        }
        PhysicalRow row = rows.get(best);
        return Optional.of(new PhysicalData.Value(datum.apply(row).getAsDouble(), row.key(), row.citation()));
    }
}
