package org.shortgrain.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.shortgrain.report.pdf.ReviewPdf;
import org.shortgrain.report.pdf.tagged.Attachment;
import org.shortgrain.report.pdf.tagged.PdfWriter;
import org.shortgrain.report.sarif.ReviewSarif;
import org.shortgrain.report.text.ReviewText;

/** The formats in which a review is written. */
enum ReportFormat {
    /** The report to read and sign. */
    PDF("Report") {
        @Override
        List<String> write(Report report, OutputStream to) throws IOException {
            PdfWriter.Written written = report.remedies().isPresent()
                    ? ReviewPdf.write(report.review(), attachments(report), report.printed(), report.wording(),
                            report.fonts().get(), report.change(), report.remedies().get())
                    : ReviewPdf.write(report.review(), attachments(report), report.printed(), report.wording(),
                            report.fonts().get(), report.change());
            to.write(written.bytes());
            return written.warnings();
        }
    },
    /** The review as data. */
    JSON("Data") {
        @Override
        List<String> write(Report report, OutputStream to) throws IOException {
            to.write(report.sealed().json());
            return List.of();
        }
    },
    /** The findings in the interchange format of code checkers, for editors and build servers. */
    SARIF("Findings") {
        @Override
        List<String> write(Report report, OutputStream to) throws IOException {
            to.write(ReviewSarif.bytes(report.review()));
            return List.of();
        }
    },
    /** The summary of the terminal. */
    TEXT("Summary") {
        @Override
        List<String> write(Report report, OutputStream to) throws IOException {
            to.write(ReviewText.of(report.review()).getBytes(StandardCharsets.UTF_8));
            return List.of();
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
     * @return what its reader must know about the file, one sentence each
     * @throws IOException if it cannot be written
     */
    abstract List<String> write(Report report, OutputStream to) throws IOException;

    private static List<Attachment> attachments(Report report) {
        return List.of(
                new Attachment(report.review().input().file(), "application/yaml", "Description of the part as reviewed",
                        Attachment.Relationship.SOURCE, report.input()),
                new Attachment("review.json", "application/json", "The review as data", Attachment.Relationship.DATA,
                        report.sealed().json()),
                new Attachment("review.sarif", "application/sarif+json", "The findings for editors and build servers",
                        Attachment.Relationship.DATA, ReviewSarif.bytes(report.review())),
                new Attachment("rulebook.sha256", "text/plain", "Files of the rulebook with their hashes",
                        Attachment.Relationship.SUPPLEMENT, report.manifest().getBytes(StandardCharsets.UTF_8)));
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
