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
 * @param words     alloys, tempers and forms in words
 * @param thickness thickness when heat treated (m)
 * @param area      area of the cross section (m2)
 * @param uts       tensile strength (Pa)
 */
record Scope(List<String> alloys, TemperPattern tempers, Set<String> forms, String words, ThicknessBand thickness,
        ThicknessBand area, ThicknessBand uts) {

    /** {@return a scope of any temper and form} */
    static Scope of(List<String> alloys) {
        return new Scope(alloys, TemperPattern.any(), Set.of("any"), String.join("/", alloys), ThicknessBand.ALL,
                ThicknessBand.ALL, ThicknessBand.ALL);
    }

    /** What every row is read with. */
    static final class Reader {
        private final ProductForms forms;
        private final Set<String> rowNames;
        private final Map<String, TemperPattern> patterns = new HashMap<>();
        private final Map<String, Set<String>> formSets = new HashMap<>();
        private final Map<String, Scope> scopes = new HashMap<>();

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

        /** {@return scope of a row without bands; rows with the same texts share one, and a fault in it is told once} */
        Scope read(Row row) {
            String texts = row.text("alloys") + '\n' + row.text("tempers") + '\n' + row.text("forms");
            Scope scope = scopes.get(texts);
            if (scope == null) {
                List<String> alloys = alloysOf(row);
                TemperPattern tempers = tempersOf(row);
                Set<String> formSet = formsOf(row);
                scope = new Scope(alloys, tempers, formSet, words(alloys, tempers, formSet), ThicknessBand.ALL,
                        ThicknessBand.ALL, ThicknessBand.ALL);
                scopes.put(texts, scope);
            }
            return scope;
        }

        /** {@return the tempers that a row names; rows with the same text share one pattern} */
        TemperPattern tempersOf(Row row) {
            String text = row.text("tempers");
            TemperPattern pattern = patterns.get(text);
            if (pattern == null) {
                pattern = TemperPattern.parse(row, "tempers");
                patterns.put(text, pattern);
            }
            return pattern;
        }

        private Set<String> formsOf(Row row) {
            String text = row.text("forms");
            Set<String> known = formSets.get(text);
            if (known != null) {
                return known;
            }
            Set<String> formSet = row.set("forms");
            formSets.put(text, formSet);
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
        return new Scope(alloys, tempers, forms, words, band, area, uts);
    }

    Scope withArea(ThicknessBand band) {
        return new Scope(alloys, tempers, forms, words, thickness, band, uts);
    }

    Scope withUts(ThicknessBand band) {
        return new Scope(alloys, tempers, forms, words, thickness, area, band);
    }

    /** {@return the row's key in words, for hits and neighbours} */
    String describe() {
        return words + band(" ", thickness, 1e3, " mm") + band(", section ", area, 1e4, " cm2")
                + band(" UTS ", uts, 1e-6, " MPa");
    }

    private static String words(List<String> alloys, TemperPattern tempers, Set<String> forms) {
        String formWords = String.join("/", forms).replace('_', ' ');
        return String.join("/", alloys) + (tempers.isAny() ? "" : " " + tempers.describe())
                + (formWords.equals("any") ? "" : " " + formWords);
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
