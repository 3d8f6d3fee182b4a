package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.shortgrain.terms.Citation;

/**
 * What a temper goes with: alloy and form.
 *
 * <p>Nothing here refuses a description: contradictions come out as remarks, for a review to make findings of.
 */
public final class TemperRules {
    private final MaterialTable materials;
    private final ReliefDigits relief;
    private final List<Pair> noSuchPairs = new ArrayList<>();
    private final List<Pair> forgingTempers = new ArrayList<>();

    private TemperRules(MaterialTable materials, ReliefDigits relief) {
        this.materials = materials;
        this.relief = relief;
    }

    private record Pair(List<String> alloys, TemperPattern tempers, String remark, Citation source) {
        boolean names(Alloy alloy) {
            return alloy.isNamedBy(alloys);
        }
    }

    static TemperRules read(Csv csv, Scope.Reader scopes, MaterialTable materials, ReliefDigits relief) {
        TemperRules rules = new TemperRules(materials, relief);
        for (Row row : csv.read("data/temper-pairs.csv", "alloys", "tempers", "remark", "source", "clause",
                "status")) {
            rules.noSuchPairs.add(pair(row, scopes));
        }
        for (Row row : csv.read("data/forging-tempers.csv", "alloys", "tempers", "remark", "source", "clause",
                "status")) {
            rules.forgingTempers.add(pair(row, scopes));
        }
        return rules;
    }

    private static Pair pair(Row row, Scope.Reader scopes) {
        return new Pair(scopes.alloysOf(row), scopes.tempersOf(row), row.text("remark"),
                row.citation());
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
}
