package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Gathers the faults of all tables, so that an author of rows sees them in one run: file by file, line by line, in
 * whatever order the files were read.
 */
final class Faults {
    /** The line of a fault that concerns a whole file. */
    private static final long WHOLE_FILE = 0;

    private final List<Fault> found = new ArrayList<>();

    private record Fault(String file, long line, String what) {
        String told() {
            return file + ":" + (line == WHOLE_FILE ? "" : line + ":") + " " + what;
        }
    }

    synchronized void add(String file, long line, String what) {
        found.add(new Fault(file, line, what));
    }

    void add(String file, String what) {
        add(file, WHOLE_FILE, what);
    }

    synchronized void throwIfAny() {
        if (!found.isEmpty()) {
            throw new RulebookTableException(found.stream()
                    .sorted(Comparator.comparing(Fault::file).thenComparing(Fault::line)).map(Fault::told).toList());
        }
    }
}
