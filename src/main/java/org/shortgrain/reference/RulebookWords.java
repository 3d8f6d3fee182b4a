package org.shortgrain.reference;

import java.util.List;
import java.util.Optional;
import org.shortgrain.part.Vocabulary;
import org.shortgrain.part.reader.Vocabularies;

/** The words of the tables, as the reader of part descriptions asks for them. */
public final class RulebookWords implements Vocabularies {
    private final ReferenceTables tables;

    /**
     * Makes the words of some tables.
     *
     * @param tables the tables
     */
    public RulebookWords(ReferenceTables tables) {
        this.tables = tables;
    }

    @Override
    public List<String> words(Vocabulary.List list) {
        return switch (list) {
            case OPERATIONS -> List.copyOf(tables.operations().words());
            case ZONES -> List.copyOf(tables.zones().words());
            case FLUIDS -> List.copyOf(tables.fluids().words());
            case FAMILIES -> List.copyOf(tables.materials().alloys().families());
        };
    }

    @Override
    public Optional<String> canonical(Vocabulary.List list, String entered) {
        return switch (list) {
            case OPERATIONS -> tables.operations().find(entered).map(OperationTable.Operation::word);
            case ZONES -> tables.zones().find(entered).map(ZoneTable.Zone::word);
            case FLUIDS -> tables.fluids().find(entered).map(FluidTable.Fluid::word);
            case FAMILIES -> tables.materials().alloys().families().stream().filter(entered::equals).findFirst();
        };
    }
}
