package org.shortgrain.report.pdf;

import java.util.List;
import java.util.Locale;

/** Something that the report says in words of its own; the words stand in a text file that a user can edit. */
interface Phrase {

    /** {@return the name of the constant} */
    String name();

    /** {@return the names of the values that the words must use, in the order in which they are handed in} */
    List<String> placeholders();

    /** {@return the name of the entry in the text file} */
    default String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
