package org.shortgrain.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.shortgrain.assessment.Knowledge;
import org.shortgrain.assessment.Matter;
import org.shortgrain.assessment.Reviewer;
import org.shortgrain.assessment.Wording;
import org.shortgrain.part.reader.PartReader;
import org.shortgrain.part.reader.Reading;
import org.shortgrain.rulebook.Rulebook;

/**
 * Times all rules over one part in a warm process: facts in, firing, folding, and why the other rules did not speak.
 * Reading, look-up and computation are done before and not counted.
 *
 * <p>Aim: at most 1 ms. Run by hand, with the classes and libraries on the class path:
 * {@code java -cp target/classes:target/test-classes:... org.shortgrain.bench.RulesBenchmark [PART.yaml...]}. Processor
 * time of the thread is printed beside the time on the clock, since a busy machine stretches the latter.
 */
public final class RulesBenchmark {

    private static final int WARM_UP = 3_000;
    private static final int ROUNDS = 15;
    private static final int REVIEWS = 200;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private RulesBenchmark() {
    }

    /**
     * Prints the times.
     *
     * @param args descriptions; the sample with the most findings if none is named
     * @throws IOException if one cannot be read
     */
    public static void main(String[] args) throws IOException {
        Knowledge knowledge = Knowledge.shipped();
        Reviewer reviewer = new Reviewer(knowledge, Wording.shipped(), "bench");
        List<String> parts = args.length > 0 ? List.of(args) : List.of("sample-reviews/strut-end-fitting.yaml");
        for (String part : parts) {
            Path file = Path.of(part);
            Reading reading = new PartReader(knowledge.vocabularies()).read(part, Files.readAllBytes(file));
            if (!(reading instanceof Reading.Read read)) {
                throw new IOException(part + " is refused");
            }
            time(file.getFileName().toString(), reviewer.matter(read.description()), knowledge.rulebook());
        }
    }

    private static void time(String name, Matter matter, Rulebook rulebook) {
        int findings = 0;
        for (int i = 0; i < WARM_UP; i++) {
            findings = matter.ask(rulebook).findings().size();
        }
        double[] clock = new double[ROUNDS];
        double[] processor = new double[ROUNDS];
        for (int round = 0; round < ROUNDS; round++) {
            long cpu = THREADS.getCurrentThreadCpuTime();
            long start = System.nanoTime();
            for (int i = 0; i < REVIEWS; i++) {
                findings = matter.ask(rulebook).findings().size();
            }
            clock[round] = (System.nanoTime() - start) / 1e6 / REVIEWS;
            processor[round] = (THREADS.getCurrentThreadCpuTime() - cpu) / 1e6 / REVIEWS;
        }
        Arrays.sort(clock);
        Arrays.sort(processor);
        System.out.printf("%-32s %d rules, %d facts, %d findings: median %.3f ms on the clock, %.3f ms of processor time,"
                + " least %.3f ms%n", name, rulebook.rules().size(), matter.facts().size(), findings, clock[ROUNDS / 2],
                processor[ROUNDS / 2], processor[0]);
    }
}
