package org.shortgrain.mechanics.quench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class MemoTest {

    @Test
    void equalCasesAreComputedOnceEvenIfThreadsAskTogether() throws Exception {
        Memo memo = new Memo(4);
        AtomicInteger computed = new AtomicInteger();
        CountDownLatch together = new CountDownLatch(4);
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            List<Future<String>> answers = IntStream.range(0, 4).mapToObj(i -> threads.submit(() -> {
                together.countDown();
                together.await();
                return memo.get("case", String.class, () -> "result " + computed.incrementAndGet());
            })).toList();
            for (Future<String> answer : answers) {
                assertEquals("result 1", answer.get());
            }
        } finally {
            threads.shutdown();
        }
    }

    @Test
    void aFullMemoryForgetsTheCaseThatWasAskedForLongestAgo() {
        Memo memo = new Memo(2);
        Object first = memo.get(1, Object.class, Object::new);
        Object second = memo.get(2, Object.class, Object::new);
        assertSame(first, memo.get(1, Object.class, Object::new));

        memo.get(3, Object.class, Object::new);

        assertEquals(2, memo.size());
        assertSame(first, memo.get(1, Object.class, Object::new));
        assertNotSame(second, memo.get(2, Object.class, Object::new));
    }

    @Test
    void aFailureIsReportedAndNotRemembered() {
        Memo memo = new Memo(2);

        assertThrows(IllegalStateException.class, () -> memo.get(1, String.class, () -> {
            throw new IllegalStateException("not in balance");
        }));

        assertEquals("now", memo.get(1, String.class, () -> "now"));
    }

    /** The stronger metal takes the temperatures that were computed for the other, to the last bit. */
    @Test
    void aStrongerMetalIsStressedAsIfItHadBeenQuenchedAlone() {
        SectionQuench usual = Quenches.of7050(30, "water20");
        SectionQuench stronger = new SectionQuench(usual.material().withYieldTimes(1.25), usual.film(),
                usual.thickness(), usual.solutionTemperature());
        QuenchSolver solver = new QuenchSolver(QuenchResolution.COARSE, 4);
        assertNotEquals(solver.plate(usual).core(), solver.plate(stronger).core());
        assertNotEquals(solver.bar(usual).axial().at(0), solver.bar(stronger).axial().at(0));

        assertEquals(new QuenchSolver(QuenchResolution.COARSE, 4).plate(stronger).core(), solver.plate(stronger).core(), 0);
        assertEquals(new QuenchSolver(QuenchResolution.COARSE, 4).bar(stronger).axial().at(0),
                solver.bar(stronger).axial().at(0), 0);
    }

    @Test
    void anotherBathOrThicknessIsCooledByItself() {
        QuenchSolver solver = new QuenchSolver(QuenchResolution.COARSE, 8);
        solver.plate(Quenches.of7050(30, "water20"));

        for (SectionQuench other : List.of(Quenches.of7050(30, "water60"), Quenches.of7050(40, "water20"))) {
            assertEquals(new QuenchSolver(QuenchResolution.COARSE, 8).plate(other).core(), solver.plate(other).core(), 0);
        }
    }

    @Test
    void anEqualQuenchIsTheSameResultAndAPlateIsNoBar() {
        QuenchSolver solver = new QuenchSolver(QuenchResolution.COARSE, 4);
        QuenchedPlate plate = solver.plate(Quenches.of7050(30, "water20"));

        assertSame(plate, solver.plate(Quenches.of7050(30, "water20")));
        assertNotSame(plate, solver.plate(Quenches.of7050(31, "water20")));
        assertEquals(15e-3, solver.bar(Quenches.of7050(30, "water20")).radius(), 1e-12);
    }
}
