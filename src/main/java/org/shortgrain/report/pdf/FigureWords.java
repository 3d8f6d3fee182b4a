package org.shortgrain.report.pdf;

import java.util.List;

/** Titles, notes and alternatives of the figures, kept in {@code figures.txt}. */
enum FigureWords implements Phrase {
    FIGURE_BUDGET_OVER("place", "most"), FIGURE_BUDGET_UNDER, FIGURE_BUDGET_UNKNOWN, FIGURE_BUDGET_MOST("source"),
    FIGURE_BUDGET_NOTE, FIGURE_BUDGET_BAR("place", "parts", "sum", "unit", "low", "high", "threshold"),
    FIGURE_BUDGET_PART("source", "value"), FIGURE_SECTION_TENSION("place", "stress"),
    FIGURE_SECTION_COMPRESSION("place", "stress"),
    FIGURE_SECTION_LOCAL("place", "stress"), FIGURE_SECTION_ALTERNATIVE("thickness", "direction", "lowest", "highest", "depth", "stress"),
    FIGURE_SECTION_NOTE("calculation"), FIGURE_ROUTE_WRONG("operations", "order"), FIGURE_ROUTE_ORDER("order"), FIGURE_ROUTE_PROPOSED,
    FIGURE_ROUTE_RIGHT,
    FIGURE_ROUTE_ALTERNATIVE("steps"), FIGURE_ROUTE_NOTE, FIGURE_POCKET_HOLDS("place"), FIGURE_POCKET_DRAINS("place"),
    FIGURE_POCKET_ALTERNATIVE("length", "depth", "attitudes"), FIGURE_POCKET_ATTITUDE("name", "pitch"),
    FIGURE_POCKET_ATTITUDE_HOLDS, FIGURE_POCKET_ATTITUDE_COMPUTED("depth", "volume"), FIGURE_POCKET_ATTITUDE_DRAINS, FIGURE_POCKET_ATTITUDE_CLOSED, FIGURE_POCKET_NOTE,
    FIGURE_BUSH("place", "stress"), FIGURE_BUSH_ALTERNATIVE("bore", "hole", "outer", "interference"),
    FIGURE_BUSH_INTERFERENCE("interference"), FIGURE_BUSH_NOTE("calculation"), FIGURE_GRAIN_ST("place"),
    FIGURE_GRAIN_OTHER("place", "direction"), FIGURE_GRAIN_UNKNOWN, FIGURE_GRAIN_ALTERNATIVE("l", "lt", "st", "pull"),
    FIGURE_GRAIN_NOTE("basis"), FIGURE_GRAIN_PARTING;

    private final List<String> placeholders;

    FigureWords(String... placeholders) {
        this.placeholders = List.of(placeholders);
    }

    @Override
    public List<String> placeholders() {
        return placeholders;
    }
}
