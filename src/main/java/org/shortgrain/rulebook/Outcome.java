package org.shortgrain.rulebook;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.shortgrain.review.Finding;
import org.shortgrain.review.RuleUse;

/**
 * What a rulebook says of some facts. Every rule of the rulebook is in it once: raised, folded in, applied or not
 * applicable.
 *
 * @param findings      what was raised, the gravest first, numbered
 * @param questions     what rules of grade question raised; not numbered, since a review numbers its questions itself
 * @param applied       rules that were asked and raised nothing
 * @param notApplicable rules that were not asked, each with the reason
 */
public record Outcome(List<Finding> findings, List<Finding> questions, List<RuleUse> applied,
        List<RuleUse> notApplicable) {

    /** Copies the lists. */
    public Outcome {
        findings = List.copyOf(findings);
        questions = List.copyOf(questions);
        applied = List.copyOf(applied);
        notApplicable = List.copyOf(notApplicable);
    }

    /** {@return ids of the rules that raised something, folded in or not} */
    public Set<String> raised() {
        Set<String> ids = new TreeSet<>();
        Stream.concat(findings.stream(), questions.stream()).forEach(finding -> {
            ids.add(finding.rule());
            ids.addAll(finding.foldedIn());
        });
        return ids;
    }
}
