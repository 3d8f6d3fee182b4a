package org.shortgrain.reference;

import java.util.function.Supplier;

/**
 * A table that is read when it is first asked for, and once, whichever threads ask.
 *
 * @param <T> the table
 */
final class OnDemand<T> {
    private final Supplier<T> reader;
    private T table;

    OnDemand(Supplier<T> reader) {
        this.reader = reader;
    }

    synchronized T get() {
        if (table == null) {
            table = reader.get();
        }
        return table;
    }
}
