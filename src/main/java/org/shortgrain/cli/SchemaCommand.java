package org.shortgrain.cli;

import org.shortgrain.part.reader.PartSchema;
import org.shortgrain.report.json.ReviewJson;

/** {@code shortgrain schema}: the form of the description, for editors that complete and explain its keys. */
final class SchemaCommand extends Command {

    static final String NAME = "schema";

    private final Argument<Boolean> ofReview = flag("--of-review", "Print the schema of the review instead.");

    SchemaCommand() {
        super(NAME,
                "Prints the JSON Schema of the part description, for editors that complete and explain its keys.");
    }

    @Override
    public Integer call() {
        console().print(ofReview.or(false) ? ReviewJson.schema() : PartSchema.text());
        return ExitCode.OK.code();
    }
}
