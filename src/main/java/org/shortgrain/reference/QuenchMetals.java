package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shortgrain.mechanics.quench.PropertyCurve;
import org.shortgrain.mechanics.quench.QuenchMaterial;

/** Reads the metals of the quench, one property a row. */
final class QuenchMetals {

    private static final String FILE = "data/quench-materials.csv";
    /** SI value of one of each unit that the table uses. */
    private static final Map<String, Double> UNITS = Map.of("", 1.0, "1", 1.0, "kg/m3", 1.0, "degC", 1.0, "W/mK", 1.0,
            "J/kgK", 1.0, "GPa", 1e9, "MPa", 1e6, "1e-6/K", 1e-6);
    private static final Set<String> NUMBERS = Set.of("density", "poisson_ratio", "solution_temperature");
    private static final Set<String> CURVES = Set.of("conductivity", "heat_capacity", "youngs_modulus", "expansion",
            "w_yield", "hardening", "hardening_kept");
    private static final Set<String> WORDS = Set.of("alloys", "stand_in_for");

    private QuenchMetals() {
    }

    /**
     * A metal and what it stands for.
     *
     * @param material the metal
     * @param alloys   alloys that it is the table of
     * @param families families of which it stands in for an alloy without a table
     */
    record Metal(QuenchMaterial material, List<String> alloys, List<String> families) {
    }

    static List<Metal> read(Csv csv) {
        Map<String, Map<String, Row>> metals = new LinkedHashMap<>();
        for (Row row : csv.read(FILE, "material", "property", "unit", "values", "source", "clause", "status")) {
            String property = row.text("property");
            if (!NUMBERS.contains(property) && !CURVES.contains(property) && !WORDS.contains(property)) {
                row.fault("unknown property '" + property + "'");
            }
            row.citation();
            String material = row.required("material");
            metals.putIfAbsent(material, new LinkedHashMap<>());
            if (metals.get(material).put(property, row) != null) {
                row.fault(property + " of " + material + " stands twice");
            }
        }
        List<Metal> read = new ArrayList<>();
        for (Map.Entry<String, Map<String, Row>> metal : metals.entrySet()) {
            if (isComplete(csv, metal.getKey(), metal.getValue())) {
                try {
                    read.add(metal(metal.getKey(), metal.getValue()));
                } catch (IllegalArgumentException e) {
                    csv.faults().add(FILE, "refused, " + e.getMessage());
                }
            }
        }
        return read;
    }

    private static boolean isComplete(Csv csv, String name, Map<String, Row> rows) {
        List<String> missing = new ArrayList<>(NUMBERS);
        missing.addAll(CURVES);
        missing.add("alloys");
        missing.removeAll(rows.keySet());
        Collections.sort(missing);
        for (String property : missing) {
            csv.faults().add(FILE, name + " has no row for " + property);
        }
        return missing.isEmpty();
    }

    private static Metal metal(String name, Map<String, Row> rows) {
        QuenchMaterial material = new QuenchMaterial(name,
                rows.get("density").requiredNumber("values", 500, 20_000, 1),
                rows.get("poisson_ratio").requiredNumber("values", 0.2, 0.45, 1), curve(rows, "conductivity"),
                curve(rows, "heat_capacity"), curve(rows, "youngs_modulus"), curve(rows, "expansion"),
                curve(rows, "w_yield"), curve(rows, "hardening"), curve(rows, "hardening_kept"),
                rows.get("solution_temperature").requiredNumber("values", 300, 700, 1),
                rows.get("w_yield").citation());
        return new Metal(material, rows.get("alloys").list("values"),
                rows.containsKey("stand_in_for") ? rows.get("stand_in_for").list("values") : List.of());
    }

    private static PropertyCurve curve(Map<String, Row> rows, String property) {
        Row row = rows.get(property);
        return CurveField.read(row, "values", UNITS.getOrDefault(row.oneOf("unit", UNITS.keySet()), 1.0));
    }
}
