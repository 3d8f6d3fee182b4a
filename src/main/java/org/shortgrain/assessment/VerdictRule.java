package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.List;
import org.shortgrain.review.Finding;
import org.shortgrain.review.Grade;
import org.shortgrain.review.Question;
import org.shortgrain.review.Verdict;

/**
 * Draws the verdict: an objection stops sign-off; failing that, an open decisive question leaves the part unjudged;
 * failing that, conditions must be done.
 *
 * @param verdict the verdict
 * @param because what led to it
 */
record VerdictRule(Verdict verdict, List<String> because) {

    /** As the findings and questions have it: each decisive question leaves the part unjudged. */
    static VerdictRule of(List<Finding> findings, List<Question> questions) {
        long decisive = questions.stream().filter(Question::decisive).count();
        return of(verdict(graded(findings, Grade.OBJECTION), decisive, graded(findings, Grade.CONDITION)), findings,
                questions);
    }

    /** The reasons of a verdict that was drawn with what each answer would do. */
    static VerdictRule of(Verdict verdict, List<Finding> findings, List<Question> questions) {
        List<Finding> objections = graded(findings, Grade.OBJECTION);
        List<Finding> conditions = graded(findings, Grade.CONDITION);
        long decisive = questions.stream().filter(Question::decisive).count();
        long identity = questions.stream().filter(one -> one.role() == Question.Role.IDENTITY).count();
        List<String> because = new ArrayList<>();
        for (Finding one : objections) {
            because.add(one.id() + " stops sign-off: " + one.title() + ".");
        }
        if (decisive > 0) {
            because.add(decisive == 1 ? "One open question can change the verdict."
                    : decisive + " open questions can change the verdict.");
        }
        if (!conditions.isEmpty()) {
            because.add(conditions.size() == 1 ? "One condition must be met before sign-off."
                    : conditions.size() + " conditions must be met before sign-off.");
        }
        if (identity > 0) {
            because.add("The report cannot be signed until part, drawing and card are identified: "
                    + (identity == 1 ? "one entry is" : identity + " entries are") + " missing.");
        }
        long record = questions.size() - decisive - identity;
        if (record > 0) {
            because.add((record == 1 ? "One further question is open" : record + " further questions are open")
                    + "; no admissible answer changes the verdict.");
        }
        if (because.isEmpty()) {
            because.add("No rule of the rulebook objects to what is declared.");
        }
        return new VerdictRule(verdict, because);
    }

    private static Verdict verdict(List<Finding> objections, long decisive, List<Finding> conditions) {
        if (!objections.isEmpty()) {
            return Verdict.OBJECTION;
        }
        if (decisive > 0) {
            return Verdict.CANNOT_BE_JUDGED;
        }
        return conditions.isEmpty() ? Verdict.NO_OBJECTION : Verdict.NO_OBJECTION_SUBJECT_TO_CONDITIONS;
    }

    private static List<Finding> graded(List<Finding> findings, Grade grade) {
        List<Finding> graded = new ArrayList<>();
        for (Finding one : findings) {
            if (one.grade() == grade) {
                graded.add(one);
            }
        }
        return graded;
    }
}
