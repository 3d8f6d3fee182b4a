package org.shortgrain.rulebook;

import java.util.Optional;

/** Says of a part whether a rule needs to be asked: whether the part has what the rule's {@code @applies} names. */
@FunctionalInterface
public interface Applicability {

    /**
     * {@return why a rule with a tag is not asked, such as "no weld is on the card"; empty if it is asked}
     *
     * @param tag a word of {@code @applies}
     */
    Optional<String> keepsOut(String tag);

    /** {@return the answer of somebody who looks at nothing: every rule is asked} */
    static Applicability toAll() {
        return tag -> Optional.empty();
    }
}
