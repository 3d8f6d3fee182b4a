package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.List;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.report.pdf.tagged.Block;
import org.shortgrain.report.pdf.tagged.Inline;
import org.shortgrain.report.pdf.tagged.Text;
import org.shortgrain.review.Calculation;

/** Each calculation with equation, inputs, steps, result, range, validity and sources: enough to compute it again. */
final class CalculationPages {

    private CalculationPages() {
    }

    static List<Block> blocks(Report report, ReviewFigures figures) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(report.heading(Section.CALCULATIONS));
        if (report.review().computations().isEmpty()) {
            blocks.add(report.paragraph(Sentence.CALCULATIONS_NONE));
            return blocks;
        }
        blocks.add(report.paragraph(Sentence.CALCULATIONS_TEXT));
        for (Calculation calculation : report.review().computations()) {
            blocks.addAll(calculation(report, calculation));
            figures.of(calculation).ifPresent(link -> blocks.add(report.small(link)));
        }
        return blocks;
    }

    private static List<Block> calculation(Report report, Calculation calculation) {
        Computed computed = calculation.computed();
        String heading = calculation.id() + "\u2002"
                + calculation.feature().map(feature -> feature + ": ").orElse("") + computed.title();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(2, Text.of(heading), Links.calculation(calculation.id())));
        Text result = report.say(Sentence.CALCULATION_RESULT, result(report, computed));
        blocks.add(new Block.Paragraph(result.plain("\n").mono(computed.equation()), Block.Tone.BODY));
        if (!computed.inputs().isEmpty() || !computed.steps().isEmpty()) {
            blocks.add(numbers(report, computed));
        }
        blocks.add(basis(report, computed));
        return blocks;
    }

    private static Text result(Report report, Computed computed) {
        String value = report.numbers().value(computed.value().value(), computed.unit());
        String range = report.numbers().range(computed.value(), computed.unit());
        return Text.of(range.isEmpty() ? value : value + " (" + range + ")");
    }

    /** In one system of units: the columns would not hold two, and the result above has both. */
    private static Block numbers(Report report, Computed computed) {
        Numbers numbers = report.numbers().single();
        List<Block.Row> rows = new ArrayList<>();
        for (Computed.Input input : computed.inputs()) {
            List<Text> origin = new ArrayList<>(List.of(report.links().origin(input.origin())));
            input.source().ifPresent(source -> origin.add(report.links().toSource(source)));
            rows.add(Block.Row.of(Block.Cell.of(Text.EMPTY.italic(input.symbol())), Block.Cell.of(input.meaning()),
                    Block.Cell.of(numbers.value(input.value().value(), input.unit())),
                    Block.Cell.of(numbers.range(input.value(), input.unit())), new Block.Cell(origin)));
        }
        for (Computed.Step step : computed.steps()) {
            rows.add(Block.Row.of(Block.Cell.of(Text.EMPTY.italic(step.symbol())), Block.Cell.of(step.meaning()),
                    Block.Cell.of(numbers.value(step.value().value(), step.unit())),
                    Block.Cell.of(numbers.range(step.value(), step.unit())),
                    Block.Cell.of(report.words(Label.INTERMEDIATE))));
        }
        return new Block.Table(List.of(report.column(Label.COLUMN_SYMBOL, 11), report.column(Label.COLUMN_MEANING, 28),
                report.numberColumn(Label.COLUMN_VALUE, 14), report.numberColumn(Label.COLUMN_RANGE, 21),
                report.column(Label.COLUMN_ORIGIN, 26)), Block.Headings.TOP_AND_SIDE, rows);
    }

    private static Block basis(Report report, Computed computed) {
        List<Block.Row> rows = new ArrayList<>();
        rows.add(report.labelled(Label.ROW_RANGE_BASIS, Text.of(computed.rangeBasis())));
        rows.add(report.labelled(Label.ROW_VALIDITY,
                here(report, computed.validity()).plain(": " + computed.validity().statement())));
        if (!computed.sources().isEmpty()) {
            rows.add(report.labelled(Label.ROW_SOURCES, report.links().toSources(computed.sources())));
        }
        if (!computed.notes().isEmpty()) {
            rows.add(report.labelled(Label.ROW_NOTES, FindingPages.plain(computed.notes())));
        }
        return new Block.Table(List.of(Block.Column.text("", 17), Block.Column.text("", 83)), Block.Headings.SIDE,
                rows);
    }

    static Text here(Report report, Computed.Validity validity) {
        return validity.inside() ? Text.of(report.words(Label.INSIDE))
                : Text.EMPTY.badge(report.words(Label.OUTSIDE), Inline.Frame.HEAVY);
    }
}
