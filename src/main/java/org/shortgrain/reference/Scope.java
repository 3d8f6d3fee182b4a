package org.shortgrain.reference;

import java.util.EnumSet;
import java.util.List;
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
    record Reader(Alloys alloys, ProductForms forms, Set<String> rowNames) {
        Reader(Alloys alloys, ProductForms forms) {
            this(alloys, forms, alloys.rowNames());
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
            Set<String> formSet = row.set("forms");
            if (formSet.isEmpty()) {
                row.fault("forms is blank; write any for any form");
            }
            for (String form : formSet) {
                if (!forms.rowForms().contains(form)) {
                    row.fault("form '" + form + "' is not in product-forms.csv");
                }
            }
            return new Scope(names, TemperPattern.parse(row, "tempers"), formSet, ThicknessBand.ALL,
                    ThicknessBand.ALL, ThicknessBand.ALL);
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

    /**
     * {@return whether the row speaks for what is asked; the alloy is already known to fit}
     *
     * @param q    the question
     * @param open receives the data on which a MAYBE hangs
     */
    Match match(Question q, EnumSet<OpenDatum> open) {
        Match temper = tempers.match(q.temper());
        if (temper == Match.NO) {
            return Match.NO;
        }
        Match form = q.forms().match(forms, q.form());
        if (form == Match.NO) {
            return Match.NO;
        }
        Match thick = thickness.match(q.thickness());
        Match sectioned = area.match(q.area());
        Match strength = q.matchStrength(uts);
        Match all = temper.and(form).and(thick).and(sectioned).and(strength);
        if (all == Match.MAYBE) {
            note(open, temper, q.openTemper());
            note(open, form, q.openForm());
            note(open, thick, Set.of(OpenDatum.THICKNESS));
            note(open, sectioned, Set.of(OpenDatum.SECTION_AREA));
            note(open, strength, Set.of(OpenDatum.STRENGTH));
        }
        return all;
    }

    private static void note(EnumSet<OpenDatum> open, Match match, Set<OpenDatum> why) {
        if (match == Match.MAYBE) {
            open.addAll(why);
        }
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
        return words.append(band(" ", thickness, 1e3, " mm")).append(band(" UTS ", uts, 1e-6, " MPa")).toString();
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
        double rounded = Math.round(value * 10) / 10.0;
        return rounded == Math.rint(rounded) ? String.valueOf((long) rounded) : String.valueOf(rounded);
    }
}
