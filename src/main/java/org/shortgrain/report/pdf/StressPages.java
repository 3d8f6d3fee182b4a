package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shortgrain.report.pdf.tagged.Block;
import org.shortgrain.report.pdf.tagged.Text;
import org.shortgrain.review.Amount;
import org.shortgrain.review.Calculation;
import org.shortgrain.review.Contribution;
import org.shortgrain.review.DirectionReview;
import org.shortgrain.review.FeatureReview;
import org.shortgrain.review.Threshold;

/** What adds up to the sustained tension at each place, against the threshold. */
final class StressPages {

    private static final String SUM = "sustained.stress";
    private static final String USE = "sustained.utilisation";

    private StressPages() {
    }

    static List<Block> blocks(Report report, ReviewFigures figures) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(report.heading(Section.STRESS));
        List<FeatureReview> features = new ArrayList<>();
        for (FeatureReview feature : report.review().features()) {
            if (!feature.directions().isEmpty()) {
                features.add(feature);
            }
        }
        if (features.isEmpty()) {
            blocks.add(report.paragraph(Sentence.STRESS_NONE));
            return blocks;
        }
        blocks.add(report.paragraph(Sentence.STRESS_TEXT));
        for (FeatureReview feature : features) {
            blocks.add(new Block.Heading(2, Text.of(feature.id()), Links.stress(feature.id())));
            Optional<Text> links = figures.about(feature.id());
            if (links.isPresent()) {
                blocks.add(report.small(links.get()));
            }
            blocks.add(new Block.Table(List.of(report.column(Label.COLUMN_DIRECTION, 10),
                    report.column(Label.COLUMN_CAUSE, 28), report.numberColumn(Label.COLUMN_VALUE, 23),
                    report.numberColumn(Label.COLUMN_RANGE, 21), report.column(Label.COLUMN_CALCULATION, 18)),
                    Block.Headings.TOP_AND_SIDE, rows(report, feature)).dense());
        }
        blocks.addAll(figures.in(Section.STRESS));
        return blocks;
    }

    private static List<Block.Row> rows(Report report, FeatureReview feature) {
        List<Block.Row> rows = new ArrayList<>();
        for (DirectionReview direction : feature.directions()) {
            String name = direction.sustained().direction().toString();
            for (Contribution part : direction.sustained().parts()) {
                rows.add(Block.Row.of(Block.Cell.of(name), Block.Cell.of(part.source()),
                        Block.Cell.of(report.numbers().value(part.amount())),
                        Block.Cell.of(report.numbers().single().range(part.amount())),
                        Block.Cell.of(part.calculation().isPresent()
                                ? report.links().toCalculation(part.calculation().get()) : Text.EMPTY)));
            }
            rows.add(Block.Row.of(Block.Cell.of(name), Block.Cell.of(report.say(Label.SUM)),
                    Block.Cell.of(Text.EMPTY.bold(report.numbers().value(direction.sustained().total()))),
                    Block.Cell.of(Text.EMPTY.bold(report.numbers().single().range(direction.sustained().total()))),
                    calculation(report, feature, SUM, name)));
            if (direction.threshold().isPresent()) {
                rows.add(threshold(report, name, direction.threshold().get()));
            }
            if (direction.utilisation().isPresent()) {
                Amount share = direction.utilisation().get();
                rows.add(Block.Row.of(Block.Cell.of(name), Block.Cell.of(report.words(Label.COLUMN_UTILISATION)),
                        Block.Cell.of(Text.EMPTY.bold(report.numbers().value(share))),
                        Block.Cell.of(report.numbers().range(share)), calculation(report, feature, USE, name)));
            }
        }
        return rows;
    }

    /** The calculation of that kind for a direction, whose name ends its title. */
    private static Block.Cell calculation(Report report, FeatureReview feature, String kind, String direction) {
        for (Calculation one : report.review().computations()) {
            if (one.isOf(feature.id()) && one.computed().id().equals(kind)
                    && one.computed().title().endsWith(" " + direction)) {
                return Block.Cell.of(report.links().toCalculation(one.id()));
            }
        }
        return new Block.Cell(List.of());
    }

    private static Block.Row threshold(Report report, String direction, Threshold threshold) {
        List<Text> words = new ArrayList<>(List.of(report.say(Label.THRESHOLD_ROW, Text.of(threshold.kind()))));
        if (threshold.factor() != 1) {
            words.add(report.say(Label.THRESHOLD_FACTOR, Text.of(Digits.print(threshold.factor(), 2))));
        }
        return Block.Row.of(Block.Cell.of(direction), new Block.Cell(words),
                Block.Cell.of(report.numbers().value(threshold.amount())),
                Block.Cell.of(report.numbers().single().range(threshold.amount())),
                Block.Cell.of(report.links().toSource(threshold.source())));
    }
}
