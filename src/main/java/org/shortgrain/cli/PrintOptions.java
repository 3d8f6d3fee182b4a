package org.shortgrain.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.shortgrain.report.pdf.ReviewPdf;
import org.shortgrain.report.pdf.Units;
import org.shortgrain.report.pdf.Wording;
import org.shortgrain.report.pdf.tagged.Paper;

/** How the report is printed, and under which number. */
final class PrintOptions {

    private final Argument<Units> units;
    private final Argument<Paper> paper;
    private final Argument<String> number;
    private final Argument<String> issue;
    private final Argument<Boolean> draft;
    private final Argument<Path> wording;

    /**
     * The options, added to a command.
     *
     * @param command the command
     */
    PrintOptions(Command command) {
        units = command.option("--units", "UNITS", Units.class,
                "Units of the PDF report: si, us, or both (SI with US customary behind it); by default both.");
        paper = command.option("--paper", "PAPER", Paper.class,
                "Sheets of the PDF report: a4 or letter; by default a4.");
        number = command.option("--number", "NUMBER", String.class,
                "Number of the PDF report, as your organisation counts them.");
        issue = command.option("--issue", "ISSUE", String.class, "Issue of the PDF report.");
        draft = command.flag("--draft",
                "Marks every page as a draft. Otherwise it says that the report is valid only when signed.");
        wording = command.option("--wording", "DIR", Path.class,
                "Your own words for the PDF report: a folder with edited copies of the files in templates/report.");
    }

    /** {@return whether a number is given, which can stand on one report alone} */
    boolean isNumbered() {
        return !number.or("").isEmpty();
    }

    /**
     * {@return how a report is printed}
     *
     * @param date date of the review, ISO 8601
     */
    ReviewPdf.Options on(String date) {
        return new ReviewPdf.Options(paper.or(Paper.A4), units.or(Units.BOTH),
                draft.or(false) ? ReviewPdf.Status.DRAFT : ReviewPdf.Status.FOR_SIGNATURE, number.or(""), issue.or(""),
                LocalDate.parse(date).atStartOfDay().atOffset(ZoneOffset.UTC));
    }

    /** {@return the words of the report} */
    Wording wording() {
        if (!wording.isStated()) {
            return Wording.shipped();
        }
        Path folder = wording.get();
        try {
            return Wording.of(folder);
        } catch (IllegalArgumentException faulty) {
            throw new CommandFailure(ExitCode.INPUT_INVALID, "the wording in " + folder + " has a fault: "
                    + faulty.getMessage());
        } catch (IOException unreadable) {
            throw new CommandFailure(ExitCode.INPUT_MISSING, "the wording in " + folder + " cannot be read: "
                    + unreadable.getMessage() + "; the folder needs every file of templates/report");
        }
    }
}
