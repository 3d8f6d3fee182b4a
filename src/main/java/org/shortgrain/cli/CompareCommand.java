package org.shortgrain.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.shortgrain.assessment.Knowledge;
import org.shortgrain.report.change.Comparer;
import org.shortgrain.report.change.Comparison;
import org.shortgrain.report.change.ComparisonJson;
import org.shortgrain.report.change.ComparisonText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code shortgrain compare}: two reviews, what came, went and moved, and whether anything got worse. */
@Command(name = "compare", mixinStandardHelpOptions = true, versionProvider = Main.Version.class,
        description = "Compares two reviews: findings new, cleared or changed, numbers that moved, inputs that differ.",
        footer = {"", "Ends with 0 if nothing got worse, with 1 if something did."})
final class CompareCommand implements Callable<Integer> {

    /** How a comparison is printed. */
    enum Form {
        /** For people. */
        TEXT,
        /** For programs. */
        JSON;

        @Override
        public String toString() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    @Spec
    private CommandSpec command;

    @Parameters(index = "0", paramLabel = "OLD", description = "The earlier review: a description, a review as data, or a"
            + " report.")
    private Path old;

    @Parameters(index = "1", paramLabel = "NEW", description = "The later one, in any of these forms.")
    private Path fresh;

    @Option(names = "--format", paramLabel = "FORMAT", description = "${COMPLETION-CANDIDATES}; by default text.")
    private Form format = Form.TEXT;

    @Mixin
    private RulebookOption rulebook;

    @Override
    public Integer call() {
        Supplier<Knowledge> knowledge = rulebook.once();
        Comparison comparison = Comparer.compare(EarlierReview.of(old, knowledge), EarlierReview.of(fresh, knowledge));
        PrintWriter console = command.commandLine().getOut();
        console.print(format == Form.JSON ? new String(ComparisonJson.bytes(comparison), StandardCharsets.UTF_8)
                : ComparisonText.of(comparison));
        return comparison.isWorse() ? ExitCode.OBJECTION.code() : ExitCode.OK.code();
    }
}
