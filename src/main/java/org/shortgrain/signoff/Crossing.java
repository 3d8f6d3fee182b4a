package org.shortgrain.signoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shortgrain.report.change.Comparer;
import org.shortgrain.report.change.Comparison;
import org.shortgrain.report.change.ComparisonText;
import org.shortgrain.review.Review;
import org.shortgrain.terms.PlainText;

/**
 * A description then and now, under the rulebook then and now: what changed by the rules, and what by the design.
 *
 * @param recorded  description then, rulebook then
 * @param byRules   description then, rulebook now; empty if that could not be made
 * @param byDesign  description now, rulebook then; empty if that could not be made
 * @param byBoth    description now, rulebook now; empty if that could not be made
 */
public record Crossing(Review recorded, Optional<Review> byRules, Optional<Review> byDesign, Optional<Review> byBoth) {

    private static final int COLUMN = 44;

    /** {@return the four verdicts in a table, and what each change does, for a terminal} */
    public String text() {
        List<String> lines = new ArrayList<>();
        lines.add(PlainText.padded("", 20) + PlainText.padded("rulebook of the report", COLUMN) + "rulebook at hand");
        lines.add(row("description then", Optional.of(recorded), byRules));
        if (byDesign.isPresent() || byBoth.isPresent()) {
            lines.add(row("description now", byDesign, byBoth));
        }
        effect(lines, "Effect of the rulebook", byRules);
        effect(lines, "Effect of the design", byDesign);
        effect(lines, "Effect of both", byBoth);
        return lines.stream().map(line -> line + "\n").collect(Collectors.joining());
    }

    private static String row(String title, Optional<Review> left, Optional<Review> right) {
        return PlainText.padded(title, 20) + PlainText.padded(verdict(left), COLUMN) + verdict(right);
    }

    private static String verdict(Optional<Review> review) {
        return review.map(one -> one.verdict().words()).orElse("(not at hand)");
    }

    private void effect(List<String> lines, String title, Optional<Review> other) {
        if (other.isPresent()) {
            Comparison comparison = Comparer.compare(recorded, other.get());
            lines.add(title + (comparison.isWorse() ? ": something got worse" : comparison.isSame() ? ": none"
                    : ": nothing got worse"));
            ComparisonText.changes(comparison).forEach(line -> lines.add("  " + line));
        }
    }
}
