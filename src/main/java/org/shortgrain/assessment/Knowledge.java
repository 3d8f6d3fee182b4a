package org.shortgrain.assessment;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import org.shortgrain.part.reader.Vocabularies;
import org.shortgrain.reference.QuenchTables;
import org.shortgrain.reference.ReferenceTables;
import org.shortgrain.reference.RulebookWords;
import org.shortgrain.rulebook.Rulebook;
import org.shortgrain.rulebook.RulebookFiles;

/**
 * Rulebook and tables that belong together.
 *
 * @param rulebook the rules
 * @param tables   the reference tables
 * @param quench   the tables of the quench
 */
public record Knowledge(Rulebook rulebook, ReferenceTables tables, QuenchTables quench) {

    /** {@return what ships with the tool; rules and tables are loaded side by side, since neither needs the other} */
    public static Knowledge shipped() {
        CompletableFuture<Rulebook> rulebook = CompletableFuture.supplyAsync(Rulebook::shipped);
        ReferenceTables tables = ReferenceTables.builtIn();
        return new Knowledge(rulebook.join(), tables, QuenchTables.bundled());
    }

    /**
     * {@return an edited rulebook with its own tables}
     *
     * @param rulebook the rulebook
     * @throws org.shortgrain.reference.RulebookTableException if its tables have faults
     */
    public static Knowledge of(Rulebook rulebook) {
        RulebookFiles files = rulebook.files();
        Function<String, InputStream> door = name -> files.names().contains(name)
                ? new ByteArrayInputStream(files.bytes(name)) : null;
        return new Knowledge(rulebook, ReferenceTables.load(door), QuenchTables.bundled());
    }

    /** {@return the words that a description may use} */
    public Vocabularies vocabularies() {
        return new RulebookWords(tables);
    }
}
