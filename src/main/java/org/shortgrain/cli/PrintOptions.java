package org.shortgrain.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.shortgrain.report.pdf.ReviewPdf;
import org.shortgrain.report.pdf.Units;
import org.shortgrain.report.pdf.Wording;
import org.shortgrain.report.pdf.tagged.Paper;
import picocli.CommandLine.Option;

/** How the report is printed, and under which number. */
final class PrintOptions {

    @Option(names = "--units", paramLabel = "UNITS", description = "Units of the PDF report: si, us, or both (SI with US"
            + " customary behind it); by default both.")
    private Units units = Units.BOTH;

    @Option(names = "--paper", paramLabel = "PAPER", description = "Sheets of the PDF report: a4 or letter; by default"
            + " a4.")
    private Paper paper = Paper.A4;

    @Option(names = "--number", paramLabel = "NUMBER", description = "Number of the PDF report, as your organisation"
            + " counts them.")
    private String number = "";

    @Option(names = "--issue", paramLabel = "ISSUE", description = "Issue of the PDF report.")
    private String issue = "";

    @Option(names = "--draft", description = "Marks every page as a draft. Otherwise it says that the report is valid"
            + " only when signed.")
    private boolean draft;

    @Option(names = "--wording", paramLabel = "DIR", description = "Your own words for the PDF report: a folder with"
            + " edited copies of the files in templates/report.")
    private Path wording;

    /** {@return whether a number is given, which can stand on one report alone} */
    boolean isNumbered() {
        return !number.isEmpty();
    }

    /**
     * {@return how a report is printed}
     *
     * @param date date of the review, ISO 8601
     */
    ReviewPdf.Options on(String date) {
        return new ReviewPdf.Options(paper, units, draft ? ReviewPdf.Status.DRAFT : ReviewPdf.Status.FOR_SIGNATURE,
                number, issue, LocalDate.parse(date).atStartOfDay().atOffset(ZoneOffset.UTC));
    }

    /** {@return the words of the report} */
    Wording wording() {
        if (wording == null) {
            return Wording.shipped();
        }
        try {
            return Wording.of(wording);
        } catch (IllegalArgumentException faulty) {
            throw new CommandFailure(ExitCode.INPUT_INVALID, "the wording in " + wording + " has a fault: "
                    + faulty.getMessage());
        } catch (IOException unreadable) {
            throw new CommandFailure(ExitCode.INPUT_MISSING, "the wording in " + wording + " cannot be read: "
                    + unreadable.getMessage() + "; the folder needs every file of templates/report");
        }
    }
}
