package org.shortgrain.part;

import java.util.Optional;

/**
 * What somebody decided on a finding or an open question of a review. It never takes the finding away: the finding stays
 * in the report with the decision beside it.
 *
 * @param finding  number of the finding or question in the report that was decided on, such as F-01
 * @param rule     the rule that raised it, which tells whether the number still means the same finding; empty for a
 *                 question of the minimum set
 * @param feature  the feature it is about; empty for the whole part
 * @param decision what was decided
 * @param reason   why
 * @param by       who decided
 * @param decided  when, ISO 8601
 * @param owner    who carries it out
 * @param due      by when, ISO 8601
 * @param closure  what shows that it is done
 */
public record Disposition(String finding, Optional<String> rule, Optional<String> feature, Decision decision, String reason,
        String by, Optional<String> decided, Optional<String> owner, Optional<String> due, Optional<Closure> closure) {

    /**
     * That a decision was carried out.
     *
     * @param evidence what shows it, such as a card with its revision or a test report
     * @param by       who closed it
     * @param on       when, ISO 8601
     */
    public record Closure(String evidence, Optional<String> by, Optional<String> on) {
    }

    /** {@return whether it overrules a rule} */
    public boolean isOverruling() {
        return decision == Decision.REJECTED_BY_REVIEWER;
    }
}
