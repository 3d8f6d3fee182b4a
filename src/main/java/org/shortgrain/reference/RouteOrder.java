package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.shortgrain.terms.Citation;

/** What must come before what on a planning card, what may not come after what, and within which time. */
public final class RouteOrder {
    private final List<Pair> before = new ArrayList<>();
    private final List<Pair> neverAfter = new ArrayList<>();
    private final List<Window> windows = new ArrayList<>();

    private RouteOrder() {
    }

    /**
     * One side of a pair: operations by word, or all operations of a kind.
     *
     * @param operations canonical words
     * @param kinds      kinds
     */
    public record Side(Set<String> operations, Set<String> kinds) {

        /** Copies the sets. */
        public Side {
            operations = Set.copyOf(operations);
            kinds = Set.copyOf(kinds);
        }

        /**
         * {@return whether an operation is meant}
         *
         * @param operation operation
         */
        public boolean holds(OperationTable.Operation operation) {
            return operations.contains(operation.word()) || operation.kinds().stream().anyMatch(kinds::contains);
        }
    }

    /**
     * Two operations in order.
     *
     * @param id        name of the pair
     * @param first     what comes first
     * @param second    what must come after it, or may never come after it
     * @param families  material families for which the pair holds; empty: all
     * @param condition further condition in words; empty: none
     * @param reason    why
     * @param source    source
     * @param remark    remark; empty when none
     */
    public record Pair(String id, Side first, Side second, Set<String> families, String condition, String reason,
            Citation source, String remark) {

        /** Copies the set. */
        public Pair {
            families = Set.copyOf(families);
        }

        /**
         * {@return whether the pair holds for a family}
         *
         * @param family material family
         */
        public boolean concerns(String family) {
            return families.isEmpty() || families.contains(family);
        }
    }

    /**
     * A time between two operations, or of one.
     *
     * @param from      operation
     * @param to        operation that ends the time; empty when the time is that of {@code from} itself
     * @param seconds   time (s)
     * @param atMost    whether the time is an upper limit; else a lower one
     * @param families  material families
     * @param condition further condition in words
     * @param source    source
     */
    public record Window(String from, String to, double seconds, boolean atMost, Set<String> families,
            String condition, Citation source) {

        /** Copies the set. */
        public Window {
            families = Set.copyOf(families);
        }
    }

    static RouteOrder read(Csv csv, OperationTable operations, Alloys alloys) {
        RouteOrder order = new RouteOrder();
        for (Row row : csv.read("data/route-order.csv", "id", "before", "after", "families", "condition", "reason",
                "source", "clause", "status", "remark")) {
            order.before.add(pair(row, "before", "after", operations, alloys));
        }
        for (Row row : csv.read("data/route-never-after.csv", "id", "first", "never_after", "families", "condition",
                "reason", "source", "clause", "status", "remark")) {
            order.neverAfter.add(pair(row, "first", "never_after", operations, alloys));
        }
        for (Row row : csv.read("data/route-windows.csv", "from", "to", "amount", "unit", "sense", "families",
                "condition", "source", "clause", "status")) {
            double unit = row.oneOf("unit", Set.of("h", "s")).equals("h") ? 3600 : 1;
            String to = row.text("to");
            if (!to.isEmpty()) {
                row.oneOf("to", operations.words());
            }
            order.windows.add(new Window(row.oneOf("from", operations.words()), to,
                    row.requiredNumber("amount", 0, 1000, unit),
                    row.oneOf("sense", Set.of("at_most", "at_least")).equals("at_most"), alloys.familiesOf(row),
                    row.text("condition"), row.citation()));
        }
        return order;
    }

    private static Pair pair(Row row, String first, String second, OperationTable operations,
            Alloys alloys) {
        return new Pair(row.required("id"), side(row, first, operations), side(row, second, operations),
                alloys.familiesOf(row), row.text("condition"), row.required("reason"), row.citation(),
                row.text("remark"));
    }

    private static Side side(Row row, String column, OperationTable operations) {
        Set<String> words = new LinkedHashSet<>();
        Set<String> kinds = new LinkedHashSet<>();
        for (String item : row.list(column)) {
            boolean kind = item.startsWith("kind:");
            String name = kind ? item.substring("kind:".length()) : item;
            if (!(kind ? OperationTable.kinds() : operations.words()).contains(name)) {
                row.fault(column + " names the unknown operation or kind '" + item + "'");
            }
            (kind ? kinds : words).add(name);
        }
        return new Side(words, kinds);
    }

    /** {@return the pairs of which the first must come before the second} */
    public List<Pair> before() {
        return Collections.unmodifiableList(before);
    }

    /** {@return the pairs of which the second may never come after the first} */
    public List<Pair> neverAfter() {
        return Collections.unmodifiableList(neverAfter);
    }

    /** {@return the times} */
    public List<Window> windows() {
        return Collections.unmodifiableList(windows);
    }
}
