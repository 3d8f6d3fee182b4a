package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.SiUnit;
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
        Printed printed = new Printed(new HashMap<>(), new HashMap<>());
        for (Calculation calculation : report.review().computations()) {
            blocks.addAll(calculation(report, figures, calculation, printed));
        }
        return blocks;
    }

    /**
     * What was printed already, and in which calculation: it is not printed again.
     *
     * @param inputs  inputs, each with its place
     * @param grounds sentences on range, validity, sources and notes
     */
    private record Printed(Map<List<Object>, String> inputs, Map<Object, String> grounds) {
    }

    private static List<Block> calculation(Report report, ReviewFigures figures, Calculation calculation,
            Printed printed) {
        Computed computed = calculation.computed();
        String heading = calculation.id() + "\u2002"
                + (calculation.feature().isPresent() ? calculation.feature().get() + ": " : "") + computed.title();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(2, Text.of(heading), Links.calculation(calculation.id())));
        Text result = report.say(Sentence.CALCULATION_RESULT, result(report, computed));
        blocks.add(new Block.Paragraph(result, Block.Tone.BODY));
        blocks.add(new Block.Paragraph(Text.EMPTY.mono(computed.equation()), Block.Tone.FINE));
        Map<String, List<Text>> known = new LinkedHashMap<>();
        List<Block.Row> rows = new ArrayList<>();
        for (Computed.Input input : computed.inputs()) {
            String first = printed.inputs().putIfAbsent(List.of(calculation.feature(), input), calculation.id());
            if (first == null || first.equals(calculation.id())) {
                rows.add(input(report, calculation, input));
            } else {
                known.putIfAbsent(first, new ArrayList<>());
                known.get(first).add(Text.EMPTY.italic(input.symbol()));
            }
        }
        if (!rows.isEmpty()) {
            blocks.add(new Block.Table(List.of(report.column(Label.COLUMN_SYMBOL, 9),
                    report.column(Label.COLUMN_MEANING, 32), report.numberColumn(Label.COLUMN_VALUE_RANGE, 23),
                    report.column(Label.COLUMN_ORIGIN, 36)), Block.Headings.TOP_AND_SIDE, rows).dense());
        }
        addFine(blocks, steps(report, computed, known));
        addFine(blocks, basis(report, figures, calculation, printed.grounds()));
        return blocks;
    }

    private static Text result(Report report, Computed computed) {
        String value = report.numbers().value(computed.value().value(), computed.unit());
        String range = report.numbers().range(computed.value(), computed.unit());
        return Text.of(range.isEmpty() ? value : value + " (" + range + ")");
    }

    /** In one system of units: the columns would not hold two, and the result above has both. */
    private static Block.Row input(Report report, Calculation calculation, Computed.Input input) {
        Text origin = report.links().origin(input.origin(), calculation);
        Text from = input.source().isEmpty() ? origin
                : origin.plain("; ").then(report.links().toSource(input.source().get()));
        return Block.Row.of(Block.Cell.of(Text.EMPTY.italic(input.symbol())), Block.Cell.of(input.meaning()),
                Block.Cell.of(value(report, input.value(), input.unit())), Block.Cell.of(from));
    }

    private static String value(Report report, Band band, SiUnit unit) {
        return report.numbers().single().withRange(band, unit);
    }

    private static void addFine(List<Block> blocks, List<Text> parts) {
        if (!parts.isEmpty()) {
            blocks.add(new Block.Paragraph(Links.joined(parts, "\u2002"), Block.Tone.FINE));
        }
    }

    /** Inputs that stand elsewhere, and intermediate results. */
    private static List<Text> steps(Report report, Computed computed, Map<String, List<Text>> known) {
        List<Text> parts = new ArrayList<>();
        for (Map.Entry<String, List<Text>> elsewhere : known.entrySet()) {
            parts.add(report.say(Sentence.CALCULATION_AS_IN, Links.joined(elsewhere.getValue()),
                    report.links().toCalculation(elsewhere.getKey())));
        }
        if (!computed.steps().isEmpty()) {
            List<Text> steps = new ArrayList<>();
            for (Computed.Step step : computed.steps()) {
                steps.add(step(report, step));
            }
            parts.add(named(report, Label.ROW_STEPS, Links.joined(steps, "; ")));
        }
        return parts;
    }

    /** Why the number may be believed: range, validity, sources, notes, figures. */
    private static List<Text> basis(Report report, ReviewFigures figures, Calculation calculation,
            Map<Object, String> grounds) {
        Computed computed = calculation.computed();
        List<Text> parts = new ArrayList<>();
        parts.add(named(report, Label.ROW_RANGE_BASIS, Text.of(computed.rangeBasis())));
        Optional<Text> validity = saidBefore(report, computed.validity(), calculation, grounds);
        parts.add(named(report, Label.ROW_VALIDITY, validity.isPresent() ? validity.get()
                : here(report, computed.validity()).plain(": " + computed.validity().statement())));
        if (!computed.sources().isEmpty()) {
            Optional<Text> sources = saidBefore(report, computed.sources(), calculation, grounds);
            parts.add(named(report, Label.ROW_SOURCES, sources.isPresent() ? sources.get()
                    : Links.joined(report.links().toSources(computed.sources()), "; ")));
        }
        if (!computed.notes().isEmpty()) {
            parts.add(named(report, Label.ROW_NOTES, Links.joined(FindingPages.plain(computed.notes()), "; ")));
        }
        Optional<Text> drawn = figures.of(calculation);
        if (drawn.isPresent()) {
            parts.add(drawn.get());
        }
        return parts;
    }

    /** A ground that an earlier calculation stated already leads there; one that is new is remembered. */
    private static Optional<Text> saidBefore(Report report, Object ground, Calculation calculation,
            Map<Object, String> grounds) {
        String first = grounds.putIfAbsent(ground, calculation.id());
        return first == null ? Optional.empty()
                : Optional.of(report.say(Label.AS_IN, report.links().toCalculation(first)));
    }

    private static Text named(Report report, Label label, Text text) {
        return Text.EMPTY.bold(report.words(label)).plain("\u00a0").then(text);
    }

    private static Text step(Report report, Computed.Step step) {
        return Text.of(step.meaning() + " ").italic(step.symbol()).plain("\u00a0=\u00a0")
                .plain(value(report, step.value(), step.unit()));
    }

    static Text here(Report report, Computed.Validity validity) {
        return validity.inside() ? Text.of(report.words(Label.INSIDE))
                : Text.EMPTY.badge(report.words(Label.OUTSIDE), Inline.Frame.HEAVY);
    }
}
