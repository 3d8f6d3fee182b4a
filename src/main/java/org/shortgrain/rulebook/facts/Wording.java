package org.shortgrain.rulebook.facts;

import java.util.Locale;
import org.shortgrain.part.Stated;

/** What a stated text names, without regard to upper and lower case. */
final class Wording {

    private Wording() {
    }

    /**
     * {@return whether the text certainly names one of some things}
     *
     * @param text  the text
     * @param words what to look for
     */
    static boolean names(Stated<String> text, String... words) {
        return text.surely(one -> contains(one, words));
    }

    /**
     * {@return whether a text contains one of some words}
     *
     * @param text  the text
     * @param words what to look for
     */
    static boolean contains(String text, String... words) {
        String lower = text.toLowerCase(Locale.ROOT);
        for (String word : words) {
            if (lower.contains(word.toLowerCase(Locale.ROOT))) {
                return true;
            }
        }
        return false;
    }

    /**
     * {@return what stands in the description, for texts: the text, "none" or "not stated"}
     *
     * @param text the text
     */
    static String say(Stated<String> text) {
        if (text.isKnown()) {
            return String.join(" or ", text.candidates());
        }
        return text.isNone() ? "none" : "not stated";
    }
}
