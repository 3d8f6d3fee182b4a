package org.shortgrain.signoff;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shortgrain.report.json.ReviewJson;
import org.shortgrain.review.Review;

/** Whether the files that a report carries belong together: each hash that its review names, computed again. */
final class ContentCheck {

    private static final byte[] END = "%%EOF".getBytes(StandardCharsets.US_ASCII);

    private ContentCheck() {
    }

    /** {@return what does not belong together, one sentence each} */
    static List<String> faults(ReportFile file) {
        Review review = file.review();
        List<String> faults = new ArrayList<>();
        if (!ReviewJson.contentHash(review).equals(review.contentHash())) {
            faults.add("the attached " + ReportFile.REVIEW + " was changed: its content hash is not the one that it states");
        }
        Optional<byte[]> description = file.description();
        if (description.isEmpty()) {
            faults.add("the description " + review.input().file() + " is not attached");
        } else if (!Hash.sha256(description.get()).equals(review.input().sha256())) {
            faults.add("the attached " + review.input().file() + " is not the description that was reviewed: its SHA-256 is "
                    + Hash.sha256(description.get()) + ", the review names " + review.input().sha256());
        }
        Optional<String> manifest = file.manifest();
        if (manifest.isEmpty()) {
            faults.add("the list of the rulebook's files, " + ReportFile.MANIFEST + ", is not attached");
        } else if (!Hash.sha256(manifest.get().getBytes(StandardCharsets.UTF_8)).equals(review.rulebook().sha256())) {
            faults.add("the attached " + ReportFile.MANIFEST + " is not the list of the rulebook that judged");
        }
        return faults;
    }

    /** {@return whether something was appended to a file after it was written} */
    static boolean isAppendedTo(byte[] pdf) {
        int ends = 0;
        for (int i = 0; i + END.length <= pdf.length; i++) {
            if (pdf[i] == END[0] && java.util.Arrays.equals(pdf, i, i + END.length, END, 0, END.length)) {
                ends++;
            }
        }
        return ends != 1;
    }
}
