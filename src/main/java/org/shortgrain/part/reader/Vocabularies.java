package org.shortgrain.part.reader;

import java.util.List;
import java.util.Optional;
import org.shortgrain.part.Vocabulary;

/** The words of a description that are data of the rulebook: operations, zones, fluids, families. */
public interface Vocabularies {

    /**
     * {@return the words of a list in a fixed order, without aliases}
     *
     * @param list which list
     */
    List<String> words(Vocabulary.List list);

    /**
     * {@return the word of the list that the entered word stands for: itself, or the word it is an alias of; empty if
     * the list does not hold it}
     *
     * @param list    which list
     * @param entered word as entered
     */
    Optional<String> canonical(Vocabulary.List list, String entered);
}
