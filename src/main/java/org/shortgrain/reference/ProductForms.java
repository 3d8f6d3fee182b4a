package org.shortgrain.reference;

import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Which rows speak for a product form: a die forging reads the rows for die forgings, for forgings and for any form. */
public final class ProductForms {
    private final Map<String, Map<String, Match>> rowsOf = new LinkedHashMap<>();
    private final Map<String, String> remarks = new HashMap<>();
    private final Set<String> rowForms = new LinkedHashSet<>();

    private ProductForms() {
    }

    static ProductForms read(Csv csv) {
        ProductForms forms = new ProductForms();
        for (Row row : csv.read("data/product-forms.csv", "form", "rows_of", "standing", "remark")) {
            Match standing = row.oneOf("standing", Set.of("exact", "raise_only")).equals("exact") ? Match.YES
                    : Match.MAYBE;
            String form = row.required("form");
            forms.rowsOf.putIfAbsent(form, new HashMap<>());
            if (forms.rowsOf.get(form).put(row.required("rows_of"), standing) != null) {
                row.fault("the pair stands twice");
            }
            if (!row.text("remark").isEmpty()) {
                forms.remarks.put(form, row.text("remark"));
            }
            forms.rowForms.add(row.text("rows_of"));
        }
        return forms;
    }

    /** {@return the product forms of the part description} */
    public Set<String> words() {
        return Collections.unmodifiableSet(rowsOf.keySet());
    }

    /** {@return the form words that rows may use} */
    Set<String> rowForms() {
        return Collections.unmodifiableSet(rowForms);
    }

    /**
     * {@return why some rows speak for a form only in place of better ones}
     *
     * @param form product form
     */
    public Optional<String> remark(String form) {
        return Optional.ofNullable(remarks.get(form));
    }

    /**
     * {@return whether a row speaks for a form}
     *
     * @param rowForms the forms of the row
     * @param form     product form asked about; empty when not stated: then any row may
     */
    Match match(Set<String> rowForms, Optional<String> form) {
        if (form.isEmpty()) {
            return Match.MAYBE;
        }
        Map<String, Match> standing = rowsOf.get(form.get());
        if (standing == null) {
            return Match.MAYBE;
        }
        Match best = Match.NO;
        for (String rowForm : rowForms) {
            best = best.or(standing.getOrDefault(rowForm, Match.NO));
        }
        return best;
    }
}
