package org.shortgrain.part;

/** Direction of the lasting tension at a feature: a word of the grain, or an axis of the part. */
public sealed interface StressDirection {

    /**
     * A direction named by the grain.
     *
     * @param word the word
     */
    record Named(DirectionWord word) implements StressDirection {
    }

    /**
     * A direction given in part axes.
     *
     * @param axis the direction
     */
    record Along(Axis axis) implements StressDirection {
    }
}
