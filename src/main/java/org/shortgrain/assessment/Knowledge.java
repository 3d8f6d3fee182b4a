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

/** Rulebook and tables that belong together. Immutable; several threads may use one. */
public final class Knowledge {

    /** The rules come last to a review, after tables and computations, and take as long to load as both together. */
    private final CompletableFuture<Rulebook> rulebook;
    private final CompletableFuture<ReferenceTables> tables;

    /**
     * Puts rules and tables together.
     *
     * @param rulebook the rules
     * @param tables   the reference tables
     */
    Knowledge(Rulebook rulebook, ReferenceTables tables) {
        this(CompletableFuture.completedFuture(rulebook), CompletableFuture.completedFuture(tables));
    }

    private Knowledge(CompletableFuture<Rulebook> rulebook, CompletableFuture<ReferenceTables> tables) {
        this.rulebook = rulebook;
        this.tables = tables;
    }

    /** {@return what ships with the tool; it goes on loading beside whatever the caller does first} */
    public static Knowledge shipped() {
        return new Knowledge(CompletableFuture.supplyAsync(Rulebook::shipped),
                CompletableFuture.supplyAsync(ReferenceTables::builtIn));
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
        return new Knowledge(rulebook, ReferenceTables.load(door));
    }

    /** {@return the rules} */
    public Rulebook rulebook() {
        return rulebook.join();
    }

    /** {@return the reference tables} */
    public ReferenceTables tables() {
        return tables.join();
    }

    /** {@return the tables of the quench} */
    public QuenchTables quench() {
        return tables().quench();
    }

    /** {@return the words that a description may use} */
    public Vocabularies vocabularies() {
        return new RulebookWords(this::tables);
    }
}
