package org.shortgrain.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.function.Supplier;
import org.shortgrain.assessment.Knowledge;
import org.shortgrain.report.change.Comparer;
import org.shortgrain.report.change.Comparison;
import org.shortgrain.report.change.ComparisonJson;
import org.shortgrain.report.change.ComparisonText;

/** {@code shortgrain compare}: two reviews, what came, went and moved, and whether anything got worse. */
final class CompareCommand extends Command {

    static final String NAME = "compare";

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

    private final Argument<Path> old = operand("OLD", Path.class,
            "The earlier review: a description, a review as data, or a report.");
    private final Argument<Path> fresh = operand("NEW", Path.class, "The later one, in any of these forms.");
    private final Argument<Form> format = option("--format", "FORMAT", Form.class,
            "${COMPLETION-CANDIDATES}; by default text.");

    private final RulebookOption rulebook;

    CompareCommand(Ahead ahead) {
        super(NAME, "Compares two reviews: findings new, cleared or changed, numbers that moved, inputs that differ.", "",
                "Ends with 0 if nothing got worse, with 1 if something did.");
        rulebook = new RulebookOption(this, ahead);
    }

    @Override
    public Integer call() {
        Supplier<Knowledge> knowledge = rulebook.once();
        Comparison comparison = Comparer.compare(EarlierReview.of(old.get(), knowledge), EarlierReview.of(fresh.get(), knowledge));
        console().print(format.or(Form.TEXT) == Form.JSON ? new String(ComparisonJson.bytes(comparison), StandardCharsets.UTF_8)
                : ComparisonText.of(comparison));
        return comparison.isWorse() ? ExitCode.OBJECTION.code() : ExitCode.OK.code();
    }
}
