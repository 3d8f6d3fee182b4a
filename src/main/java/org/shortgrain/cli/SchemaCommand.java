package org.shortgrain.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.shortgrain.report.json.ReviewJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code shortgrain schema}: the form of the description, for editors that complete and explain its keys. */
@Command(name = "schema", mixinStandardHelpOptions = true, versionProvider = Main.Version.class,
        description = "Prints the JSON Schema of the part description, for editors that complete and explain its keys.")
final class SchemaCommand implements Callable<Integer> {

    private static final String DESCRIPTION = "/schema/part-description.schema.json";

    @Spec
    private CommandSpec command;

    @Option(names = "--of-review", description = "Print the schema of the review instead.")
    private boolean ofReview;

    @Override
    public Integer call() {
        command.commandLine().getOut().print(ofReview ? ReviewJson.schema() : description());
        return ExitCode.OK.code();
    }

    private static String description() {
        try (InputStream in = SchemaCommand.class.getResourceAsStream(DESCRIPTION)) {
            return new String(Objects.requireNonNull(in, DESCRIPTION).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(DESCRIPTION, e);
        }
    }
}
