package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shortgrain.report.change.Comparison;
import org.shortgrain.report.change.ComparisonText;
import org.shortgrain.report.pdf.tagged.Block;
import org.shortgrain.report.pdf.tagged.Text;
import org.shortgrain.review.Grade;

/** What changed against an earlier issue. */
final class ChangePages {

    private ChangePages() {
    }

    static List<Block> blocks(Report report, Optional<Comparison> compared) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(report.heading(Section.ANNEX_CHANGES));
        if (compared.isEmpty()) {
            blocks.add(report.paragraph(FollowUp.CHANGES_NOT_COMPARED));
            return blocks;
        }
        Comparison change = compared.get();
        blocks.add(report.paragraph(FollowUp.CHANGES_TEXT, Text.of(change.before().part() + ", " + change.before().date()
                + ", content " + change.before().contentHash()), Text.of(change.before().verdict().words()),
                Text.of(change.after().verdict().words())));
        blocks.add(report.paragraph(change.isSame() ? FollowUp.CHANGES_NONE
                : change.isWorse() ? FollowUp.CHANGES_WORSE : FollowUp.CHANGES_NOT_WORSE));
        List<Block.Row> rows = rows(report, change);
        if (!rows.isEmpty()) {
            blocks.add(new Block.Table(List.of(column(report, FollowUp.COLUMN_CHANGE, 16),
                    column(report, FollowUp.COLUMN_WHAT, 42), column(report, FollowUp.COLUMN_BEFORE, 21),
                    column(report, FollowUp.COLUMN_AFTER, 21)), Block.Headings.TOP, rows));
        }
        if (!change.texts().isEmpty()) {
            blocks.add(report.small(report.say(FollowUp.CHANGES_IN_WORDS, Text.of(String.join(", ", change.texts())))));
        }
        return blocks;
    }

    private static Block.Column column(Report report, FollowUp title, double share) {
        return Block.Column.text(report.words(title), share);
    }

    private static List<Block.Row> rows(Report report, Comparison change) {
        String absent = report.words(FollowUp.ABSENT);
        List<Block.Row> rows = new ArrayList<>();
        for (Comparison.FindingChange one : change.findings()) {
            Text what = one.after().map(id -> id.startsWith("Q") ? report.links().toQuestion(id)
                    : report.links().toFinding(id)).orElseGet(() -> Text.of(one.before().orElse("")))
                    .plain(" " + one.rule() + one.feature().map(id -> " at " + id).orElse("") + ": " + one.title());
            rows.add(Block.Row.of(Block.Cell.of(one.fate().words()), Block.Cell.of(what),
                    Block.Cell.of(one.was().map(Grade::word).orElse(absent)),
                    Block.Cell.of(one.is().map(Grade::word).orElse(absent))));
        }
        for (Comparison.FactorChange one : change.factors()) {
            rows.add(Block.Row.of(Block.Cell.of(one.factor().word()), Block.Cell.of(one.feature()),
                    Block.Cell.of(one.before().word()), Block.Cell.of(one.after().word())));
        }
        for (Comparison.InputChange one : change.inputs()) {
            rows.add(Block.Row.of(Block.Cell.of(report.words(FollowUp.INPUT)), Block.Cell.of(one.path()),
                    Block.Cell.of(one.before().orElse(absent)), Block.Cell.of(one.after().orElse(absent))));
        }
        for (Comparison.NumberChange one : change.numbers()) {
            Text what = one.id().filter(id -> one.after().isPresent()).map(id -> report.links().toCalculation(id).plain(" "))
                    .orElse(Text.EMPTY).plain(one.what());
            rows.add(Block.Row.of(Block.Cell.of(report.words(one.isBeyondItsBand() ? FollowUp.BEYOND_BAND
                    : FollowUp.WITHIN_BAND)), Block.Cell.of(what), Block.Cell.of(ComparisonText.amount(one.before())),
                    Block.Cell.of(ComparisonText.amount(one.after()))));
        }
        return rows;
    }
}
