package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.shortgrain.terms.Citation;

/** How thick a material can be had or heat treated: largest section with a published minimum, and quench sensitivity. */
public final class SectionLimits {
    private static final double MM = 1e-3;

    private final ProductForms forms;
    private final RowIndex<Entry> available = new RowIndex<>();
    private final RowIndex<SensitivityEntry> sensitivity = new RowIndex<>();

    private SectionLimits(ProductForms forms) {
        this.forms = forms;
    }

    private record Entry(Scope scope, Limit limit) {
    }

    private record SensitivityEntry(Scope scope, Sensitivity value) {
    }

    /**
     * The greatest thickness of a temper in a form.
     *
     * @param thickness greatest thickness (m)
     * @param row       the row's key in words
     * @param source    source
     * @param remark    remark; empty when none
     */
    public record Limit(double thickness, String row, Citation source, String remark) {
    }

    /**
     * How much strength a thick section loses by its slow quench.
     *
     * @param word         high, medium, low or lowest
     * @param fullStrength thickness up to which full strength can be had (m)
     * @param source       source
     * @param remark       remark; empty when none
     */
    public record Sensitivity(String word, double fullStrength, Citation source, String remark) {
    }

    static SectionLimits read(Csv csv, Scope.Reader scopes, ProductForms forms) {
        SectionLimits limits = new SectionLimits(forms);
        for (Row row : csv.read("data/availability.csv", "alloys", "tempers", "forms", "greatest_thickness_mm",
                "printed_in", "source", "clause", "status", "remark")) {
            Scope scope = scopes.read(row);
            limits.available.add(scope, new Entry(scope, new Limit(
                    row.requiredNumber("greatest_thickness_mm", 1, 1000, MM), scope.describe(), row.citation(),
                    row.text("remark"))));
        }
        for (Row row : csv.read("data/quench-sensitivity.csv", "alloys", "class", "full_strength_to_mm", "remark",
                "source", "clause", "status")) {
            Scope scope = Scope.of(scopes.alloysOf(row));
            limits.sensitivity.add(scope, new SensitivityEntry(scope, new Sensitivity(
                    row.oneOf("class", Set.of("high", "medium", "low", "lowest")),
                    row.requiredNumber("full_strength_to_mm", 1, 1000, MM), row.citation(),
                    row.text("remark"))));
        }
        return limits;
    }

    /**
     * {@return the greatest thicknesses with a published minimum for a material as asked; the least first}
     *
     * <p>Above the last band a material is not covered: that is no limit of nature, but nothing is promised there.
     *
     * @param answer answer of the look-up
     */
    public List<Limit> greatest(MaterialAnswer answer) {
        List<Limit> found = new ArrayList<>();
        if (answer.alloy().isEmpty()) {
            return found;
        }
        for (Entry entry : available.of(answer.alloy().get())) {
            if (entry.scope().tempers().match(answer.temper()) == Match.YES
                    && forms.match(entry.scope().forms(), answer.query().productForm()) == Match.YES) {
                found.add(entry.limit());
            }
        }
        found.sort(Comparator.comparingDouble(Limit::thickness));
        return found;
    }

    /**
     * {@return whether the thickness asked about lies beyond the greatest with a published minimum; empty when it is
     * not stated or no limit is listed}
     *
     * @param answer answer of the look-up
     */
    public Optional<Boolean> beyond(MaterialAnswer answer) {
        List<Limit> limits = greatest(answer);
        OptionalDouble thickness = answer.query().thickness();
        if (limits.isEmpty() || thickness.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(thickness.getAsDouble() > limits.get(limits.size() - 1).thickness());
    }

    /**
     * {@return the quench sensitivity of a material}
     *
     * @param alloy material
     */
    public Optional<Sensitivity> sensitivity(Alloy alloy) {
        return sensitivity.of(alloy).stream().map(SensitivityEntry::value).findFirst();
    }

    List<Limit> all() {
        return available.all().stream().map(Entry::limit).toList();
    }

    List<Scope> scopes() {
        return available.all().stream().map(Entry::scope).toList();
    }
}
