package org.shortgrain.mechanics.quench;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;

/**
 * Remembers the results of long computations by their inputs, and forgets the one that was asked for longest ago when
 * full. Equal inputs are computed once, also when several threads ask at the same time.
 */
final class Memo {

    private static final float LOAD = 0.75f;

    private final Map<Object, FutureTask<?>> results;

    Memo(int capacity) {
        results = new LinkedHashMap<>(capacity, LOAD, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<Object, FutureTask<?>> eldest) {
                return size() > capacity;
            }
        };
    }

    /**
     * The result for a key, computed by the caller that asks first.
     *
     * @param inputs  the inputs; a type of their own for each kind of computation with this type of result
     * @param type    type of the result
     * @param compute the computation
     */
    <V> V get(Object inputs, Class<V> type, Supplier<V> compute) {
        Object key = Map.entry(type, inputs);
        FutureTask<?> mine = new FutureTask<>(compute::get);
        FutureTask<?> known;
        synchronized (results) {
            known = results.putIfAbsent(key, mine);
        }
        if (known == null) {
            mine.run();
            known = mine;
        }
        return type.cast(resultOf(key, known));
    }

    private Object resultOf(Object key, FutureTask<?> task) {
        try {
            return task.get();
        } catch (ExecutionException e) {
            synchronized (results) {
                results.remove(key, task);
            }
            throw new IllegalStateException("the quench cannot be computed: " + e.getCause().getMessage(),
                    e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while another thread computes the quench", e);
        }
    }

    int size() {
        synchronized (results) {
            return results.size();
        }
    }
}
