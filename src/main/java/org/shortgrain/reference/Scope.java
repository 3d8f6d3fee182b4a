package org.shortgrain.reference;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * For what a row speaks.
 *
 * @param alloys    materials or groups of materials
 * @param tempers   tempers
 * @param forms     product forms
 * @param thickness thickness when heat treated (m)
 * @param area      area of the cross section (m2)
 * @param uts       tensile strength (Pa)
 */
record Scope(List<String> alloys, TemperPattern tempers, Set<String> forms, ThicknessBand thickness,
        ThicknessBand area, ThicknessBand uts) {

    /** What every row is read with. */
    static final class Reader {
        private final ProductForms forms;
        private final Set<String> rowNames;
        private final Map<String, TemperPattern> patterns = new HashMap<>();
        private final Map<String, Set<String>> formSets = new HashMap<>();

        Reader(Alloys alloys, ProductForms forms) {
            this.forms = forms;
            this.rowNames = alloys.rowNames();
        }

        /** {@return the materials and groups that a row names} */
        List<String> alloysOf(Row row) {
            List<String> names = row.list("alloys");
            if (names.isEmpty()) {
                row.fault("alloys is blank");
            }
            for (String name : names) {
                if (!rowNames.contains(name)) {
                    row.fault("alloy '" + name + "' is not in alloys.csv");
                }
            }
            return names;
        }

        /** {@return scope of a row without bands} */
        Scope read(Row row) {
            List<String> names = alloysOf(row);
            return new Scope(names, tempersOf(row), formSets.computeIfAbsent(row.text("forms"), t -> formsOf(row)),
                    ThicknessBand.ALL, ThicknessBand.ALL, ThicknessBand.ALL);
        }

        /** {@return the tempers that a row names; rows with the same text share one pattern} */
        TemperPattern tempersOf(Row row) {
            return patterns.computeIfAbsent(row.text("tempers"), t -> TemperPattern.parse(row, "tempers"));
        }

        private Set<String> formsOf(Row row) {
            Set<String> formSet = row.set("forms");
            if (formSet.isEmpty()) {
                row.fault("forms is blank; write any for any form");
            }
            for (String form : formSet) {
                if (!forms.rowForms().contains(form)) {
                    row.fault("form '" + form + "' is not in product-forms.csv");
                }
            }
            return formSet;
        }
    }

    Scope withThickness(ThicknessBand band) {
        return new Scope(alloys, tempers, forms, band, area, uts);
    }

    Scope withArea(ThicknessBand band) {
        return new Scope(alloys, tempers, forms, thickness, band, uts);
    }

    Scope withUts(ThicknessBand band) {
        return new Scope(alloys, tempers, forms, thickness, area, band);
    }

    /** {@return the row's key in words, for hits and neighbours} */
    String describe() {
        StringBuilder words = new StringBuilder(String.join("/", alloys));
        if (!tempers.isAny()) {
            words.append(' ').append(tempers.describe());
        }
        String formWords = String.join("/", forms).replace('_', ' ');
        if (!formWords.equals("any")) {
            words.append(' ').append(formWords);
        }
        return words.append(band(" ", thickness, 1e3, " mm")).append(band(", section ", area, 1e4, " cm2"))
                .append(band(" UTS ", uts, 1e-6, " MPa")).toString();
    }

    private static String band(String lead, ThicknessBand band, double factor, String unit) {
        if (band.isAll()) {
            return "";
        }
        if (band.from() == Double.NEGATIVE_INFINITY) {
            return lead + "to " + number(band.to() * factor) + unit;
        }
        if (band.to() == Double.POSITIVE_INFINITY) {
            return lead + "from " + number(band.from() * factor) + unit;
        }
        return lead + number(band.from() * factor) + " to " + number(band.to() * factor) + unit;
    }

    private static String number(double value) {
        long tenths = Math.round(value * 10);
        return tenths % 10 == 0 ? Long.toString(tenths / 10) : tenths / 10 + "." + tenths % 10;
    }
}
