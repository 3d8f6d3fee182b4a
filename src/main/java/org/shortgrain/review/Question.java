package org.shortgrain.review;

import java.util.List;
import java.util.Optional;
import org.shortgrain.part.Location;

/**
 * A datum that is missing or contradictory.
 *
 * @param id       number in this report, such as Q-01
 * @param rule     id of the rule that asks; empty for a field of the minimum set
 * @param role     what its absence holds back
 * @param factor   the factor it bears on
 * @param feature  the feature it is about; empty if it is about the whole part
 * @param text     the question
 * @param why      why it is needed
 * @param standIn  what the review went on with meanwhile; empty if nothing was computed
 * @param decisive whether its answer can change the verdict
 * @param answers  what each admissible answer would do; empty where none is known, or none was tried
 * @param findOut  how it is found out, the cheapest way first; empty text if nothing is known of it
 * @param at       place in the description
 */
public record Question(String id, Optional<String> rule, Role role, Factor factor, Optional<String> feature,
        String text, String why, Optional<String> standIn, boolean decisive, List<Answer> answers, String findOut,
        Location at) {

    /** What the absence of a datum holds back. */
    public enum Role {
        /** It ties the report to a part, drawing or card: caps sign-off. */
        IDENTITY,
        /** It may change the verdict. */
        JUDGING
    }

    /** Copies the list. */
    public Question {
        answers = List.copyOf(answers);
    }

    /**
     * {@return what answering it does to the verdict, in one sentence}
     *
     * <p>That nothing changes follows from what was tried to find out whether the question is decisive; no review is made for
     * this sentence.
     */
    public String outlook() {
        if (role == Role.IDENTITY) {
            return "It does not bear on the verdict; the report cannot be signed while it is open.";
        }
        if (!decisive) {
            return "No answer that can be tried changes the verdict.";
        }
        return answers.isEmpty() ? "No answer to it can be tried: it is decisive until it is answered."
                : "Its answer can change the verdict, by itself or together with those to other questions.";
    }

    /**
     * {@return the same question with what its answers would do}
     *
     * @param number    its number in the report
     * @param matters   whether its answer can change the verdict
     * @param tried     what each answer would do
     * @param how       how it is found out
     */
    public Question decided(String number, boolean matters, List<Answer> tried, String how) {
        return new Question(number, rule, role, factor, feature, text, why, standIn, matters, tried, how, at);
    }
}
