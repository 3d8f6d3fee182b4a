package org.shortgrain.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.shortgrain.report.json.ReviewJson;
import org.shortgrain.report.pdf.ReviewPdf;
import org.shortgrain.report.pdf.Units;
import org.shortgrain.report.pdf.Wording;
import org.shortgrain.report.pdf.tagged.Attachment;
import org.shortgrain.report.pdf.tagged.Paper;
import org.shortgrain.report.sarif.ReviewSarif;
import org.shortgrain.report.text.ReviewText;
import org.shortgrain.review.Review;

/** The formats in which a review is written. */
enum ReportFormat {
    /** The report to read and sign. */
    PDF("Report") {
        @Override
        void write(Report report, OutputStream to) throws IOException {
            to.write(ReviewPdf.write(report.review(), attachments(report), options(report.review()),
                    Wording.shipped(), report.fonts()).bytes());
        }
    },
    /** The review as data. */
    JSON("Data") {
        @Override
        void write(Report report, OutputStream to) throws IOException {
            ReviewJson.write(report.review(), to);
        }
    },
    /** The findings in the interchange format of code checkers, for editors and build servers. */
    SARIF("Findings") {
        @Override
        void write(Report report, OutputStream to) throws IOException {
            to.write(ReviewSarif.bytes(report.review()));
        }
    },
    /** The summary of the terminal. */
    TEXT("Summary") {
        @Override
        void write(Report report, OutputStream to) throws IOException {
            to.write(ReviewText.of(report.review()).getBytes(StandardCharsets.UTF_8));
        }
    };

    private final String label;

    ReportFormat(String label) {
        this.label = label;
    }

    /**
     * Writes a report.
     *
     * @param report the report
     * @param to     where to
     * @throws IOException if it cannot be written
     */
    abstract void write(Report report, OutputStream to) throws IOException;

    private static List<Attachment> attachments(Report report) {
        return List.of(
                new Attachment(report.review().input().file(), "application/yaml", "Description of the part as reviewed",
                        Attachment.Relationship.SOURCE, report.input()),
                new Attachment("review.json", "application/json", "The review as data", Attachment.Relationship.DATA,
                        ReviewJson.bytes(report.review())),
                new Attachment("review.sarif", "application/sarif+json", "The findings for editors and build servers",
                        Attachment.Relationship.DATA, ReviewSarif.bytes(report.review())),
                new Attachment("rulebook.sha256", "text/plain", "Files of the rulebook with their hashes",
                        Attachment.Relationship.SUPPLEMENT, report.manifest().getBytes(StandardCharsets.UTF_8)));
    }

    private static ReviewPdf.Options options(Review review) {
        return new ReviewPdf.Options(Paper.A4, Units.BOTH, ReviewPdf.Status.FOR_SIGNATURE, "", "",
                LocalDate.parse(review.date()).atStartOfDay().atOffset(ZoneOffset.UTC));
    }

    /** {@return what it is, in a message} */
    String label() {
        return label;
    }

    /** {@return the ending of its file name} */
    String extension() {
        return this == TEXT ? "txt" : name().toLowerCase(java.util.Locale.ROOT);
    }

    @Override
    public String toString() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
