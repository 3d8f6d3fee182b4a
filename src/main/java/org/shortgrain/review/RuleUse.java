package org.shortgrain.review;

/**
 * A rule that was asked and raised nothing, or was not applicable.
 *
 * @param rule   id of the rule
 * @param title  its title
 * @param reason why it raised nothing or does not apply
 */
public record RuleUse(String rule, String title, String reason) {
}
