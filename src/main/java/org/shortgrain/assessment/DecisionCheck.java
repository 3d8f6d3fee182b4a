package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shortgrain.part.Disposition;
import org.shortgrain.part.Location;
import org.shortgrain.part.reader.DispositionReader;
import org.shortgrain.part.reader.Problem;
import org.shortgrain.part.reader.ProblemCode;
import org.shortgrain.review.Review;

/**
 * Holds decisions against the review that they are about. The numbers of findings count within one issue; when something
 * is mended they move. A decision is taken only for the finding of the rule and the feature that it names.
 */
public final class DecisionCheck {

    private final Review review;
    private final List<Numbered> numbered;

    /** A finding or question and what tells it from the others. */
    private record Numbered(String id, Optional<String> rule, Optional<String> feature) {

        boolean isOf(Disposition decision) {
            return rule.equals(decision.rule()) && feature.equals(decision.feature());
        }

        String words() {
            return words(rule, feature);
        }

        static String words(Optional<String> rule, Optional<String> feature) {
            return rule.orElse("a field of the minimum set") + feature.map(id -> " at " + id).orElse(" on the whole part");
        }
    }

    /**
     * Makes a check.
     *
     * @param review the review at hand
     */
    public DecisionCheck(Review review) {
        this.review = review;
        this.numbered = Stream.concat(
                review.findings().stream().map(one -> new Numbered(one.id(), Optional.of(one.rule()), one.feature())),
                review.questions().stream().map(one -> new Numbered(one.id(), one.rule(), one.feature()))).toList();
    }

    /**
     * {@return what does not fit, in the order of the file}
     *
     * @param file name of the file, for messages
     * @param read what it says
     */
    public List<Problem> problems(String file, DispositionReader.Read read) {
        List<Problem> problems = new ArrayList<>();
        boolean same = read.part().equals(review.part().number())
                && read.revision().filter(revision -> !revision.equals(review.part().revision())).isEmpty();
        if (!same) {
            problems.add(Problem.of(ProblemCode.OTHER_PART, file, new Location("/part", 1, 1), part(read.part(),
                    read.revision().orElse("")), part(review.part().number(), review.part().revision())));
            return problems;
        }
        for (Map.Entry<Disposition, Location> entry : read.dispositions().entrySet()) {
            problem(file, entry.getKey(), entry.getValue()).ifPresent(problems::add);
        }
        return problems;
    }

    private static String part(String number, String revision) {
        return number + (revision.isEmpty() ? "" : " revision " + revision);
    }

    private Optional<Problem> problem(String file, Disposition decision, Location at) {
        Optional<Numbered> bearer = numbered.stream().filter(one -> one.id().equals(decision.finding())).findFirst();
        if (bearer.isEmpty()) {
            String known = numbered.stream().map(Numbered::id).collect(Collectors.joining(", "));
            return Optional.of(Problem.of(ProblemCode.UNKNOWN_FINDING, file, at, decision.finding(),
                    known.isEmpty() ? "no decision, since nothing was found" : "one of " + known));
        }
        if (bearer.get().isOf(decision)) {
            return Optional.empty();
        }
        String advice = numbered.stream().filter(one -> one.isOf(decision)).map(Numbered::id).findFirst()
                .map(id -> "That finding is now " + id + ": move the decision there")
                .orElse("If that finding was cleared, take the decision out; to decide on this one, write "
                        + bearer.get().rule().map(rule -> "rule: " + rule).orElse("no rule")
                        + bearer.get().feature().map(id -> ", feature: " + id).orElse(" and no feature"));
        return Optional.of(Problem.of(ProblemCode.OTHER_FINDING, file, at, decision.finding(),
                Numbered.words(decision.rule(), decision.feature()), bearer.get().words(), advice));
    }
}
