package org.shortgrain.bench;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import org.shortgrain.reference.MaterialAnswer;
import org.shortgrain.reference.MaterialQuery;
import org.shortgrain.reference.ReferenceTables;

/**
 * Times the reference tables: reading those of a plain review and then all of them in a fresh process, and one look-up
 * in a warm one.
 *
 * <p>Aims: reading and checking all tables under 120 ms, a look-up of a material with all data stated under 20
 * microseconds. Run by hand; for the first, as the tool runs: with the flags of the launcher and an archive of classes,
 * for which everything must be in jars. DEVELOPERS.md has the commands. Processor time is printed beside the time on the
 * clock, since a busy machine stretches the latter; that of the process holds the compiler of the runtime.
 */
public final class ReferenceBenchmark {
    private static final int WARM_UP = 20_000;
    private static final int ROUNDS = 15;
    private static final int LOOK_UPS = 2_000;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final OperatingSystemMXBean PROCESS =
            ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);

    private ReferenceBenchmark() {
    }

    /**
     * Prints the times.
     *
     * @param args none
     */
    public static void main(String[] args) {
        ReferenceTables tables = load("first time in this process");
        load("second time");
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
        Spent spent = new Spent();
        ReferenceTables tables = ReferenceTables.builtIn();
        spent.print(name + ", the tables of a plain review");
        tables.readAll();
        spent.print(name + ", all tables");
        return tables;
    }

    /** What has been spent since it was made. */
    private static final class Spent {
        private final long clock = System.nanoTime();
        private final long thread = THREADS.getCurrentThreadCpuTime();
        private final long process = PROCESS.getProcessCpuTime();

        void print(String name) {
            long now = System.nanoTime();
            System.out.printf("%-56s %6.1f ms on the clock, processor %6.1f ms of the thread, %6.1f ms of the process%n",
                    name, (now - clock) / 1e6, (THREADS.getCurrentThreadCpuTime() - thread) / 1e6,
                    (PROCESS.getProcessCpuTime() - process) / 1e6);
        }
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
