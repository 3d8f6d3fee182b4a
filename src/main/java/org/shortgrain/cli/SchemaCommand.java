package org.shortgrain.cli;

import java.util.concurrent.Callable;
import org.shortgrain.part.reader.PartSchema;
import org.shortgrain.report.json.ReviewJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code shortgrain schema}: the form of the description, for editors that complete and explain its keys. */
@Command(name = "schema", mixinStandardHelpOptions = true, versionProvider = Main.Version.class,
        description = "Prints the JSON Schema of the part description, for editors that complete and explain its keys.")
final class SchemaCommand implements Callable<Integer> {

    @Spec
    private CommandSpec command;

    @Option(names = "--of-review", description = "Print the schema of the review instead.")
    private boolean ofReview;

    @Override
    public Integer call() {
        command.commandLine().getOut().print(ofReview ? ReviewJson.schema() : PartSchema.text());
        return ExitCode.OK.code();
    }
}
