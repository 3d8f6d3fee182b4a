package org.shortgrain.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.shortgrain.part.reader.BlankDescription;
import org.shortgrain.part.reader.PartSchema;
import org.shortgrain.report.AtomicFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code shortgrain start}: a blank description with comments, to fill in. */
@Command(name = "start", mixinStandardHelpOptions = true, versionProvider = Main.Version.class,
        description = "Writes a blank description with comments, to fill in.")
final class StartCommand implements Callable<Integer> {

    @Spec
    private CommandSpec command;

    @Parameters(paramLabel = "KIND", arity = "0..1", description = "Kind of part; without it the kinds are listed.")
    private String kind;

    @Option(names = "--out", paramLabel = "FILE", description = "Where it goes; by default to standard output.")
    private Path out;

    @Override
    public Integer call() {
        PrintWriter console = command.commandLine().getOut();
        if (kind == null) {
            console.println("Kinds of part:");
            BlankDescription.kinds().forEach((name, what) -> console.printf("  %-18s %s%n", name, what));
            console.println("Write one with: shortgrain start KIND --out PART.yaml");
            return ExitCode.OK.code();
        }
        Optional<String> text = BlankDescription.text(kind);
        if (text.isEmpty()) {
            Map<String, String> kinds = BlankDescription.kinds();
            throw new CommandFailure(ExitCode.USAGE, "there is no blank description of a " + kind + "; there is one of "
                    + String.join(", ", kinds.keySet()));
        }
        if (out == null) {
            console.print(text.get());
            return ExitCode.OK.code();
        }
        return write(text.get());
    }

    private int write(String text) {
        if (Files.exists(out)) {
            throw new CommandFailure(ExitCode.CANNOT_WRITE, out + " is there already; nothing was written."
                    + " Name another file, or move it away");
        }
        try {
            AtomicFile.write(out, to -> to.write(text.getBytes(StandardCharsets.UTF_8)));
            Path schema = out.resolveSibling(PartSchema.FILE_NAME);
            AtomicFile.write(schema, to -> to.write(PartSchema.text().getBytes(StandardCharsets.UTF_8)));
        } catch (IOException cannotWrite) {
            throw new CommandFailure(ExitCode.CANNOT_WRITE, "cannot write " + out + ": " + cannotWrite.getMessage());
        }
        command.commandLine().getOut().println("Blank description written to " + out
                + ", with its schema beside it for editors that complete keys. Fill it in, then: shortgrain review " + out);
        return ExitCode.OK.code();
    }
}
