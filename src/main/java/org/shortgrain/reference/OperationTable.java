package org.shortgrain.reference;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** The words of a planning card, with aliases and with what each operation does to a part. */
public final class OperationTable {
    /** Kinds that rows may use. */
    private static final Set<String> KINDS = Set.of("administrative", "ageing", "cold_working", "cuts_through_finish",
            "evidence", "finish", "forming", "heat", "heat_treatment", "hydrogen_charging",
            "hydrogen_charging_steel_titanium", "hydrogen_relief", "inspection", "joining", "joins",
            "leaves_compression", "leaves_tension", "load", "machining", "may_crack", "mechanical_relief", "paint",
            "peening", "plating", "quench", "relieves_stress", "smears", "solution_treatment", "surface_ndt",
            "temper_evidence", "wet_chemistry");

    private final Map<String, Operation> operations = new LinkedHashMap<>();
    private final Words words = new Words();

    private OperationTable() {
    }

    /**
     * An operation.
     *
     * @param word    canonical word
     * @param aliases words seen on cards, British and American
     * @param kinds   what it is and does, such as {@code heat_treatment}, {@code leaves_tension},
     *                {@code hydrogen_charging}; the list is in the data dictionary
     * @param remark  remark; empty when none
     */
    public record Operation(String word, List<String> aliases, Set<String> kinds, String remark) {

        /** Copies the collections. */
        public Operation {
            aliases = List.copyOf(aliases);
            kinds = Collections.unmodifiableSet(new LinkedHashSet<>(kinds));
        }

        /**
         * {@return whether the operation is of a kind}
         *
         * @param kind kind
         */
        public boolean is(String kind) {
            return kinds.contains(kind);
        }
    }

    static OperationTable read(Csv csv) {
        OperationTable table = new OperationTable();
        for (Row row : csv.read("data/route-operations.csv", "operation", "aliases", "kinds", "remark")) {
            String word = row.required("operation");
            Set<String> kinds = row.set("kinds");
            for (String kind : kinds) {
                if (!KINDS.contains(kind)) {
                    row.fault("kind '" + kind + "' is unknown");
                }
            }
            table.operations.put(word, new Operation(word, row.list("aliases"), kinds, row.text("remark")));
            table.words.add(row, word);
            for (String alias : row.list("aliases")) {
                table.words.alias(row, alias, word);
            }
        }
        return table;
    }

    /**
     * {@return an operation}
     *
     * @param text a word or alias; case, blanks and hyphens do not matter
     */
    public Optional<Operation> find(String text) {
        return words.find(text).map(operations::get);
    }

    /** {@return all operations} */
    public Collection<Operation> all() {
        return Collections.unmodifiableCollection(operations.values());
    }

    /** {@return the canonical words} */
    public Set<String> words() {
        return Collections.unmodifiableSet(words.names());
    }

    /** {@return every word that is understood: the canonical ones and their aliases} */
    public List<String> spellings() {
        return all().stream().flatMap(one -> Stream.concat(Stream.of(one.word()), one.aliases().stream())).toList();
    }

    /** {@return the kinds} */
    static Set<String> kinds() {
        return KINDS;
    }
}
