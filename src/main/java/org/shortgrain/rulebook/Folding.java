package org.shortgrain.rulebook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.shortgrain.part.Location;
import org.shortgrain.review.Factor;
import org.shortgrain.review.Finding;
import org.shortgrain.review.Grade;
import org.shortgrain.review.ReportNumber;

/**
 * Turns what rules raised into the findings of a report: each said once, one finding for one cause, the gravest first.
 */
final class Folding {

    private static final String NOT_READ = " None of the rule's sources has been read, so this is a condition and no"
            + " objection: confirm against the source.";

    private final RuleIndex rules;
    private final List<String> features;

    /**
     * Makes a folding.
     *
     * @param rules    the rules
     * @param features ids of the features in the order of the description
     */
    Folding(RuleIndex rules, List<String> features) {
        this.rules = rules;
        this.features = features;
    }

    /**
     * {@return what was raised, folded; findings are numbered, questions come last and are not}
     *
     * @param raised what was raised, in any order
     */
    List<Finding> findings(Collection<Findings.Raised> raised) {
        List<Draft> drafts = merged(raised);
        drafts.sort(order());
        List<Draft> kept = gathered(folded(drafts));
        List<Finding> findings = new ArrayList<>();
        for (Draft draft : kept) {
            if (!draft.asks()) {
                findings.add(draft.finding(ReportNumber.of('F', findings.size() + 1)));
            }
        }
        kept.stream().filter(Draft::asks).forEach(draft -> findings.add(draft.finding("")));
        return findings;
    }

    /** The same rule may match twice for one reason: the same statement at the same place is one finding. */
    private List<Draft> merged(Collection<Findings.Raised> raised) {
        Map<Object, List<Findings.Raised>> same = raised.stream().collect(Collectors.groupingBy(
                one -> List.of(one.rule(), one.feature(), one.statement()), LinkedHashMap::new, Collectors.toList()));
        return same.values().stream().map(this::draft).collect(Collectors.toCollection(ArrayList::new));
    }

    private Draft draft(List<Findings.Raised> same) {
        Findings.Raised first = same.get(0);
        Draft draft = new Draft(rules.of(first.rule()), first.feature(), first.statement());
        if (same.size() > 1) {
            // the engine's order of firing is not fixed; the order of evidence must not depend on it
            same.sort(Comparator.comparing((Findings.Raised one) -> one.evidence().toString())
                    .thenComparing(one -> one.at().stream().map(Location::path).collect(Collectors.joining())));
        }
        same.forEach(one -> draft.add(one.evidence(), one.at()));
        return draft;
    }

    private Comparator<Draft> order() {
        return Comparator.comparing((Draft draft) -> draft.entry.grade())
                .thenComparing(draft -> draft.rule.factor() == Factor.COMBINED ? 0 : 1)
                .thenComparingInt(draft -> draft.entry.rank())
                .thenComparingInt(draft -> draft.feature.map(this::position).orElse(-1))
                .thenComparing(draft -> draft.feature.orElse(""))
                .thenComparing(draft -> draft.statement);
    }

    private int position(String feature) {
        int position = features.indexOf(feature);
        return position < 0 ? features.size() : position;
    }

    /** A finding takes in what it subsumes; the gravest takes first, and what is taken in still takes in its own. */
    private List<Draft> folded(List<Draft> drafts) {
        Map<Draft, Draft> home = new LinkedHashMap<>();
        for (Draft draft : drafts) {
            Set<String> subsumed = draft.entry.below();
            if (!subsumed.isEmpty()) {
                drafts.stream().filter(other -> draft.covers(other) && subsumed.contains(other.rule.id()))
                        .forEach(other -> home.putIfAbsent(other, draft));
            }
        }
        List<Draft> kept = new ArrayList<>();
        for (Draft draft : drafts) {
            if (home.containsKey(draft)) {
                last(draft, home).takeIn(draft);
            } else {
                kept.add(draft);
            }
        }
        return kept;
    }

    /** What a rule says of several places in the same words and because of the same lines of the description has one cause:
     * it is said once, of the part, with the places. */
    private static List<Draft> gathered(List<Draft> drafts) {
        Map<Object, List<Draft>> same = drafts.stream().collect(Collectors.groupingBy(
                one -> one.at.isEmpty() ? one : List.of(one.rule.id(), one.statement, one.at), LinkedHashMap::new,
                Collectors.toList()));
        return same.values().stream().map(Draft::gathered).toList();
    }

    private static Draft last(Draft draft, Map<Draft, Draft> home) {
        Draft at = draft;
        while (home.containsKey(at)) {
            at = home.get(at);
        }
        return at;
    }

    private static final class Draft {
        private final RuleIndex.Entry entry;
        private final RuleInfo rule;
        private final Optional<String> feature;
        private final String statement;
        private final Set<String> evidence = new LinkedHashSet<>();
        private final Set<Location> at = new LinkedHashSet<>();
        private final Set<String> foldedIn = new TreeSet<>();
        private final Set<String> remedies = new LinkedHashSet<>();

        Draft(RuleIndex.Entry entry, Optional<String> feature, String statement) {
            this.entry = entry;
            this.rule = entry.info();
            this.feature = feature;
            this.statement = statement;
            remedies.addAll(rule.remedies());
        }

        boolean asks() {
            return entry.grade() == Grade.QUESTION;
        }

        void add(Collection<String> moreEvidence, Collection<Location> morePlaces) {
            evidence.addAll(moreEvidence);
            at.addAll(morePlaces);
        }

        boolean covers(Draft other) {
            return feature.isEmpty() || feature.equals(other.feature);
        }

        void takeIn(Draft other) {
            foldedIn.add(other.rule.id());
            if (other.entry.grade() == entry.grade()) {
                remedies.addAll(other.remedies);
            }
            add(other.evidence, other.at);
        }

        /** {@return one for all; places that a finding on the whole part takes in need no naming} */
        static Draft gathered(List<Draft> same) {
            List<String> places = same.stream().flatMap(one -> one.feature.stream()).toList();
            if (same.size() == 1) {
                return same.get(0);
            }
            Draft one = new Draft(same.get(0).entry, Optional.empty(), same.get(0).statement);
            if (places.size() == same.size()) {
                one.evidence.add("at " + String.join(", ", places));
            }
            for (Draft draft : same) {
                one.add(draft.evidence, draft.at);
                one.foldedIn.addAll(draft.foldedIn);
                one.remedies.addAll(draft.remedies);
            }
            return one;
        }

        Finding finding(String number) {
            boolean lowered = rule.grade() == Grade.OBJECTION && entry.grade() != Grade.OBJECTION;
            return new Finding(number, rule.id(), entry.grade(), rule.factor(), feature, rule.title(),
                    lowered ? statement + NOT_READ : statement, List.copyOf(evidence), rule.why(), List.copyOf(remedies),
                    rule.sources(), List.copyOf(at), List.copyOf(foldedIn), rule.needsConfirmation());
        }
    }
}
