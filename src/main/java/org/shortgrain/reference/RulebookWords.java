package org.shortgrain.reference;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.shortgrain.part.Vocabulary;
import org.shortgrain.part.reader.Vocabularies;

/** The words of the tables, as the reader of part descriptions asks for them. */
public final class RulebookWords implements Vocabularies {
    private final Supplier<ReferenceTables> tables;

    /**
     * Makes the words of some tables.
     *
     * @param tables the tables
     */
    public RulebookWords(ReferenceTables tables) {
        this(() -> tables);
    }

    /**
     * Makes the words of tables that may still be loading: they are waited for when the first word is asked for.
     *
     * @param tables the tables
     */
    public RulebookWords(Supplier<ReferenceTables> tables) {
        this.tables = tables;
    }

    @Override
    public List<String> words(Vocabulary.List list) {
        return switch (list) {
            case OPERATIONS -> List.copyOf(tables.get().operations().words());
            case ZONES -> List.copyOf(tables.get().zones().words());
            case FLUIDS -> List.copyOf(tables.get().fluids().words());
            case FAMILIES -> List.copyOf(tables.get().materials().alloys().families());
        };
    }

    @Override
    public Optional<String> canonical(Vocabulary.List list, String entered) {
        return switch (list) {
            case OPERATIONS -> tables.get().operations().find(entered).map(OperationTable.Operation::word);
            case ZONES -> tables.get().zones().find(entered).map(ZoneTable.Zone::word);
            case FLUIDS -> tables.get().fluids().find(entered).map(FluidTable.Fluid::word);
            case FAMILIES -> tables.get().materials().alloys().families().stream().filter(entered::equals).findFirst();
        };
    }
}
