package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.GrainDirection;

/** The minimum strengths as a table: a line for each product and size, a column for each direction. */
final class StrengthText {
    private static final int LABEL = 37;
    private static final int COLUMN = 11;

    private final TextPage page;
    private final Set<Citation> cited;

    StrengthText(TextPage page, Set<Citation> cited) {
        this.page = page;
        this.cited = cited;
    }

    /** A product and size with what is printed for each direction. */
    private static final class Line {
        private final Map<GrainDirection, String> figures = new LinkedHashMap<>();
        private String basis = "";
        private boolean mayApply;
    }

    void write(MaterialAnswer answer) {
        Set<Strength> printed = new LinkedHashSet<>();
        answer.directions().values().forEach(d -> printed.addAll(d.strength().hits()));
        Map<Citation, Map<String, Line>> lines = new LinkedHashMap<>();
        for (Strength strength : printed) {
            if (strength.basis().minimum()) {
                add(lines, strength);
            }
        }
        if (lines.isEmpty()) {
            page.heading("Minimum strengths");
            page.line(2, 4, "none published for this material, form and size" + (printed.isEmpty() ? ""
                    : "; " + printed.size() + " typical or B values, which are not minima, are left out"));
            return;
        }
        page.heading("Minimum strengths, tensile/yield, MPa");
        page.line(2, 4, pad("product and size", LABEL) + pad("L", COLUMN) + pad("LT", COLUMN) + pad("ST", COLUMN)
                + "basis");
        lines.forEach(this::table);
        governing(answer);
    }

    /** T, across the flow of a forging, stands for LT and ST; one value of steel for all directions. */
    private static void add(Map<Citation, Map<String, Line>> lines, Strength strength) {
        Line line = lines.computeIfAbsent(strength.citation(), c -> new LinkedHashMap<>())
                .computeIfAbsent(strength.row(), r -> new Line());
        String figure = MaterialText.mpa(strength.ftu()) + "/" + MaterialText.mpa(strength.fty());
        for (GrainDirection direction : GrainDirection.values()) {
            boolean across = strength.direction().equals("T") && direction != GrainDirection.L;
            if (across || strength.direction().equals("all") || strength.direction().equals(direction.name())) {
                line.figures.merge(direction, figure, (a, b) -> a.equals(b) ? a : a + " " + b);
            }
        }
        String basis = strength.basis() == Strength.Basis.NONE ? "-" : strength.basis().name();
        if (!line.basis.contains(basis)) {
            line.basis = line.basis.isEmpty() ? basis : line.basis + "," + basis;
        }
        line.mayApply |= strength.mayApply();
    }

    private void table(Citation citation, Map<String, Line> rows) {
        page.line(2, 4, MaterialText.cite(citation, cited));
        rows.forEach((row, line) -> {
            String figures = pad(figure(line, GrainDirection.L), COLUMN) + pad(figure(line, GrainDirection.LT), COLUMN)
                    + pad(figure(line, GrainDirection.ST), COLUMN) + line.basis + (line.mayApply ? " ?" : "");
            if (row.length() < LABEL) {
                page.line(2, 4, pad(row, LABEL) + figures);
            } else {
                page.line(2, 4, row);
                page.line(2 + LABEL, 4, figures);
            }
        });
    }

    private static String figure(Line line, GrainDirection direction) {
        return line.figures.getOrDefault(direction, "-");
    }

    private void governing(MaterialAnswer answer) {
        List<String> lowest = new ArrayList<>();
        for (DirectionAnswer direction : answer.directions().values()) {
            StrengthAnswer strength = direction.strength();
            if (strength.governing().isPresent()) {
                lowest.add(direction.direction() + " " + MaterialText.mpa(strength.ftu()) + "/"
                        + MaterialText.mpa(strength.fty()));
            }
        }
        page.line(2, 4, "lowest that may apply: " + String.join(", ", lowest));
        if (answer.directions().values().stream().anyMatch(d -> !d.strength().open().isEmpty())) {
            page.line(2, 4, "? a datum is open, or the row is for a near relative: not to be relied on");
        }
    }

    private static String pad(String text, int width) {
        return text.length() >= width ? text + " " : text + " ".repeat(width - text.length());
    }
}
