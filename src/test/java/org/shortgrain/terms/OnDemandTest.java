package org.shortgrain.terms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Collections;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class OnDemandTest {

    @Test
    void nothingIsReadBeforeItIsAskedForAndThenOnceForAllThreads() {
        AtomicInteger read = new AtomicInteger();
        OnDemand<Integer> table = new OnDemand<>(read::incrementAndGet);
        assertEquals(0, read.get());
        Set<Integer> seen = IntStream.range(0, 1000).parallel().mapToObj(i -> table.get()).collect(Collectors.toSet());
        assertEquals(Collections.singleton(1), seen);
    }

    @Test
    void whatCouldNotBeReadIsTriedAgain() {
        AtomicInteger read = new AtomicInteger();
        OnDemand<Integer> table = new OnDemand<>(() -> {
            if (read.incrementAndGet() == 1) {
                throw new IllegalStateException("not yet");
            }
            return 7;
        });
        assertThrows(IllegalStateException.class, table::get);
        assertEquals(7, table.get());
    }
}
