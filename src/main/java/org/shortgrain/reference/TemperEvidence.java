package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.shortgrain.terms.Citation;

/**
 * Proof of a temper by conductivity, hardness and yield strength.
 *
 * <p>Conductivity alone cannot tell T76 from T73, hardness alone cannot tell under-aged from over-aged: a window
 * supports a temper but does not prove it. Rules that join conductivity and yield strength prove or contradict: low
 * conductivity together with high strength means under-aged, hence still like T6.
 */
public final class TemperEvidence {
    private static final double KSI = 6894757.293168361;
    private static final Set<String> RULES = Set.of("conductivity and yield", "stress corrosion factor", "window",
            "typical");
    private static final Set<String> VERDICTS = Set.of("accept", "reject or re-age", "needs exfoliation and SCC test",
            "shown only");

    private final ProductForms forms;
    private final List<Acceptance> rows = new ArrayList<>();

    private TemperEvidence(ProductForms forms) {
        this.forms = forms;
    }

    /** One row; strengths in ksi, since the rules subtract %IACS from ksi. */
    private record Acceptance(Scope scope, String rule, OptionalDouble iacsMin, OptionalDouble iacsMax,
            Map<String, Double> hardness, OptionalDouble overMinMax, OptionalDouble overMinFrom, OptionalDouble scfMax,
            String verdict, String statement, Citation source, String remark) {
    }

    /**
     * What was measured.
     *
     * @param conductivity electrical conductivity (%IACS)
     * @param hardness     hardness by scale, such as HRB or HB
     * @param yield        yield strength (Pa)
     * @param minimumYield minimum yield strength of the specification (Pa)
     */
    public record Measured(OptionalDouble conductivity, Map<String, Double> hardness, OptionalDouble yield,
            OptionalDouble minimumYield) {

        /** Copies the map. */
        public Measured {
            hardness = Map.copyOf(hardness);
        }

        /**
         * {@return a measurement of conductivity alone}
         *
         * @param iacs conductivity (%IACS)
         */
        public static Measured ofConductivity(double iacs) {
            return new Measured(OptionalDouble.of(iacs), Map.of(), OptionalDouble.empty(), OptionalDouble.empty());
        }
    }

    /** What the evidence says of the declared temper; the worst first. */
    public enum Verdict {
        /** It cannot be the declared temper: judge by the most susceptible temper that fits. */
        CONTRADICTED,
        /** A further test is asked for. */
        TEST_WANTED,
        /** Something is missing to decide. */
        NOT_DECIDED,
        /** In the window, but a window does not prove. */
        SUPPORTED,
        /** Proven by a rule that joins conductivity and strength. */
        PROVEN,
        /** No rule is known for this alloy, temper and form. */
        NO_RULE
    }

    /**
     * The judgement.
     *
     * @param verdict       verdict
     * @param restsOnMemory whether it rests on rows from memory alone: confirm against the source
     * @param lines         what each row says
     * @param fits          tempers of the alloy whose windows hold the conductivity
     */
    public record Judgement(Verdict verdict, boolean restsOnMemory, List<Line> lines, Set<String> fits) {

        /** Copies the collections. */
        public Judgement {
            lines = List.copyOf(lines);
            fits = Set.copyOf(fits);
        }
    }

    /**
     * What one row says.
     *
     * @param statement the row's rule in words
     * @param outcome   met, not met, undecided or shown only
     * @param row       the row's key in words
     * @param source    source
     * @param remark    remark; empty when none
     */
    public record Line(String statement, String outcome, String row, Citation source, String remark) {
    }

    static TemperEvidence read(Csv csv, Scope.Reader scopes, ProductForms forms) {
        TemperEvidence evidence = new TemperEvidence(forms);
        for (Row row : csv.read("data/temper-acceptance.csv", "alloys", "tempers", "forms", "rule", "iacs_min",
                "iacs_max", "hardness", "yield_over_min_max_ksi", "yield_over_min_from_ksi", "scf_max", "verdict",
                "statement", "source", "clause", "status", "confidence", "remark")) {
            row.oneOf("confidence", RatingTable.CONFIDENCES);
            evidence.rows.add(new Acceptance(scopes.read(row), row.oneOf("rule", RULES),
                    row.number("iacs_min", 20, 65, 1), row.number("iacs_max", 20, 65, 1), hardness(row),
                    row.number("yield_over_min_max_ksi", 0, 50, 1), row.number("yield_over_min_from_ksi", 0, 50, 1),
                    row.number("scf_max", 10, 60, 1), row.oneOf("verdict", VERDICTS), row.required("statement"),
                    row.citation(), row.text("remark")));
        }
        return evidence;
    }

    /** Minima such as {@code HRB 42 / HB 85}. */
    private static Map<String, Double> hardness(Row row) {
        Map<String, Double> minima = new LinkedHashMap<>();
        for (String item : row.text("hardness").isEmpty() ? new String[0] : row.text("hardness").split("/")) {
            String[] parts = item.strip().split(" ");
            try {
                minima.put(parts[0], Double.valueOf(parts[1]));
            } catch (NumberFormatException | ArrayIndexOutOfBoundsException e) {
                row.fault("hardness '" + item + "' is no scale and number");
            }
        }
        return minima;
    }

    /**
     * {@return what measurements say of the temper of a material}
     *
     * @param answer   answer of the look-up, which holds alloy, temper and form
     * @param measured what was measured
     */
    public Judgement judge(MaterialAnswer answer, Measured measured) {
        if (answer.alloy().isEmpty()) {
            return new Judgement(Verdict.NO_RULE, false, List.of(), Set.of());
        }
        Map<String, RuleSet> sets = new LinkedHashMap<>();
        List<Line> lines = new ArrayList<>();
        for (Acceptance row : rows) {
            boolean applies = row.scope().alloys().contains(answer.alloy().get().name())
                    && row.scope().tempers().match(answer.temper()) == Match.YES
                    && forms.match(row.scope().forms(), answer.query().productForm()) == Match.YES;
            if (applies) {
                Boolean met = met(row, measured);
                lines.add(line(row, met));
                sets.computeIfAbsent(row.rule() + row.source().id(), k -> new RuleSet(row.rule())).add(row, met);
            }
        }
        return combine(sets.values(), lines, fits(answer.alloy().get(), measured));
    }

    private static Line line(Acceptance row, Boolean met) {
        String outcome = row.verdict().equals("shown only") ? "shown only"
                : met == null ? "undecided" : met ? "met: " + row.verdict() : "not met";
        return new Line(row.statement(), outcome, row.scope().describe(), row.source(), row.remark());
    }

    /** Whether the conditions of a row are met; null when a measurement is missing. */
    private static Boolean met(Acceptance row, Measured m) {
        if (row.verdict().equals("shown only") || m.conductivity().isEmpty()) {
            return null;
        }
        double iacs = tenth(m.conductivity().getAsDouble());
        if (iacs < row.iacsMin().orElse(0) || iacs > row.iacsMax().orElse(100)) {
            return false;
        }
        if (row.hardness().entrySet().stream().anyMatch(h -> m.hardness().getOrDefault(h.getKey(), h.getValue())
                < h.getValue())) {
            return false;
        }
        if (row.scfMax().isPresent()) {
            return m.yield().isEmpty() ? null
                    : tenth(m.yield().getAsDouble() / KSI) - iacs <= row.scfMax().getAsDouble() + 1e-9;
        }
        boolean yieldRule = row.rule().equals("conductivity and yield");
        boolean needsYield = yieldRule && (row.verdict().equals("accept") || row.overMinFrom().isPresent());
        if (!needsYield) {
            return true;
        }
        if (m.yield().isEmpty() || m.minimumYield().isEmpty()) {
            return null;
        }
        double over = tenth(m.yield().getAsDouble() / KSI) - tenth(m.minimumYield().getAsDouble() / KSI);
        return over >= row.overMinFrom().orElse(0) - 1e-9 && over <= row.overMinMax().orElse(1000) + 1e-9;
    }

    /** Conductivity and strength are reported and ruled in tenths of a unit. */
    private static double tenth(double value) {
        return Math.round(value * 10) / 10.0;
    }

    /** The rows of one rule in one document; of these one is met at most. */
    private static final class RuleSet {
        private final String rule;
        private boolean accept;
        private boolean reject;
        private boolean test;
        private boolean undecided;
        private boolean rejectsOnly = true;
        private boolean firm;

        RuleSet(String rule) {
            this.rule = rule;
        }

        void add(Acceptance row, Boolean met) {
            firm |= !row.source().status().needsConfirmation();
            rejectsOnly &= row.verdict().equals("reject or re-age");
            undecided |= met == null;
            if (Boolean.TRUE.equals(met)) {
                accept |= row.verdict().equals("accept");
                reject |= row.verdict().equals("reject or re-age");
                test |= row.verdict().startsWith("needs");
            }
        }

        Verdict verdict() {
            if (rule.equals("typical")) {
                return Verdict.NO_RULE;
            }
            if (reject) {
                return Verdict.CONTRADICTED;
            }
            if (test) {
                return Verdict.TEST_WANTED;
            }
            if (accept) {
                return rule.equals("window") ? Verdict.SUPPORTED : Verdict.PROVEN;
            }
            if (undecided) {
                return Verdict.NOT_DECIDED;
            }
            return rejectsOnly ? Verdict.NO_RULE : Verdict.CONTRADICTED;
        }
    }

    /** Rules that join conductivity and strength go before windows. */
    private static Judgement combine(Collection<RuleSet> sets, List<Line> lines, Set<String> fits) {
        Verdict joint = worst(sets, false);
        Verdict window = worst(sets, true);
        Verdict verdict = switch (joint) {
            case CONTRADICTED, TEST_WANTED, PROVEN -> joint;
            case NOT_DECIDED -> worse(joint, window);
            default -> window;
        };
        boolean firm = sets.stream().anyMatch(s -> s.firm && s.verdict() == verdict);
        return new Judgement(verdict, verdict != Verdict.NO_RULE && !firm, lines, fits);
    }

    private static Verdict worst(Collection<RuleSet> sets, boolean windows) {
        Verdict worst = Verdict.NO_RULE;
        for (RuleSet set : sets) {
            if (set.rule.equals("window") == windows) {
                worst = worse(worst, set.verdict());
            }
        }
        return worst;
    }

    private static Verdict worse(Verdict a, Verdict b) {
        return a.compareTo(b) <= 0 ? a : b;
    }

    private Set<String> fits(Alloy alloy, Measured measured) {
        Set<String> tempers = new LinkedHashSet<>();
        for (Acceptance row : rows) {
            if (row.rule().equals("window") && row.verdict().equals("accept")
                    && row.scope().alloys().contains(alloy.name()) && Boolean.TRUE.equals(met(row, measured))) {
                tempers.add(row.scope().tempers().describe());
            }
        }
        return tempers;
    }
}
