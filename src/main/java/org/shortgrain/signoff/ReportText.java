package org.shortgrain.signoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.shortgrain.review.Review;
import org.shortgrain.terms.PlainText;

/** What a report is about, carries and claims, for a terminal. */
public final class ReportText {

    private static final int WIDTH = 110;

    private ReportText() {
    }

    /**
     * {@return the review that a report carries}
     *
     * @param report the bytes of the report
     * @throws NotAReportException if it is none of ours
     */
    public static Review review(byte[] report) throws NotAReportException {
        return ReportFile.of(report).review();
    }

    /**
     * {@return part, verdict and content hash, each line ended by a line feed}
     *
     * @param report the bytes of the report
     * @throws NotAReportException if it is none of ours
     */
    public static String head(byte[] report) throws NotAReportException {
        Review review = ReportFile.of(report).review();
        List<String> lines = new ArrayList<>();
        lines.add(PlainText.clean(review.part().number() + ", revision " + (review.part().revision().isEmpty() ? "not stated"
                : review.part().revision()) + ", reviewed " + review.date() + ": " + review.verdict().words()));
        lines.add("content " + review.contentHash());
        return joined(lines);
    }

    /**
     * {@return what a report carries and claims, each line ended by a line feed}
     *
     * @param report the bytes of the report
     * @throws NotAReportException if it is none of ours
     */
    public static String contents(byte[] report) throws NotAReportException {
        ReportFile file = ReportFile.of(report);
        List<String> lines = new ArrayList<>();
        lines.addAll(PlainText.lines("Claims: ", "  ", (file.claims().isEmpty() ? "none" : String.join(", ", file.claims()))
                + ". Whether a claim is kept is for an independent validator of these standards to say.", WIDTH));
        lines.add("Carries:");
        for (Map.Entry<String, byte[]> one : file.attachments().entrySet()) {
            lines.add("  " + Hash.sha256(one.getValue()) + "  " + PlainText.clean(one.getKey()));
        }
        List<String> faults = ContentCheck.faults(file);
        lines.add(faults.isEmpty() ? "  The description, the rulebook's list and the review fit the hashes that the review names."
                : "  They do NOT fit the hashes that the review names.");
        return joined(lines);
    }

    /**
     * {@return what was found of the signatures, each line ended by a line feed}
     *
     * @param found what was found
     */
    public static String signatures(Verification found) {
        return VerificationText.of(found);
    }

    private static String joined(List<String> lines) {
        return lines.stream().map(line -> line + "\n").collect(Collectors.joining());
    }
}
