package org.shortgrain.report.pdf;

import java.util.List;

/** What the report says of remedies, kept in {@code remedies.txt}. */
enum RemedyWords implements Phrase {
    SECTION_ANNEX_REMEDIES, REMEDIES_CLEARED("tried"), REMEDIES_CLOSEST("tried"), REMEDIES_NONE("tried"), COLUMN_CHANGE,
    COLUMN_OUTCOME, COLUMN_PRICE, COLUMN_AGREE, CHANGES_TITLE, CHANGES_TEXT, REMOVES("factors"), WEAKENS("factors"),
    RAISES("finding"), LEAVES("finding"), LEAVES_OPEN("question"), UTILISATION("ratio"), KEPT("strength", "mass"), BEST,
    TOUCHES("drawings", "processes"), OUT_OF_ENVELOPE, FIGURE_TRADE, FIGURE_TRADE_CLEARS("change", "strength", "ratio"),
    FIGURE_TRADE_CLOSEST("change", "ratio"), FIGURE_TRADE_ALTERNATIVE("changes"), FIGURE_TRADE_POINT("change", "strength", "ratio"),
    MISSING("change"),
    REQUALIFY("tests"), FIGURE_TRADE_NOTE, FIGURE_TRADE_ACROSS, FIGURE_TRADE_UP, FIGURE_TRADE_LIMIT;

    private final List<String> placeholders;

    RemedyWords(String... placeholders) {
        this.placeholders = List.of(placeholders);
    }

    @Override
    public List<String> placeholders() {
        return placeholders;
    }
}
