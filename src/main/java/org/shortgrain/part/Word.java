package org.shortgrain.part;

import java.util.List;
import java.util.Locale;

/** A word of a closed vocabulary of the part description. */
public interface Word {

    /** {@return the constant's name, which {@link Enum} provides} */
    String name();

    /** {@return the word as it stands in a description: the constant's name in lower case} */
    default String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** {@return other spellings that are read as this word} */
    default List<String> otherSpellings() {
        return List.of();
    }
}
