package org.shortgrain.report.pdf;

import java.util.List;

/** What the report says of decisions and of changes against an earlier issue, kept in {@code followup.txt}. */
enum FollowUp implements Phrase {
    ROW_DECIDED, DECIDED("decision", "reason", "by"), DECISIONS_TEXT, DECISION_OF("id", "decision"), DUE("date"),
    CLOSED("by", "evidence"), OVERRULED("rule", "reason"), SECTION_CHANGES, CHANGES_NOT_COMPARED, CHANGES_TEXT("before", "verdict", "after"),
    CHANGES_NONE, CHANGES_WORSE, CHANGES_NOT_WORSE, COLUMN_CHANGE, COLUMN_WHAT, COLUMN_BEFORE, COLUMN_AFTER, CHANGES_IN_WORDS("parts"),
    ABSENT, BEYOND_BAND, WITHIN_BAND, INPUT;

    private final List<String> placeholders;

    FollowUp(String... placeholders) {
        this.placeholders = List.of(placeholders);
    }

    @Override
    public List<String> placeholders() {
        return placeholders;
    }
}
