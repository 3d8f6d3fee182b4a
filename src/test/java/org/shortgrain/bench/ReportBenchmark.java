package org.shortgrain.bench;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.shortgrain.report.pdf.ReviewPdf;
import org.shortgrain.report.pdf.SampleReview;
import org.shortgrain.report.pdf.Wording;
import org.shortgrain.report.pdf.tagged.Attachment;
import org.shortgrain.report.pdf.tagged.Fonts;
import org.shortgrain.report.pdf.tagged.PdfWriter;
import org.shortgrain.review.Review;

/**
 * How long a warm report takes on one core. Run by hand; the figure to compare with is CPU time, since wall time drifts
 * with what else the machine does.
 */
public final class ReportBenchmark {

    private static final int ROUNDS = 12;
    private static final int REPORTS = 40;
    private static final int COUNTED_ROUNDS = 5;
    private static final double NANOSECONDS_PER_MILLISECOND = 1e6;

    private ReportBenchmark() {
    }

    /**
     * Prints time for each report, its pages and its size.
     *
     * @param args none
     */
    public static void main(String[] args) {
        Review review = SampleReview.usual();
        List<Attachment> attachments = SampleReview.attachments();
        Wording wording = Wording.shipped();
        double[] rounds = new double[ROUNDS];
        PdfWriter.Written written = null;
        try (Fonts fonts = Fonts.load()) {
            for (int round = 0; round < ROUNDS; round++) {
                long start = cpu();
                for (int i = 0; i < REPORTS; i++) {
                    written = ReviewPdf.write(review, attachments, SampleReview.options(), wording, fonts);
                }
                rounds[round] = (cpu() - start) / NANOSECONDS_PER_MILLISECOND / REPORTS;
            }
        }
        double[] counted = Arrays.copyOfRange(rounds, ROUNDS - COUNTED_ROUNDS, ROUNDS);
        Arrays.sort(counted);
        System.out.printf(Locale.ROOT, "%d pages, %d bytes: %.1f ms CPU a report (median of the last %d of %d rounds"
                        + " of %d; %.1f to %.1f), %.2f ms a page%n", written.pages(), written.bytes().length,
                counted[COUNTED_ROUNDS / 2], COUNTED_ROUNDS, ROUNDS, REPORTS, counted[0], counted[COUNTED_ROUNDS - 1],
                counted[COUNTED_ROUNDS / 2] / written.pages());
    }

    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
