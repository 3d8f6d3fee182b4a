package org.shortgrain.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import org.shortgrain.reference.MaterialAnswer;
import org.shortgrain.reference.MaterialQuery;
import org.shortgrain.reference.ReferenceTables;

/**
 * Times the reference tables: loading all of them in a fresh process, and one look-up in a warm one.
 *
 * <p>Aims: loading under 120 ms, a look-up of a material with all data stated under 20 microseconds. Run by hand, with
 * the classes and libraries on the class path:
 * {@code java -XX:+UseSerialGC -cp target/classes:target/test-classes:... org.shortgrain.bench.ReferenceBenchmark}.
 * Processor time of the thread is printed beside the time on the clock, since a busy machine stretches the latter.
 */
public final class ReferenceBenchmark {
    private static final int WARM_UP = 20_000;
    private static final int ROUNDS = 15;
    private static final int LOOK_UPS = 2_000;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private ReferenceBenchmark() {
    }

    /**
     * Prints the times.
     *
     * @param args none
     */
    public static void main(String[] args) {
        ReferenceTables tables = load("loading all tables, first time in this process");
        load("loading all tables, second time");
        time(tables, "7075-T7351 plate 60 mm", MaterialQuery.ofAlloy("7075").temper("T7351").form("plate")
                .thickness(0.060));
        time(tables, "7050-T7452 hand forging 100 mm", MaterialQuery.ofAlloy("7050").temper("T7452")
                .form("hand_forging").thickness(0.100));
        time(tables, "4340 bar 1241 to 1379 MPa", MaterialQuery.ofAlloy("4340").form("bar_rolled")
                .strength(1241e6, 1379e6));
        time(tables, "17-4PH H1025 bar 60 mm", MaterialQuery.ofAlloy("17-4PH").temper("H1025").form("bar_rolled")
                .thickness(0.060));
        time(tables, "7075, all else open", MaterialQuery.ofAlloy("7075"));
        time(tables, "a 7xxx alloy, all else open", MaterialQuery.ofFamily("aluminium_7xxx"));
    }

    private static ReferenceTables load(String name) {
        long cpu = THREADS.getCurrentThreadCpuTime();
        long start = System.nanoTime();
        ReferenceTables tables = ReferenceTables.builtIn();
        System.out.printf("%-48s %7.1f ms on the clock, %7.1f ms of processor time%n", name,
                (System.nanoTime() - start) / 1e6, (THREADS.getCurrentThreadCpuTime() - cpu) / 1e6);
        return tables;
    }

    private static void time(ReferenceTables tables, String name, MaterialQuery query) {
        int seen = 0;
        for (int i = 0; i < WARM_UP; i++) {
            seen += sizeOf(tables.materials().lookUp(query));
        }
        double[] clock = new double[ROUNDS];
        double[] processor = new double[ROUNDS];
        for (int round = 0; round < ROUNDS; round++) {
            long cpu = THREADS.getCurrentThreadCpuTime();
            long start = System.nanoTime();
            for (int i = 0; i < LOOK_UPS; i++) {
                seen += sizeOf(tables.materials().lookUp(query));
            }
            clock[round] = (System.nanoTime() - start) / 1e3 / LOOK_UPS;
            processor[round] = (THREADS.getCurrentThreadCpuTime() - cpu) / 1e3 / LOOK_UPS;
        }
        Arrays.sort(clock);
        Arrays.sort(processor);
        System.out.printf("%-32s median %7.1f us on the clock, %7.1f us of processor time (%d)%n", name,
                clock[ROUNDS / 2], processor[ROUNDS / 2], seen % 10);
    }

    private static int sizeOf(MaterialAnswer answer) {
        return answer.directions().size() + answer.statements().size();
    }
}
