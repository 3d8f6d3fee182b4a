package org.shortgrain.rulebook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.stream.Collectors;
import org.shortgrain.review.Grade;
import org.shortgrain.rulebook.facts.Tag;
import org.shortgrain.terms.Citation;

/** Checks the form of all rules of a rulebook together, before any of them is compiled. */
final class RuleForm {

    private static final List<String> TAGS = Arrays.stream(Tag.values()).map(Tag::word).toList();

    private final List<DrlFile> files;
    private final Optional<Set<String>> documents;
    private final Map<String, RuleInfo> known;
    private final List<RulebookProblem> problems = new ArrayList<>();

    /**
     * Parses rule files.
     *
     * @param texts     file name to text
     * @param documents ids of the documents that may be cited; empty if there is no list
     * @param beside    rules that these rules stand beside
     */
    RuleForm(SortedMap<String, String> texts, Optional<Set<String>> documents, List<RuleInfo> beside) {
        this.files = texts.entrySet().stream().map(file -> new DrlFile(file.getKey(), file.getValue())).toList();
        this.documents = documents;
        this.known = beside.stream().collect(Collectors.toMap(RuleInfo::id, rule -> rule, (one, other) -> one,
                HashMap::new));
    }

    /**
     * {@return the files, all sound}
     *
     * @throws RulebookException with every problem, if there is one
     */
    List<DrlFile> checked() throws RulebookException {
        files.forEach(file -> problems.addAll(file.problems()));
        if (problems.isEmpty()) {
            files.forEach(this::checkUnique);
            files.forEach(file -> file.rules().forEach(rule -> check(file, rule)));
        }
        if (!problems.isEmpty()) {
            throw new RulebookException(problems.stream().sorted().toList());
        }
        return files;
    }

    private void checkUnique(DrlFile file) {
        for (DrlFile.Rule rule : file.rules()) {
            RuleInfo earlier = known.put(rule.id(), rule.metadata().info());
            if (earlier != null) {
                problems.add(file.problem(rule, rule.line(), "stands in " + earlier.file() + " too; ids are unique"));
            }
        }
    }

    private void check(DrlFile file, DrlFile.Rule rule) {
        RuleInfo info = rule.metadata().info();
        List<String> complaints = new ArrayList<>();
        info.sources().stream().map(Citation::id)
                .filter(id -> documents.isPresent() && !documents.get().contains(id))
                .forEach(id -> complaints.add("@sources: no document '" + id + "' in " + RulebookFiles.SOURCES));
        info.applies().stream().filter(tag -> !TAGS.contains(tag))
                .forEach(tag -> complaints.add("@applies: '" + tag + "' is not known; expected one of "
                        + String.join(", ", TAGS)));
        checkSubsumed(info, complaints);
        complaints.forEach(complaint -> problems.add(file.problem(rule, rule.line(), complaint)));
    }

    private void checkSubsumed(RuleInfo info, List<String> complaints) {
        for (String id : info.subsumes()) {
            RuleInfo subsumed = known.get(id);
            if (subsumed == null) {
                complaints.add("@subsumes: there is no rule " + id);
            } else if (Comparator.<Grade>naturalOrder().compare(info.effectiveGrade(), subsumed.effectiveGrade()) > 0) {
                complaints.add("@subsumes: " + id + " is graver (" + subsumed.effectiveGrade().word() + ") than "
                        + info.id() + " (" + info.effectiveGrade().word() + ")");
            }
        }
        if (reachable(info).contains(info.id())) {
            complaints.add("@subsumes: runs in a circle back to " + info.id());
        }
    }

    private Set<String> reachable(RuleInfo from) {
        Set<String> reached = new LinkedHashSet<>();
        List<String> open = new ArrayList<>(from.subsumes());
        while (!open.isEmpty()) {
            String id = open.remove(open.size() - 1);
            if (reached.add(id) && known.containsKey(id)) {
                open.addAll(known.get(id).subsumes());
            }
        }
        return reached;
    }
}
