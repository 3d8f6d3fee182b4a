package org.shortgrain.reference;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shortgrain.terms.Citation;

/** The digits of the mechanical stress relief in an aluminium temper: what was done, and which form may carry them. */
public final class ReliefDigits {
    private static final double PERCENT = 0.01;

    private final Map<String, Action> actions = new LinkedHashMap<>();
    private final Map<String, Ruling> rulings = new LinkedHashMap<>();

    private ReliefDigits() {
    }

    /** How digits and form go together. */
    public enum Verdict {
        /** Found so in the trade. */
        USUAL,
        /** The digits that this form carries. */
        EXPECTED,
        /** Can be had. */
        POSSIBLE,
        /** Hardly ever. */
        RARE,
        /** Only in old drawings. */
        OLD_USAGE,
        /** No digits, hence no mechanical relief: the quench stress is still there. */
        UNRELIEVED,
        /** Ask. */
        QUERY,
        /** Cannot be. */
        NO
    }

    /**
     * What the digits stand for.
     *
     * @param action what is done
     * @param setMin least permanent set (share of 1), if stated
     * @param setMax greatest permanent set (share of 1), if stated
     * @param source source
     * @param remark remark
     */
    public record Action(String action, OptionalDouble setMin, OptionalDouble setMax, Citation source, String remark) {
    }

    /**
     * A verdict of the table.
     *
     * @param verdict verdict
     * @param remark  remark; empty when none
     * @param source  source
     */
    public record Ruling(Verdict verdict, String remark, Citation source) {
    }

    static ReliefDigits read(Csv csv) {
        ReliefDigits digits = new ReliefDigits();
        for (Row row : csv.read("data/relief-actions.csv", "digits", "action", "set_min_percent", "set_max_percent",
                "source", "clause", "status", "remark")) {
            digits.actions.put(row.required("digits"), new Action(row.required("action"),
                    row.number("set_min_percent", 0, 10, PERCENT), row.number("set_max_percent", 0, 10, PERCENT),
                    row.citation(), row.text("remark")));
        }
        for (Row row : csv.read("data/relief-digits.csv", "digits", "form", "verdict", "remark", "source", "clause",
                "status")) {
            Verdict verdict = row.constant("verdict", Verdict.values());
            if (digits.rulings.put(key(row.required("digits"), row.required("form")),
                    new Ruling(verdict, row.text("remark"), row.citation())) != null) {
                row.fault("the pair stands twice");
            }
        }
        return digits;
    }

    private static String key(String digits, String form) {
        return digits + " on " + (form.startsWith("bar_") ? "bar" : form);
    }

    /**
     * {@return what the digits stand for}
     *
     * @param digits 51, 510, 511, 52 or 54
     */
    public Optional<Action> action(String digits) {
        return Optional.ofNullable(actions.get(digits));
    }

    /**
     * {@return whether a form may carry the digits; empty for a form that the table does not hold}
     *
     * @param digits 51, 510, 511, 52 or 54, or empty for none
     * @param form   product form
     */
    public Optional<Ruling> ruling(String digits, String form) {
        return Optional.ofNullable(rulings.get(key(digits.isEmpty() ? "none" : digits, form)));
    }

    /** Whether a temper without relief digits is most likely an incomplete one on this form. */
    boolean digitsExpected(String form) {
        return ruling("", form).map(r -> r.verdict() == Verdict.QUERY).orElse(false);
    }
}
