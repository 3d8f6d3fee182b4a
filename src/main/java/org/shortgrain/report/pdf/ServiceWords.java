package org.shortgrain.report.pdf;

import java.util.List;

/** What the report says of a part in service, kept in {@code service.txt}. */
enum ServiceWords implements Phrase {
    SECTION_SERVICE, SERVICE_NONE, SERVICE_TEXT, CRACKS_TITLE, CRACKS_TEXT, CRACK_AT("id", "feature"), CRACK_NOWHERE,
    COLUMN_SPEAKS_FOR, COLUMN_SPEAKS_AGAINST, COLUMN_SHARE, COLUMN_MODE, COLUMN_DECIDES, NOTHING, CRACK_CONTRIBUTIONS,
    CRACK_ALTERNATIVES, CRACK_NEXT, COLUMN_ON_PART, COLUMN_ON_SISTERS, TESTS_TITLE, TESTS_COUNTED, TESTS_NOT_COUNTED,
    TESTS_SPECIMENS("cracked", "runouts"), COLUMN_SCOPE, COLUMN_RESULTS, COLUMN_INTERVAL, COLUMN_COUNTS, SCHEDULES_TITLE,
    SCHEDULES_TEXT, COLUMN_LOOKED_FOR, COLUMN_FIRST, COLUMN_REPEAT, COLUMN_SET_BY, NOT_INSPECTABLE,
    SCHEDULE_WHY("feature"), SCHEDULE_DATES("feature"), COLUMN_WHEN, COLUMN_DUE, SCHEDULE_BEHIND("calculations"),
    FIGURE_TESTS_IDENTIFIED("place", "low", "high"), FIGURE_TESTS_OPEN("place"),
    FIGURE_TESTS_ALTERNATIVE("scope", "cracked", "runouts", "threshold", "low", "high"), FIGURE_TESTS_NOTE("calculation"),
    FIGURE_GROWTH_FAST("feature"), FIGURE_GROWTH_SLOW("feature"), FIGURE_GROWTH_BELOW("feature"),
    FIGURE_GROWTH_ALTERNATIVE("feature", "found", "depth", "low", "high"), FIGURE_GROWTH_NOTE("calculation");

    private final List<String> placeholders;

    ServiceWords(String... placeholders) {
        this.placeholders = List.of(placeholders);
    }

    @Override
    public List<String> placeholders() {
        return placeholders;
    }
}
