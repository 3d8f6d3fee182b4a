package org.shortgrain.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.shortgrain.report.json.ReviewJson;
import org.shortgrain.report.sarif.ReviewSarif;
import org.shortgrain.report.text.ReviewText;

/** The formats in which a review is written. */
enum ReportFormat {
    /** The report to read and sign. */
    PDF("Report") {
        @Override
        void write(Report report, OutputStream to) throws IOException {
            throw new UnsupportedOperationException();
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
