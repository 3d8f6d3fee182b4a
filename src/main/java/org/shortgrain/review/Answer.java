package org.shortgrain.review;

import org.shortgrain.part.reader.JsonPatch;

/**
 * What an admissible answer to a question would do: the part was reviewed with it.
 *
 * @param words   the answer, as a clause
 * @param verdict the verdict of the review with this answer
 * @param effect  what else it does, in words
 * @param change  the answer written into the description; made and reviewed again, it gives that verdict
 */
public record Answer(String words, Verdict verdict, String effect, JsonPatch change) {

    /** {@return the answer and what it does, in one sentence} */
    public String says() {
        return "If " + words + ": " + verdict.words() + (effect.isEmpty() ? "" : "; " + effect) + ".";
    }
}
