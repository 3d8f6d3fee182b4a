package org.shortgrain.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A rule with one condition spoilt.
 *
 * @param rule   id of the rule
 * @param change what was done to which condition
 * @param when   the spoilt condition; the rule's own one in the copy that nothing was done to
 */
record Mutant(String rule, String change, String when) {

    /** What is said of the copy that nothing was done to. */
    static final String UNCHANGED = "unchanged";

    /**
     * {@return a rule as it stands, then every way to spoil one of its conditions: a constraint left out or turned round,
     * one alternative of an "or" left out or turned round, a {@code not} or {@code exists} left out or exchanged}
     *
     * @param rule id of the rule
     * @param when what stands between {@code when} and {@code then}
     */
    static List<Mutant> of(String rule, String when) {
        List<Condition> elements = Condition.read(when);
        List<Mutant> mutants = new ArrayList<>(List.of(new Mutant(rule, UNCHANGED, text(elements))));
        for (int at = 0; at < elements.size(); at++) {
            Condition element = elements.get(at);
            for (int constraint = 0; constraint < element.constraints().size(); constraint++) {
                for (Condition spoilt : spoilt(element, constraint)) {
                    mutants.add(replaced(rule, elements, at, spoilt, element.constraints().get(constraint)));
                }
            }
            if (!element.word().isEmpty() || !element.from().isEmpty() && element.constraints().isEmpty()) {
                String other = element.word().equals("not") ? "exists" : "not";
                mutants.add(new Mutant(rule, "drop: " + element.text(), text(without(elements, at))));
                mutants.add(replaced(rule, elements, at, element.worded(other), element.text()));
            }
        }
        return mutants;
    }

    private static List<Condition> spoilt(Condition element, int constraint) {
        String text = element.constraints().get(constraint);
        List<Condition> spoilt = new ArrayList<>(List.of(element.without(constraint),
                element.with(constraint, Condition.opposite(text))));
        List<String> alternatives = Condition.alternatives(text);
        for (int at = 0; alternatives.size() > 1 && at < alternatives.size(); at++) {
            List<String> rest = new ArrayList<>(alternatives);
            rest.remove(at);
            spoilt.add(element.with(constraint, String.join(" || ", rest)));
            rest.add(at, Condition.opposite(alternatives.get(at)));
            spoilt.add(element.with(constraint, String.join(" || ", rest)));
        }
        return spoilt;
    }

    private static Mutant replaced(String rule, List<Condition> elements, int at, Condition spoilt, String was) {
        List<Condition> changed = new ArrayList<>(elements);
        changed.set(at, spoilt);
        return new Mutant(rule, was + "  =>  " + spoilt.text(), text(changed));
    }

    private static List<Condition> without(List<Condition> elements, int at) {
        List<Condition> rest = new ArrayList<>(elements);
        rest.remove(at);
        return rest;
    }

    private static String text(List<Condition> elements) {
        return elements.stream().map(element -> "  " + element.text()).collect(Collectors.joining("\n"));
    }
}
