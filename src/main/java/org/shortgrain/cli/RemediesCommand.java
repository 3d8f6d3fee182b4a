package org.shortgrain.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntConsumer;
import org.shortgrain.assessment.Knowledge;
import org.shortgrain.assessment.Reviewer;
import org.shortgrain.assessment.Wording;
import org.shortgrain.part.reader.EditableDescription;
import org.shortgrain.part.reader.PartReader;
import org.shortgrain.part.reader.Problem;
import org.shortgrain.part.reader.Reading;
import org.shortgrain.remedy.RemedyStudy;
import org.shortgrain.report.AtomicFile;
import org.shortgrain.report.json.RemedyJson;
import org.shortgrain.report.text.RemedyText;
import org.shortgrain.review.Remedies;
import org.shortgrain.review.Remedy;
import org.shortgrain.review.Review;

/** {@code shortgrain remedies}: tries changes, reviews each, and ranks what would clear the part. */
final class RemediesCommand extends Command {

    static final String NAME = "remedies";

    private static final Path STANDARD_OUTPUT = Path.of("-");

    private final Argument<Path> description = operand("PART.yaml", Path.class, "Description of the part.");
    private final Argument<Set<Format>> formats = listOption("--format", "FORMAT", Format.class,
            "text, json; by default text.");
    private final Argument<Path> out = option("--out", "DIR", Path.class,
            "Where the files go; without it, or with '-', to standard output.");
    private final Argument<Boolean> patch = flag("--patch", "Show each change as a JSON Patch (RFC 6902) in the text.");
    private final Argument<String> apply = option("--apply", "R-01", String.class,
            "Write the description with this change made, ready to be reviewed, in place of the study.");

    private final RulebookOption rulebook;

    /** What a study is written as. */
    enum Format {
        /** For reading. */
        TEXT,
        /** For programs. */
        JSON;

        private byte[] bytes(Remedies study, boolean patches) {
            return this == JSON ? RemedyJson.bytes(study)
                    : RemedyText.of(study, patches).getBytes(StandardCharsets.UTF_8);
        }

        private String extension() {
            return this == JSON ? "json" : "txt";
        }
    }

    RemediesCommand(Ahead ahead) {
        super(NAME, "Tries changes on a part, reviews each in full, and ranks what would clear it.");
        rulebook = new RulebookOption(this, ahead);
    }

    @Override
    public Integer call() {
        Path part = description.get();
        Knowledge knowledge = rulebook.knowledge();
        Reading reading = new PartReader(knowledge.vocabularies()).read(part);
        if (reading instanceof Reading.Refused refused) {
            messages().println(Problem.text(refused.problems()));
            return (refused.isInputMissing() ? ExitCode.INPUT_MISSING : ExitCode.INPUT_INVALID).code();
        }
        Reading.Read read = (Reading.Read) reading;
        EditableDescription editable = EditableDescription.of(read.source()).orElseThrow();
        Reviewer reviewer = new Reviewer(knowledge, Wording.shipped(), Main.Version.text());
        Progress progress = new Progress(messages(), System.console() != null);
        Remedies study = new RemedyStudy(reviewer, progress).of(editable,
                new Review.InputId(part.getFileName().toString(), read.source().sha256()));
        progress.end();
        return apply.isStated() ? applied(study, editable, apply.get()) : written(study);
    }

    private int applied(Remedies study, EditableDescription editable, String wanted) {
        Optional<Remedy> chosen = study.remedies().stream().filter(one -> one.id().equalsIgnoreCase(wanted)).findFirst();
        if (chosen.isEmpty()) {
            throw new CommandFailure(ExitCode.USAGE, "the study has no remedy " + wanted + "; it has "
                    + String.join(", ", study.remedies().stream().map(Remedy::id).toList()));
        }
        return write(editable.with(chosen.get().patch()).bytes(), "." + chosen.get().id().toLowerCase(Locale.ROOT) + ".yaml");
    }

    private int written(Remedies study) {
        for (Format format : formats.or(Set.of(Format.TEXT))) {
            int code = write(format.bytes(study, patch.or(false)), ".remedies." + format.extension());
            if (code != 0) {
                return code;
            }
        }
        return (study.cleared() ? ExitCode.OK : ExitCode.of(study.verdict())).code();
    }

    private int write(byte[] bytes, String ending) {
        PrintWriter console = console();
        Path folder = out.or(STANDARD_OUTPUT);
        if (STANDARD_OUTPUT.equals(folder)) {
            console.print(new String(bytes, StandardCharsets.UTF_8));
            return ExitCode.OK.code();
        }
        Path file = folder.resolve(description.get().getFileName().toString().replaceFirst("\\.ya?ml$", "") + ending);
        try {
            AtomicFile.write(file, to -> to.write(bytes));
        } catch (IOException cannotWrite) {
            throw new CommandFailure(ExitCode.CANNOT_WRITE, "cannot write " + file + ": " + cannotWrite.getMessage());
        }
        console.println("written to " + file);
        return ExitCode.OK.code();
    }

    /** How many changes were tried, on a terminal; nothing in a pipe. */
    private static final class Progress implements IntConsumer {

        private final PrintWriter err;
        private final boolean shown;

        private Progress(PrintWriter err, boolean shown) {
            this.err = err;
            this.shown = shown;
        }

        @Override
        public synchronized void accept(int count) {
            if (shown) {
                err.print("\r" + count + " changes tried");
                err.flush();
            }
        }

        private void end() {
            if (shown) {
                err.print("\r                           \r");
                err.flush();
            }
        }
    }
}
