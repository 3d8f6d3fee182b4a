package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shortgrain.review.Finding;
import org.shortgrain.terms.Citation;

/**
 * Findings of one rule at several places. What the rule says of itself is printed once for all of them; statement and
 * evidence stay with each.
 *
 * @param findings the findings in the order of the review; at least one
 */
record FindingGroup(List<Finding> findings) {

    /** What findings must share to be printed as one. */
    private static List<Object> shared(Finding finding) {
        return List.of(finding.rule(), finding.grade(), finding.title(), finding.why(), finding.needsConfirmation());
    }

    /** {@return the findings in groups, each where its first finding stands} */
    static List<FindingGroup> of(List<Finding> findings) {
        Map<List<Object>, List<Finding>> groups = new LinkedHashMap<>();
        findings.forEach(one -> groups.computeIfAbsent(shared(one), key -> new ArrayList<>()).add(one));
        return groups.values().stream().map(List::copyOf).map(FindingGroup::new).toList();
    }

    Finding first() {
        return findings.get(0);
    }

    /** {@return the remedies that each of the findings names; other findings folded into one may bring more to it} */
    List<String> remedies() {
        return first().remedies().stream()
                .filter(remedy -> findings.stream().allMatch(one -> one.remedies().contains(remedy))).toList();
    }

    /** {@return the remedies of one of the findings that the others do not share} */
    List<String> remediesOnlyOf(Finding finding) {
        List<String> shared = remedies();
        return finding.remedies().stream().filter(remedy -> !shared.contains(remedy)).toList();
    }

    /** {@return the sources of all the findings, each once} */
    List<Citation> sources() {
        return findings.stream().flatMap(one -> one.sources().stream()).distinct().toList();
    }

    List<String> ids() {
        return findings.stream().map(Finding::id).toList();
    }

    /** {@return the places that are named, in the order of the findings} */
    List<String> features() {
        return findings.stream().flatMap(one -> one.feature().stream()).distinct().toList();
    }
}
