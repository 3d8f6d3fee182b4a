package org.shortgrain.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.shortgrain.assessment.Knowledge;
import org.shortgrain.assessment.Reviewer;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.ReviewRequest;
import org.shortgrain.part.reader.EditableDescription;
import org.shortgrain.part.reader.PartReader;
import org.shortgrain.part.reader.Problem;
import org.shortgrain.part.reader.Reading;
import org.shortgrain.remedy.RemedyStudy;
import org.shortgrain.report.AtomicFile;
import org.shortgrain.report.change.Comparer;
import org.shortgrain.report.change.Comparison;
import org.shortgrain.report.json.SealedReview;
import org.shortgrain.report.pdf.Wording;
import org.shortgrain.report.pdf.tagged.Fonts;
import org.shortgrain.report.text.ReviewText;
import org.shortgrain.review.Remedies;
import org.shortgrain.review.Review;
import org.shortgrain.terms.OnDemand;

/** {@code shortgrain review}: reviews parts, prints a summary of each and writes its reports. */
final class ReviewCommand extends Command {

    static final String NAME = "review";

    private static final Path STANDARD_OUTPUT = Path.of("-");
    private static final Set<ReportFormat> USUAL = Collections.unmodifiableSet(EnumSet.of(ReportFormat.PDF, ReportFormat.JSON));

    private final Ahead ahead;

    private final Argument<List<Path>> parts = operands("PART.yaml", Path.class, "Descriptions of parts.");
    private final Argument<Path> out = option("--out", "DIR", Path.class,
            "Where the reports go; by default beside the description. '-' writes one format of one part to standard output.");
    private final Argument<Set<ReportFormat>> formats = listOption("--format", "FORMAT", ReportFormat.class,
            "Which reports to write: ${COMPLETION-CANDIDATES}; by default pdf,json.");
    private final Argument<String> date = option("--date", "YYYY-MM-DD", String.class,
            "Date of the review; by default the one in the description, else today.");
    private final Argument<Path> dispositions = option("--dispositions", "FILE", Path.class,
            "What was decided on the findings; by default PART.findings.yaml or findings.yaml beside the description.");
    private final Argument<Path> comparedWith = option("--compared-with", "OLD", Path.class,
            "An earlier review of the part (report, data or description): the PDF report then says what changed.");
    private final Argument<Boolean> withRemedies = flag("--with-remedies",
            "Add an annex to the PDF: what would clear the part.");

    private final PrintOptions print = new PrintOptions(this);
    private final RulebookOption rulebook;

    ReviewCommand(Ahead ahead) {
        super(NAME, "Reviews parts, prints a summary of each and writes its reports.");
        this.ahead = ahead;
        rulebook = new RulebookOption(this, ahead);
    }

    @Override
    public Integer call() {
        checkArguments();
        Wording wording = print.wording();
        ExitCode worst = ExitCode.OK;
        try (Desk desk = new Desk(rulebook.knowledge(), wording)) {
            for (Path part : parts.get()) {
                worst = worst.worse(review(part, desk));
            }
        }
        return worst.code();
    }

    /** What every part of one run is reviewed and printed with; what is still loading is waited for when it is needed. */
    private final class Desk implements AutoCloseable {
        private final Knowledge knowledge;
        private final PartReader reader;
        private final OnDemand<Reviewer> reviewer;
        private final Wording wording;
        private final OnDemand<Fonts> fonts = new OnDemand<>(ahead::fonts);

        Desk(Knowledge knowledge, Wording wording) {
            this.knowledge = knowledge;
            this.wording = wording;
            this.reader = new PartReader(knowledge.vocabularies());
            this.reviewer = new OnDemand<>(() -> new Reviewer(knowledge, org.shortgrain.assessment.Wording.shipped(),
                    Main.Version.text()));
        }

        @Override
        public void close() {
            fonts.made().ifPresent(Fonts::close);
        }
    }

    private boolean isToStandardOutput() {
        return out.value().equals(Optional.of(STANDARD_OUTPUT));
    }

    private void checkArguments() {
        boolean several = parts.get().size() > 1;
        if (isToStandardOutput() && (several || formats.or(USUAL).size() > 1)) {
            throw wrongUsage("standard output takes one part in one format: name one description,"
                    + " and one of pdf, json, sarif, text with --format");
        }
        if (print.isNumbered() && several) {
            throw wrongUsage("a number names one report: leave out --number, or name one description");
        }
        if ((dispositions.isStated() || comparedWith.isStated()) && several) {
            throw wrongUsage("--dispositions and --compared-with are about one part: name one description");
        }
        if (date.isStated()) {
            try {
                LocalDate.parse(date.get());
            } catch (DateTimeParseException notADate) {
                throw wrongUsage("'" + date.get() + "' is no date; expected YYYY-MM-DD, such as 2026-01-15");
            }
        }
    }

    private ExitCode review(Path part, Desk desk) {
        PrintWriter err = messages();
        Reading reading = desk.reader.read(part);
        if (reading instanceof Reading.Refused refused) {
            err.println(Problem.text(refused.problems()));
            return refused.isInputMissing() ? ExitCode.INPUT_MISSING : ExitCode.INPUT_INVALID;
        }
        Reading.Read read = (Reading.Read) reading;
        if (!read.warnings().isEmpty()) {
            err.println(Problem.text(read.warnings()));
        }
        Review.InputId input = new Review.InputId(part.getFileName().toString(), read.source().sha256());
        SealedReview sealed = SealedReview.of(DispositionFile.decided(desk.reviewer.get().review(read, input,
                dateOf(read.description())), part, dispositions.value()));
        Review review = sealed.review();
        Optional<Comparison> change = comparedWith.value()
                .map(old -> Comparer.compare(EarlierReview.of(old, () -> desk.knowledge), review));
        Optional<Remedies> remedies = withRemedies.or(false) ? EditableDescription.of(read.source()).map(edited ->
                new RemedyStudy(desk.reviewer.get(), tried -> { }).of(edited, input)) : Optional.empty();
        Report report = new Report(sealed, read.source().bytes(), desk.knowledge.rulebook().files().manifest(), change,
                remedies, print.on(review.date()), desk.wording, desk.fonts);
        return write(part, report);
    }

    private String dateOf(PartDescription description) {
        return date.value().or(() -> description.review().field(ReviewRequest::date).single())
                .orElseGet(() -> LocalDate.now(ZoneOffset.UTC).toString());
    }

    private ExitCode write(Path part, Report report) {
        PrintWriter console = console();
        ExitCode verdict = ExitCode.of(report.review().verdict());
        try {
            if (isToStandardOutput()) {
                console.flush();
                warn(part, formats.or(USUAL).iterator().next().write(report, System.out));
                System.out.flush();
                return verdict;
            }
            console.print(ReviewText.of(report.review()));
            for (ReportFormat format : formats.or(USUAL)) {
                Path file = fileOf(part, format);
                AtomicFile.write(file, to -> warn(part, format.write(report, to)));
                console.println(format.label() + " written to " + file);
            }
            console.println();
            return verdict;
        } catch (IOException cannotWrite) {
            messages().println("shortgrain: cannot write the report of " + part + ": "
                    + reason(cannotWrite) + ". Name another folder with --out; nothing that was there was changed.");
            return ExitCode.CANNOT_WRITE;
        }
    }

    private void warn(Path part, List<String> warnings) {
        for (String warning : warnings) {
            messages().println("shortgrain: in the report of " + part + ", " + warning);
        }
    }

    private Path fileOf(Path part, ReportFormat format) {
        String name = part.getFileName().toString().replaceFirst("\\.ya?ml$", "") + ".review." + format.extension();
        Path folder = out.value().orElseGet(() -> part.toAbsolutePath().getParent());
        Path beside = out.isStated() ? folder.resolve(name) : part.resolveSibling(name);
        return Files.isDirectory(folder) ? beside : folder.resolve(name);
    }

    private static String reason(IOException cannotWrite) {
        return switch (cannotWrite.getClass().getSimpleName()) {
            case "AccessDeniedException" -> "permission denied (" + cannotWrite.getMessage() + ")";
            case "FileAlreadyExistsException" -> "a file stands where the folder should be ("
                    + cannotWrite.getMessage() + ")";
            case "NoSuchFileException" -> "no such folder (" + cannotWrite.getMessage() + ")";
            default -> String.valueOf(cannotWrite.getMessage());
        };
    }
}
