package org.shortgrain.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.shortgrain.part.reader.BlankDescription;
import org.shortgrain.part.reader.PartSchema;
import org.shortgrain.report.AtomicFile;

/** {@code shortgrain start}: a blank description with comments, to fill in. */
final class StartCommand extends Command {

    static final String NAME = "start";

    private final Argument<String> kind = optionalOperand("KIND", String.class,
            "Kind of part; without it the kinds are listed.");
    private final Argument<Path> out = option("--out", "FILE", Path.class, "Where it goes; by default to standard output.");

    StartCommand() {
        super(NAME, "Writes a blank description with comments, to fill in.");
    }

    @Override
    public Integer call() {
        PrintWriter console = console();
        if (!kind.isStated()) {
            console.println("Kinds of part:");
            BlankDescription.kinds().forEach((name, what) -> console.printf("  %-18s %s%n", name, what));
            console.println("Write one with: shortgrain start KIND --out PART.yaml");
            return ExitCode.OK.code();
        }
        Optional<String> text = BlankDescription.text(kind.get());
        if (text.isEmpty()) {
            Map<String, String> kinds = BlankDescription.kinds();
            throw new CommandFailure(ExitCode.USAGE, "there is no blank description of a " + kind.get() + "; there is one of "
                    + String.join(", ", kinds.keySet()));
        }
        if (!out.isStated()) {
            console.print(text.get());
            return ExitCode.OK.code();
        }
        return write(text.get(), out.get());
    }

    private int write(String text, Path file) {
        if (Files.exists(file)) {
            throw new CommandFailure(ExitCode.CANNOT_WRITE, file + " is there already; nothing was written."
                    + " Name another file, or move it away");
        }
        try {
            AtomicFile.write(file, to -> to.write(text.getBytes(StandardCharsets.UTF_8)));
            Path schema = file.resolveSibling(PartSchema.FILE_NAME);
            AtomicFile.write(schema, to -> to.write(PartSchema.text().getBytes(StandardCharsets.UTF_8)));
        } catch (IOException cannotWrite) {
            throw new CommandFailure(ExitCode.CANNOT_WRITE, "cannot write " + file + ": " + cannotWrite.getMessage());
        }
        console().println("Blank description written to " + file
                + ", with its schema beside it for editors that complete keys. Fill it in, then: shortgrain review " + file);
        return ExitCode.OK.code();
    }
}
