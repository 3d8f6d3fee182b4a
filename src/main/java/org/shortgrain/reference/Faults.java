package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.List;

/** Gathers the faults of all tables, so that an author of rows sees them in one run. */
final class Faults {
    private final List<String> found = new ArrayList<>();

    void add(String file, long line, String what) {
        found.add(file + ":" + line + ": " + what);
    }

    void add(String file, String what) {
        found.add(file + ": " + what);
    }

    void throwIfAny() {
        if (!found.isEmpty()) {
            throw new RulebookTableException(found);
        }
    }
}
