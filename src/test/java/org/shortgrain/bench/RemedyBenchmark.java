package org.shortgrain.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.shortgrain.assessment.Knowledge;
import org.shortgrain.assessment.Reviewer;
import org.shortgrain.assessment.Trials;
import org.shortgrain.assessment.Wording;
import org.shortgrain.part.reader.DescriptionValue;
import org.shortgrain.part.reader.EditableDescription;
import org.shortgrain.remedy.RemedyStudy;
import org.shortgrain.review.Review;

/**
 * Times 200 different candidate reviews of the strut fitting, and a whole study of it, in a warm process on all processors.
 * Aim: 200 in 1.5 s on two cores. Run by hand: {@code java -cp target/classes:target/test-classes:...
 * org.shortgrain.bench.RemedyBenchmark}.
 */
public final class RemedyBenchmark {

    private static final int CANDIDATES = 200;
    private static final int ROUNDS = 10;

    private RemedyBenchmark() {
    }

    /**
     * Prints the times.
     *
     * @param args none
     * @throws IOException if the sample cannot be read
     */
    public static void main(String[] args) throws IOException {
        Reviewer reviewer = new Reviewer(Knowledge.shipped(), Wording.shipped(), "bench");
        EditableDescription part = EditableDescription.of(Files.readString(Path.of("sample-reviews/strut-end-fitting.yaml")))
                .orElseThrow();
        for (int round = 0; round < ROUNDS; round++) {
            Trials trials = new Trials(reviewer);
            List<EditableDescription> parts = IntStream.range(0, CANDIDATES).mapToObj(n -> part.with(part.setting(
                    "/features/0/loads/0/stress", DescriptionValue.of("\"" + (5 + n / 10.0) + " MPa\"")))).toList();
            long processor = processor();
            long start = System.nanoTime();
            parts.parallelStream().forEach(one -> trials.verdict(trials.of(one).orElseThrow()));
            long between = System.nanoTime();
            long used = processor() - processor;
            int tried = new RemedyStudy(reviewer, count -> { }).of(part, new Review.InputId("strut", "")).tried();
            System.out.printf("%d candidate reviews %.0f ms, processor time %.0f ms; study of %d changes %.0f ms; %d processors%n",
                    trials.count(), (between - start) / 1e6, used / 1e6, tried, (System.nanoTime() - between) / 1e6,
                    Runtime.getRuntime().availableProcessors());
        }
    }

    /** Time on all processors (ns), since a busy machine stretches the time on the clock. */
    private static long processor() {
        return ManagementFactory.getPlatformMXBean(com.sun.management.OperatingSystemMXBean.class).getProcessCpuTime();
    }
}
