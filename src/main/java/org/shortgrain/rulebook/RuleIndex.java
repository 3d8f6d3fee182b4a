package org.shortgrain.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.shortgrain.review.Grade;
import org.shortgrain.review.RuleUse;

/** What is asked of every rule in every review, worked out once: its place in order, its grade, what it takes in. */
final class RuleIndex {

    private static final String NOTHING_MET = "Asked; nothing that is declared meets its conditions.";

    private final Map<String, Entry> entries = new LinkedHashMap<>();
    private final List<Entry> inOrder;

    /**
     * A rule.
     *
     * @param info  the rule
     * @param rank  its place by subject and number
     * @param grade the grade of its findings
     * @param below rules that it subsumes, directly or through others
     * @param unmet what is said of it where it was asked and did not speak
     */
    record Entry(RuleInfo info, int rank, Grade grade, Set<String> below, RuleUse unmet) {
    }

    RuleIndex(List<RuleInfo> rules) {
        Map<String, RuleInfo> byId = new LinkedHashMap<>();
        rules.stream().sorted(RuleInfo.ORDER).forEach(rule -> byId.put(rule.id(), rule));
        for (RuleInfo rule : byId.values()) {
            entries.put(rule.id(), new Entry(rule, entries.size(), rule.effectiveGrade(), below(rule, byId),
                    new RuleUse(rule.id(), rule.title(), NOTHING_MET)));
        }
        inOrder = List.copyOf(entries.values());
    }

    private static Set<String> below(RuleInfo rule, Map<String, RuleInfo> byId) {
        Set<String> reached = new LinkedHashSet<>();
        List<String> open = new ArrayList<>(rule.subsumes());
        while (!open.isEmpty()) {
            String id = open.remove(0);
            if (reached.add(id) && byId.containsKey(id)) {
                open.addAll(byId.get(id).subsumes());
            }
        }
        return Set.copyOf(reached);
    }

    /** {@return the rules, by subject and number} */
    List<Entry> all() {
        return inOrder;
    }

    /**
     * {@return a rule; empty if there is none with that id}
     *
     * @param id its id
     */
    Optional<Entry> find(String id) {
        return Optional.ofNullable(entries.get(id));
    }

    /**
     * {@return a rule}
     *
     * @param id id of a rule of this rulebook
     */
    Entry of(String id) {
        return find(id).orElseThrow();
    }
}
