package org.shortgrain.rulebook;

/** Says of a part whether a rule needs to be asked: whether the part has what the rule's {@code @applies} names. */
@FunctionalInterface
public interface Applicability {

    /**
     * {@return whether the part has what a tag stands for, and a sentence on it}
     *
     * @param tag a word of {@code @applies}
     */
    Answer of(String tag);

    /**
     * An answer.
     *
     * @param holds    whether the part has it
     * @param sentence what the description says, such as "no fit is stated"; without a full stop
     */
    record Answer(boolean holds, String sentence) {
    }

    /** {@return the answer of somebody who looks at nothing: every rule is asked} */
    static Applicability toAll() {
        return tag -> new Answer(true, tag);
    }
}
