package org.shortgrain.rulebook;

import java.util.Set;

/** The words that may stand in a rule's {@code @applies}. */
final class AppliesTags {

    /** All of them; while it is empty, every word is allowed. */
    static final Set<String> KNOWN = Set.of();

    private AppliesTags() {
    }
}
