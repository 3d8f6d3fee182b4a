package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
        for (Finding one : findings) {
            List<Object> key = shared(one);
            groups.putIfAbsent(key, new ArrayList<>());
            groups.get(key).add(one);
        }
        List<FindingGroup> all = new ArrayList<>();
        for (List<Finding> group : groups.values()) {
            all.add(new FindingGroup(List.copyOf(group)));
        }
        return all;
    }

    Finding first() {
        return findings.get(0);
    }

    /** {@return the remedies that each of the findings names; other findings folded into one may bring more to it} */
    List<String> remedies() {
        List<String> shared = new ArrayList<>(first().remedies());
        for (Finding one : findings) {
            shared.retainAll(one.remedies());
        }
        return shared;
    }

    /** {@return the remedies of one of the findings that the others do not share} */
    List<String> remediesOnlyOf(Finding finding) {
        List<String> own = new ArrayList<>(finding.remedies());
        own.removeAll(remedies());
        return own;
    }

    /** {@return the sources of all the findings, each once} */
    List<Citation> sources() {
        Set<Citation> sources = new LinkedHashSet<>();
        for (Finding one : findings) {
            sources.addAll(one.sources());
        }
        return List.copyOf(sources);
    }

    List<String> ids() {
        List<String> ids = new ArrayList<>();
        for (Finding one : findings) {
            ids.add(one.id());
        }
        return ids;
    }

    /** {@return the places that are named, in the order of the findings} */
    List<String> features() {
        Set<String> features = new LinkedHashSet<>();
        for (Finding one : findings) {
            if (one.feature().isPresent()) {
                features.add(one.feature().get());
            }
        }
        return List.copyOf(features);
    }
}
