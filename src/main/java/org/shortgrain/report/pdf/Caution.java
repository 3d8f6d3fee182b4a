package org.shortgrain.report.pdf;

import java.util.List;

/** Cautions and limits, kept in {@code cautions.txt}. */
enum Caution implements Phrase {
    WARNING_LABEL, CAUTION_LABEL, WARNING, WHO_DECIDES, CAUTIONS, CAUTION_PRECHECK, LIMITS;

    private final List<String> placeholders;

    Caution(String... placeholders) {
        this.placeholders = List.of(placeholders);
    }

    @Override
    public List<String> placeholders() {
        return placeholders;
    }
}
