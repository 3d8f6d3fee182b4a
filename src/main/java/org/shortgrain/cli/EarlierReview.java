package org.shortgrain.cli;

import java.nio.file.Path;
import java.util.function.Supplier;
import org.shortgrain.assessment.Knowledge;
import org.shortgrain.assessment.Reviewer;
import org.shortgrain.assessment.Wording;
import org.shortgrain.part.ReviewRequest;
import org.shortgrain.part.reader.PartReader;
import org.shortgrain.part.reader.Problem;
import org.shortgrain.part.reader.Reading;
import org.shortgrain.report.json.ReviewJson;
import org.shortgrain.report.json.UnreadableReviewException;
import org.shortgrain.review.Review;
import org.shortgrain.signoff.NotAReportException;
import org.shortgrain.signoff.ReportText;

/** A review in whatever form it is at hand: a report, its data, or the description that is reviewed for it. */
final class EarlierReview {

    private EarlierReview() {
    }

    /**
     * {@return the review that a file holds or gives}
     *
     * @param file      a report (PDF), a review as data (JSON) or a description (YAML)
     * @param knowledge rulebook for a description
     * @throws CommandFailure if it is none of them
     */
    static Review of(Path file, Supplier<Knowledge> knowledge) {
        byte[] bytes = InputFile.read(file, "review");
        try {
            if (bytes.length > 3 && bytes[0] == '%' && bytes[1] == 'P' && bytes[2] == 'D' && bytes[3] == 'F') {
                return ReportText.review(bytes);
            }
            return isData(file, bytes) ? ReviewJson.read(bytes) : reviewed(file, bytes, knowledge.get());
        } catch (NotAReportException | UnreadableReviewException other) {
            throw new CommandFailure(ExitCode.INPUT_INVALID, file + " holds no review: " + other.getMessage());
        }
    }

    private static boolean isData(Path file, byte[] bytes) {
        return file.toString().endsWith(".json") || bytes.length > 0 && bytes[0] == '{';
    }

    private static Review reviewed(Path file, byte[] bytes, Knowledge knowledge) {
        Reading reading = new PartReader(knowledge.vocabularies()).read(file.toString(), bytes);
        if (!(reading instanceof Reading.Read read)) {
            throw new CommandFailure(ExitCode.INPUT_INVALID, Problem.text(((Reading.Refused) reading).problems()));
        }
        String date = read.description().review().field(ReviewRequest::date).single()
                .orElseGet(() -> java.time.LocalDate.now(java.time.ZoneOffset.UTC).toString());
        return ReviewJson.sealed(new Reviewer(knowledge, Wording.shipped(), Main.Version.text()).review(read,
                new Review.InputId(file.getFileName().toString(), read.source().sha256()), date));
    }
}
