package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.shortgrain.terms.Citation;

/** Published ageing of aluminium, what a card's ageing can lead to, and the heat that harms afterwards. */
public final class Ageing {
    private final ProductForms forms;
    private final List<CycleRow> cycles = new ArrayList<>();
    private final List<LimitRow> heatLimits = new ArrayList<>();

    private Ageing(ProductForms forms) {
        this.forms = forms;
    }

    private record LimitRow(List<String> alloys, TemperPattern tempers, HeatLimit limit) {
    }

    /**
     * One step of an ageing cycle.
     *
     * @param natural    whether it is a hold at room temperature
     * @param minCelsius lowest temperature (degC)
     * @param maxCelsius highest temperature (degC)
     * @param minHours   shortest time (h), if given
     * @param maxHours   longest time (h), if given
     */
    public record Step(boolean natural, double minCelsius, double maxCelsius, OptionalDouble minHours,
            OptionalDouble maxHours) {
    }

    private record CycleRow(String id, Scope scope, List<Step> steps, Citation source, String remark) {
    }

    /**
     * A published ageing cycle. One from memory is for comparison only: a card needs its specification.
     *
     * @param steps  steps in order
     * @param row    the row's key in words
     * @param source source
     * @param remark remark; empty when none
     */
    public record Cycle(List<Step> steps, String row, Citation source, String remark) {

        /** {@return how many steps of artificial ageing it has} */
        public long artificialSteps() {
            return steps.stream().filter(s -> !s.natural()).count();
        }
    }

    /**
     * Heat after the last ageing that does harm.
     *
     * @param aboveCelsius temperature above which it does (degC)
     * @param longerThan   time beyond which it does (h); empty: at once
     * @param effect       what it does
     * @param source       source
     */
    public record HeatLimit(double aboveCelsius, OptionalDouble longerThan, String effect, Citation source) {
    }

    static Ageing read(Csv csv, Scope.Reader scopes, ProductForms forms) {
        Ageing ageing = new Ageing(forms);
        ageing.readCycles(csv, scopes);
        for (Row row : csv.read("data/heat-after-ageing.csv", "alloys", "tempers", "above_degC", "longer_than_h",
                "effect", "source", "clause", "status")) {
            ageing.heatLimits.add(new LimitRow(scopes.alloysOf(row), scopes.tempersOf(row),
                    new HeatLimit(row.requiredNumber("above_degC", 20, 600, 1),
                            row.number("longer_than_h", 0, 1e5, 1), row.required("effect"), row.citation())));
        }
        return ageing;
    }

    private void readCycles(Csv csv, Scope.Reader scopes) {
        Map<String, CycleRow> byId = new LinkedHashMap<>();
        for (Row row : csv.read("data/ageing-cycles.csv", "cycle", "alloys", "tempers", "forms", "step", "kind",
                "temperature_min_degC", "temperature_max_degC", "time_min_h", "time_max_h", "source", "clause",
                "status", "remark")) {
            String id = row.required("cycle");
            byId.putIfAbsent(id, new CycleRow(id, scopes.read(row), new ArrayList<>(), row.citation(),
                    row.text("remark")));
            CycleRow cycle = byId.get(id);
            Step step = new Step(row.oneOf("kind", Set.of("age", "natural")).equals("natural"),
                    row.requiredNumber("temperature_min_degC", 0, 600, 1),
                    row.requiredNumber("temperature_max_degC", 0, 600, 1), row.number("time_min_h", 0, 1000, 1),
                    row.number("time_max_h", 0, 1000, 1));
            if (row.requiredNumber("step", 1, 9, 1) != cycle.steps().size() + 1) {
                row.fault("the steps of cycle " + cycle.id() + " are out of order");
            }
            cycle.steps().add(step);
        }
        cycles.addAll(byId.values());
    }

    /**
     * {@return the published cycles that lead to the temper of a material}
     *
     * @param answer answer of the look-up
     */
    public List<Cycle> cycles(MaterialAnswer answer) {
        List<Cycle> found = new ArrayList<>();
        if (answer.alloy().isEmpty()) {
            return found;
        }
        for (CycleRow cycle : cycles) {
            if (answer.alloy().get().isNamedBy(cycle.scope().alloys())
                    && cycle.scope().tempers().match(answer.temper()) == Match.YES
                    && forms.match(cycle.scope().forms(), answer.query().productForm()) != Match.NO) {
                found.add(new Cycle(List.copyOf(cycle.steps()), cycle.scope().describe(), cycle.source(),
                        cycle.remark()));
            }
        }
        return found;
    }

    /**
     * {@return the remark that a card makes, whose ageing cannot lead to the temper}
     *
     * <p>An over-aged 7xxx temper takes at least two steps of artificial ageing: one step at about 120 degC gives T6.
     *
     * @param answer answer of the look-up
     * @param artificialSteps steps of artificial ageing on the card, 1 or more
     */
    public Optional<TemperRemark> check(MaterialAnswer answer, int artificialSteps) {
        boolean overaged = answer.temper() instanceof Temper.HeatTreated t && t.overaged();
        boolean sevenThousand = answer.family().map(f -> f.equals("aluminium_7xxx")).orElse(false);
        if (artificialSteps < 1 || !overaged || !sevenThousand) {
            return Optional.empty();
        }
        List<Cycle> published = cycles(answer);
        long least = published.stream().mapToLong(Cycle::artificialSteps).min().orElse(2);
        if (artificialSteps >= least) {
            return Optional.empty();
        }
        Optional<Citation> source = published.stream().map(Cycle::source)
                .min((a, b) -> a.status().compareTo(b.status()));
        return Optional.of(new TemperRemark(TemperRemark.Kind.AGEING_CONTRADICTS, answer.temper().normal()
                + " takes at least " + least + " steps of artificial ageing; the card has " + artificialSteps
                + ", which gives T6", source));
    }

    /**
     * {@return the heat after ageing that harms a material in its temper}
     *
     * @param answer answer of the look-up
     */
    public List<HeatLimit> heatLimits(MaterialAnswer answer) {
        List<HeatLimit> found = new ArrayList<>();
        for (LimitRow row : heatLimits) {
            if (answer.alloy().isPresent() && answer.alloy().get().isNamedBy(row.alloys())
                    && row.tempers().match(answer.temper()) != Match.NO) {
                found.add(row.limit());
            }
        }
        return found;
    }
}
