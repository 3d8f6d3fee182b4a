package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.shortgrain.terms.Citation;

/**
 * What a temper goes with: alloy, form, ageing cycle, and heat afterwards.
 *
 * <p>Nothing here refuses a description: contradictions come out as remarks, for a review to make findings of.
 */
public final class TemperRules {
    private final MaterialTable materials;
    private final ReliefDigits relief;
    private final List<Pair> noSuchPairs = new ArrayList<>();
    private final List<Pair> forgingTempers = new ArrayList<>();
    private final List<Cycle> cycles = new ArrayList<>();
    private final List<Scoped<HeatLimit>> heatLimits = new ArrayList<>();

    private TemperRules(MaterialTable materials, ReliefDigits relief) {
        this.materials = materials;
        this.relief = relief;
    }

    private record Pair(List<String> alloys, TemperPattern tempers, String remark, Citation source) {
        boolean names(Alloy alloy) {
            return TemperRules.names(alloys, alloy);
        }
    }

    private record Scoped<T>(List<String> alloys, TemperPattern tempers, T value) {
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

    /**
     * A published ageing cycle. Cycles from memory are for comparison; a card needs its specification.
     *
     * @param id      name
     * @param scope   alloy, temper and form
     * @param steps   steps in order
     * @param source  source
     * @param remark  remark; empty when none
     */
    record Cycle(String id, Scope scope, List<Step> steps, Citation source, String remark) {
    }

    /**
     * A published ageing cycle for one alloy and temper.
     *
     * @param steps  steps in order
     * @param row    the row's key in words
     * @param source source
     * @param remark remark; empty when none
     */
    public record AgeingCycle(List<Step> steps, String row, Citation source, String remark) {

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

    static TemperRules read(Csv csv, Sources sources, MaterialTable materials, ReliefDigits relief) {
        TemperRules rules = new TemperRules(materials, relief);
        Scope.Reader scopes = new Scope.Reader(materials.alloys(), materials.forms());
        for (Row row : csv.read("data/temper-pairs.csv", "alloys", "tempers", "remark", "source", "clause",
                "status")) {
            rules.noSuchPairs.add(pair(row, scopes, sources));
        }
        for (Row row : csv.read("data/forging-tempers.csv", "alloys", "tempers", "remark", "source", "clause",
                "status")) {
            rules.forgingTempers.add(pair(row, scopes, sources));
        }
        rules.readCycles(csv, sources, scopes);
        for (Row row : csv.read("data/heat-after-ageing.csv", "alloys", "tempers", "above_degC", "longer_than_h",
                "effect", "source", "clause", "status")) {
            rules.heatLimits.add(new Scoped<>(scopes.alloysOf(row), scopes.tempersOf(row),
                    new HeatLimit(row.requiredNumber("above_degC", 20, 600, 1),
                            row.number("longer_than_h", 0, 1e5, 1), row.required("effect"), row.citation(sources))));
        }
        return rules;
    }

    private static Pair pair(Row row, Scope.Reader scopes, Sources sources) {
        return new Pair(scopes.alloysOf(row), scopes.tempersOf(row), row.text("remark"),
                row.citation(sources));
    }

    private void readCycles(Csv csv, Sources sources, Scope.Reader scopes) {
        Map<String, Cycle> byId = new LinkedHashMap<>();
        for (Row row : csv.read("data/ageing-cycles.csv", "cycle", "alloys", "tempers", "forms", "step", "kind",
                "temperature_min_degC", "temperature_max_degC", "time_min_h", "time_max_h", "source", "clause",
                "status", "remark")) {
            Cycle cycle = byId.computeIfAbsent(row.required("cycle"), id -> new Cycle(id, scopes.read(row),
                    new ArrayList<>(), row.citation(sources), row.text("remark")));
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

    private static boolean names(List<String> names, Alloy alloy) {
        return names.contains(alloy.name()) || alloy.groups().stream().anyMatch(names::contains);
    }

    /**
     * {@return what there is to say about the temper of a material as the tables read it}
     *
     * @param answer answer of the look-up, which holds alloy, temper and form
     */
    public List<TemperRemark> check(MaterialAnswer answer) {
        List<TemperRemark> remarks = new ArrayList<>();
        checkDesignation(answer.temper(), remarks);
        answer.alloy().ifPresent(alloy -> checkPair(alloy, answer.temper(), answer.query().productForm(), remarks));
        if (answer.temper() instanceof Temper.HeatTreated t) {
            answer.query().productForm().ifPresent(form -> checkForm(t, form, remarks));
        }
        return remarks;
    }

    private static void checkDesignation(Temper temper, List<TemperRemark> remarks) {
        if (temper instanceof Temper.Unreadable u) {
            add(remarks, TemperRemark.Kind.UNREADABLE, u.reason());
        }
        if (!(temper instanceof Temper.HeatTreated t)) {
            return;
        }
        if (t.state() == Temper.State.UNLISTED) {
            add(remarks, TemperRemark.Kind.UNLISTED, t.normal() + " is not in the list of tempers");
        }
        t.formerName().ifPresent(name -> add(remarks, TemperRemark.Kind.OLD_NAME,
                name + " is an old name of " + t.normal()));
        if (t.open() == Temper.OpenDigits.SECOND) {
            add(remarks, TemperRemark.Kind.DIGITS_OPEN, "the digit after T7 is missing in " + t.written()
                    + "; it tells T73 from T76 and T79");
        }
        if (t.open() == Temper.OpenDigits.RELIEF) {
            add(remarks, TemperRemark.Kind.DIGITS_OPEN, "the stress relief digits are missing in " + t.written());
        }
        if (t.userTreated()) {
            add(remarks, TemperRemark.Kind.USER_TREATED, t.normal()
                    + " is heat treated by the user: the mill's properties need proof on the part");
        }
    }

    private void checkPair(Alloy alloy, Temper temper, Optional<String> form, List<TemperRemark> remarks) {
        if (!(temper instanceof Temper.HeatTreated t) || t.open() == Temper.OpenDigits.SECOND) {
            return;
        }
        for (Pair pair : noSuchPairs) {
            if (pair.names(alloy) && pair.tempers().match(temper) == Match.YES) {
                remarks.add(new TemperRemark(TemperRemark.Kind.NO_SUCH_PAIR,
                        alloy.name() + " does not come in " + temper.normal() + ": " + pair.remark(),
                        Optional.of(pair.source())));
                return;
            }
        }
        if (!materials.namesTemper(alloy, temper)) {
            add(remarks, TemperRemark.Kind.NO_ROW, "no table names " + alloy.name() + " in " + temper.normal());
        }
        if (form.isPresent() && Set.of("die_forging", "hand_forging", "forging").contains(form.get())) {
            checkForgingList(alloy, t, remarks);
        }
    }

    private void checkForgingList(Alloy alloy, Temper.HeatTreated temper, List<TemperRemark> remarks) {
        for (Pair pair : forgingTempers) {
            if (pair.names(alloy) && pair.tempers().match(temper) == Match.NO) {
                remarks.add(new TemperRemark(TemperRemark.Kind.NOT_ON_FORGING_LIST, temper.normal()
                        + " is not among the tempers that the specification for forgings lists for " + alloy.name()
                        + ": " + pair.tempers().describe(), Optional.of(pair.source())));
            }
        }
    }

    private void checkForm(Temper.HeatTreated temper, String form, List<TemperRemark> remarks) {
        if (temper.open() == Temper.OpenDigits.SECOND) {
            return;
        }
        Optional<ReliefDigits.Ruling> ruling = relief.ruling(temper.relief(), form);
        if (ruling.isEmpty()) {
            return;
        }
        String digits = temper.relief().isEmpty() ? "no stress relief digits" : "digits " + temper.relief();
        String words = temper.normal() + ", " + form.replace('_', ' ') + ": " + digits;
        Optional<Citation> source = Optional.of(ruling.get().source());
        switch (ruling.get().verdict()) {
            case NO -> remarks.add(new TemperRemark(TemperRemark.Kind.FORM_CONTRADICTS_DIGITS,
                    words + " cannot be on this form", source));
            case QUERY, RARE, OLD_USAGE -> {
                if (!temper.relief().isEmpty()) {
                    remarks.add(new TemperRemark(TemperRemark.Kind.DIGITS_TO_QUERY,
                            words + " are unusual on this form", source));
                }
            }
            case UNRELIEVED -> remarks.add(new TemperRemark(TemperRemark.Kind.UNRELIEVED,
                    words + ": not relieved mechanically, the quench stress is still there", source));
            default -> {
                // usual, expected and possible need no remark
            }
        }
    }

    private static void add(List<TemperRemark> remarks, TemperRemark.Kind kind, String statement) {
        remarks.add(new TemperRemark(kind, statement, Optional.empty()));
    }

    /**
     * {@return the published cycles that lead to the temper of a material}
     *
     * @param answer answer of the look-up
     */
    public List<AgeingCycle> ageing(MaterialAnswer answer) {
        List<AgeingCycle> found = new ArrayList<>();
        if (answer.alloy().isEmpty()) {
            return found;
        }
        for (Cycle cycle : cycles) {
            if (names(cycle.scope().alloys(), answer.alloy().get())
                    && cycle.scope().tempers().match(answer.temper()) == Match.YES
                    && materials.forms().match(cycle.scope().forms(), answer.query().productForm()) != Match.NO) {
                found.add(new AgeingCycle(List.copyOf(cycle.steps()), cycle.scope().describe(), cycle.source(),
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
    public Optional<TemperRemark> checkAgeing(MaterialAnswer answer, int artificialSteps) {
        boolean overaged = answer.temper() instanceof Temper.HeatTreated t && t.overaged();
        boolean sevenThousand = answer.family().map(f -> f.equals("aluminium_7xxx")).orElse(false);
        if (artificialSteps < 1 || !overaged || !sevenThousand) {
            return Optional.empty();
        }
        List<AgeingCycle> published = ageing(answer);
        long least = published.stream().mapToLong(AgeingCycle::artificialSteps).min().orElse(2);
        if (artificialSteps >= least) {
            return Optional.empty();
        }
        Optional<Citation> source = published.stream().map(AgeingCycle::source)
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
    public List<HeatLimit> heatAfterAgeing(MaterialAnswer answer) {
        List<HeatLimit> found = new ArrayList<>();
        for (Scoped<HeatLimit> limit : heatLimits) {
            if (answer.alloy().isPresent() && names(limit.alloys(), answer.alloy().get())
                    && limit.tempers().match(answer.temper()) != Match.NO) {
                found.add(limit.value());
            }
        }
        return found;
    }
}
