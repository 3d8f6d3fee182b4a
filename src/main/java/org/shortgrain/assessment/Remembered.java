package org.shortgrain.assessment;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * Results of a computation by its inputs; forgets the one asked for longest ago when full. Two threads that ask at the same
 * time may both compute: the results are equal.
 *
 * @param <K> inputs, compared by value
 * @param <V> result
 */
final class Remembered<K, V> {
    /** Enough for all trials of one part. */
    private static final int MOST = 500;

    private final Function<K, V> compute;
    private final Map<K, V> results = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
            return size() > MOST;
        }
    };

    Remembered(Function<K, V> compute) {
        this.compute = compute;
    }

    V of(K inputs) {
        synchronized (results) {
            V known = results.get(inputs);
            if (known != null) {
                return known;
            }
        }
        V made = compute.apply(inputs);
        synchronized (results) {
            results.put(inputs, made);
        }
        return made;
    }
}
