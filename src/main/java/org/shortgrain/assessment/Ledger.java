package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.part.Location;
import org.shortgrain.review.Assumption;
import org.shortgrain.review.Calculation;
import org.shortgrain.review.Factor;
import org.shortgrain.review.Question;
import org.shortgrain.review.ReportNumber;
import org.shortgrain.terms.Citation;

/** What is asked, taken for granted and computed in the course of one review, each entry numbered as it comes. */
final class Ledger {

    private final List<Calculation> calculations = new ArrayList<>();
    private final Map<String, Assumption> assumptions = new LinkedHashMap<>();
    private final Set<Asked> asked = new LinkedHashSet<>();

    /**
     * A question before it has its number.
     *
     * @param rule     id of the rule that asks; empty for a field of the minimum set
     * @param role     what its absence holds back
     * @param factor   the factor it bears on
     * @param feature  the feature; empty for the whole part
     * @param text     the question
     * @param why      why it is needed
     * @param standIn  what the review went on with
     * @param at       place in the description
     */
    record Asked(Optional<String> rule, Question.Role role, Factor factor, Optional<String> feature, String text,
            String why, Optional<String> standIn, Location at) {
    }

    /**
     * Writes down a computed number.
     *
     * @param feature  the feature it was computed for; empty for the whole part
     * @param computed the number
     * @return its number in the report
     */
    String computed(Optional<String> feature, Computed computed) {
        String id = ReportNumber.of('C', calculations.size() + 1);
        calculations.add(new Calculation(id, feature, computed));
        return id;
    }

    /**
     * Writes down something taken for granted; the same text is written once.
     *
     * @param text    what is assumed
     * @param effect  which way it leans
     * @param sources where the assumed value comes from
     */
    void assume(String text, Assumption.Effect effect, Citation... sources) {
        String id = ReportNumber.of('A', assumptions.size() + 1);
        assumptions.putIfAbsent(text, new Assumption(id, text, effect, List.of(sources)));
    }

    /**
     * Writes down a question; the same question is written once.
     *
     * @param question the question
     */
    void ask(Asked question) {
        asked.add(question);
    }

    /**
     * {@return a computed number}
     *
     * @param id its number in the report
     */
    Optional<Computed> calculation(String id) {
        for (Calculation one : calculations) {
            if (one.id().equals(id)) {
                return Optional.of(one.computed());
            }
        }
        return Optional.empty();
    }

    /** {@return the calculations so far} */
    List<Calculation> calculations() {
        return List.copyOf(calculations);
    }

    /** {@return the assumptions so far} */
    List<Assumption> assumptions() {
        return List.copyOf(assumptions.values());
    }

    /** {@return the questions so far, without numbers} */
    List<Asked> asked() {
        return List.copyOf(asked);
    }
}
