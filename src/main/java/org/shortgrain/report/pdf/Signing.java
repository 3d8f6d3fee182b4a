package org.shortgrain.report.pdf;

import java.util.List;

/** The words of the signature block, kept in {@code signatures.txt}. */
enum Signing implements Phrase {
    SIGNATURES_TEXT, SIGNATURES_NOTE, SIGNATURES_DRAFT, ROLE_PREPARED, ROLE_CHECKED, ROLE_MP_REVIEW, ROLE_STRESS_REVIEW, ROLE_QUALITY,
    ROLE_DESIGN_AUTHORITY, MEANING_PREPARED, MEANING_CHECKED, MEANING_MP_REVIEW, MEANING_STRESS_REVIEW, MEANING_QUALITY,
    MEANING_DESIGN_AUTHORITY, NOT_SIGNED("role");

    private final List<String> placeholders;

    Signing(String... placeholders) {
        this.placeholders = List.of(placeholders);
    }

    @Override
    public List<String> placeholders() {
        return placeholders;
    }
}
