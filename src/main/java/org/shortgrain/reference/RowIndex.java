package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Rows by the material or group they name.
 *
 * @param <R> kind of row
 */
final class RowIndex<R> {
    private final Map<String, List<R>> byName = new HashMap<>();
    private final List<R> all = new ArrayList<>();

    void add(Scope scope, R row) {
        all.add(row);
        for (String name : scope.alloys()) {
            byName.computeIfAbsent(name, n -> new ArrayList<>()).add(row);
        }
    }

    List<R> all() {
        return all;
    }

    /** {@return the rows that name a material or one of its groups} */
    List<R> of(Alloy alloy) {
        List<R> own = byName.getOrDefault(alloy.name(), List.of());
        List<R> rows = own;
        for (String group : alloy.groups()) {
            List<R> more = byName.getOrDefault(group, List.of());
            if (!more.isEmpty()) {
                if (rows == own) {
                    rows = new ArrayList<>(own);
                }
                rows.addAll(more);
            }
        }
        return rows;
    }
}
