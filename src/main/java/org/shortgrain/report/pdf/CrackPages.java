package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.List;
import org.shortgrain.report.pdf.tagged.Block;
import org.shortgrain.report.pdf.tagged.Text;
import org.shortgrain.review.CrackFound;

/** Cracks that were found, weighed factor by factor. */
final class CrackPages {

    private static final double PER_CENT = 100;

    private CrackPages() {
    }

    static List<Block> blocks(Report report, List<CrackFound> cracks) {
        if (cracks.isEmpty()) {
            return List.of();
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(2, report.say(ServiceWords.CRACKS_TITLE), "cracks found"));
        blocks.add(report.paragraph(ServiceWords.CRACKS_TEXT));
        for (CrackFound crack : cracks) {
            blocks.addAll(blocks(report, crack));
        }
        return blocks;
    }

    private static List<Block> blocks(Report report, CrackFound crack) {
        String place = crack.feature().isEmpty() ? report.words(ServiceWords.CRACK_NOWHERE) : crack.feature();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(3, report.say(ServiceWords.CRACK_AT, Text.of(crack.id()), Text.of(place)),
                "crack " + crack.id()));
        blocks.add(new Block.Paragraph(Text.of(crack.what() + "."), Block.Tone.BODY));
        blocks.add(factors(report, crack));
        if (!crack.contributions().isEmpty()) {
            blocks.add(report.small(report.say(ServiceWords.CRACK_CONTRIBUTIONS)));
            blocks.add(contributions(report, crack));
        }
        blocks.add(report.small(report.say(ServiceWords.CRACK_ALTERNATIVES)));
        blocks.add(alternatives(report, crack));
        blocks.add(report.small(report.say(ServiceWords.CRACK_NEXT)));
        blocks.add(next(report, crack));
        return blocks;
    }

    private static Block factors(Report report, CrackFound crack) {
        List<Block.Row> rows = new ArrayList<>();
        for (CrackFound.Evidence one : crack.factors()) {
            rows.add(Block.Row.of(Block.Cell.of(report.factor(one.factor())), sentences(report, one.speaksFor()),
                    sentences(report, one.speaksAgainst())));
        }
        return new Block.Table(List.of(report.column(Label.COLUMN_FACTOR, 14),
                ServicePages.column(report, ServiceWords.COLUMN_SPEAKS_FOR, 48),
                ServicePages.column(report, ServiceWords.COLUMN_SPEAKS_AGAINST, 38)), Block.Headings.TOP_AND_SIDE, rows).dense();
    }

    private static Block contributions(Report report, CrackFound crack) {
        List<Block.Row> rows = new ArrayList<>();
        for (CrackFound.Share one : crack.contributions()) {
            rows.add(Block.Row.of(Block.Cell.of(one.source()), Block.Cell.of(report.numbers().value(one.amount())),
                    Block.Cell.of(report.numbers().single().range(one.amount())),
                    Block.Cell.of(Digits.print(one.share() * PER_CENT, 2) + "\u00a0%")));
        }
        return new Block.Table(List.of(report.column(Label.COLUMN_CAUSE, 44), report.numberColumn(Label.COLUMN_VALUE, 24),
                report.numberColumn(Label.COLUMN_RANGE, 22),
                Block.Column.number(report.words(ServiceWords.COLUMN_SHARE), 10)), Block.Headings.TOP_AND_SIDE, rows).dense();
    }

    private static Block alternatives(Report report, CrackFound crack) {
        List<Block.Row> rows = new ArrayList<>();
        for (CrackFound.Alternative one : crack.alternatives()) {
            rows.add(Block.Row.of(Block.Cell.of(one.name()), sentences(report, one.speaksFor()),
                    sentences(report, one.speaksAgainst()),
                    new Block.Cell(List.of(Text.of(one.decides()), report.links().toSource(one.source())))));
        }
        return new Block.Table(List.of(ServicePages.column(report, ServiceWords.COLUMN_MODE, 14),
                ServicePages.column(report, ServiceWords.COLUMN_SPEAKS_FOR, 22),
                ServicePages.column(report, ServiceWords.COLUMN_SPEAKS_AGAINST, 22),
                ServicePages.column(report, ServiceWords.COLUMN_DECIDES, 42)), Block.Headings.TOP_AND_SIDE, rows).dense();
    }

    private static Block next(Report report, CrackFound crack) {
        Block.Row row = Block.Row.of(checks(report, crack.onPart()), checks(report, crack.onSisters()));
        return new Block.Table(List.of(ServicePages.column(report, ServiceWords.COLUMN_ON_PART, 54),
                ServicePages.column(report, ServiceWords.COLUMN_ON_SISTERS, 46)), Block.Headings.TOP, List.of(row)).dense();
    }

    private static Block.Cell checks(Report report, List<CrackFound.Check> checks) {
        List<Text> actions = new ArrayList<>();
        for (CrackFound.Check one : checks) {
            actions.add(Text.of(one.action() + ". ").then(report.links().toSource(one.source())));
        }
        return new Block.Cell(actions);
    }

    private static Block.Cell sentences(Report report, List<String> sentences) {
        return sentences.isEmpty() ? Block.Cell.of(report.words(ServiceWords.NOTHING))
                : new Block.Cell(FindingPages.plain(sentences));
    }
}
