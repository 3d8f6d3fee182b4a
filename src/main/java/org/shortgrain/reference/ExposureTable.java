package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.shortgrain.terms.Citation;

/** Which exposures of tests stand for which fluids of service. */
public final class ExposureTable {

    private final List<Exposure> exposures = new ArrayList<>();

    private ExposureTable() {
    }

    /**
     * An exposure of a test.
     *
     * @param name     its name
     * @param words    what a statement of it contains, any one of them, in capitals
     * @param fluids   fluids of service that it stands for
     * @param families material families for which it does
     * @param source   where this comes from
     */
    public record Exposure(String name, Set<String> words, Set<String> fluids, Set<String> families, Citation source) {

        /** Copies the sets. */
        public Exposure {
            words = Set.copyOf(words);
            fluids = Set.copyOf(fluids);
            families = Set.copyOf(families);
        }
    }

    static ExposureTable read(Csv csv, FluidTable fluids, Alloys alloys) {
        ExposureTable table = new ExposureTable();
        for (Row row : csv.read("data/test-exposures.csv", "exposure", "words", "fluids", "families", "source", "clause",
                "status")) {
            for (String fluid : row.set("fluids")) {
                if (fluids.find(fluid).isEmpty()) {
                    row.fault("no fluid is called '" + fluid + "'");
                }
            }
            Set<String> words = new HashSet<>();
            for (String word : row.list("words")) {
                words.add(word.toUpperCase(Locale.ROOT));
            }
            table.exposures.add(new Exposure(row.required("exposure"), words, row.set("fluids"),
                    alloys.familiesOf(row), row.citation()));
        }
        return table;
    }

    /**
     * {@return the exposure that a statement names; empty if the table knows none in it}
     *
     * @param stated the statement, such as {@code ASTM G44}
     */
    public Optional<Exposure> of(String stated) {
        String text = stated.toUpperCase(Locale.ROOT);
        return exposures.stream().filter(one -> one.words().stream().anyMatch(text::contains)).findFirst();
    }
}
