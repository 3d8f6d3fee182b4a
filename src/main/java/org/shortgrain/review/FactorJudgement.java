package org.shortgrain.review;

import java.util.List;

/**
 * The state of one factor at one feature, with the reasons in the order in which they decide.
 *
 * @param factor  the factor
 * @param state   its state
 * @param reasons why, each with the number that decided where there is one; at least one
 */
public record FactorJudgement(Factor factor, FactorState state, List<String> reasons) {

    /** Copies the list and refuses an unexplained state. */
    public FactorJudgement {
        reasons = List.copyOf(reasons);
        if (reasons.isEmpty()) {
            throw new IllegalArgumentException(factor + " is " + state + " without a reason");
        }
    }
}
