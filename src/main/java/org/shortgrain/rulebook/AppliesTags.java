package org.shortgrain.rulebook;

import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import org.shortgrain.rulebook.facts.Tag;

/** The words that may stand in a rule's {@code @applies}: those of {@link Tag}. */
final class AppliesTags {

    /** All of them. */
    static final Set<String> KNOWN = Arrays.stream(Tag.values()).map(Tag::word)
            .collect(Collectors.toUnmodifiableSet());

    private AppliesTags() {
    }
}
