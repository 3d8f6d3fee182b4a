package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.shortgrain.report.pdf.figure.TradeChart;
import org.shortgrain.report.pdf.tagged.Block;
import org.shortgrain.report.pdf.tagged.Text;
import org.shortgrain.review.Factor;
import org.shortgrain.review.Remedies;
import org.shortgrain.review.Remedy;

/** What would clear the part: an annex that is printed on request. */
final class RemedyPages {

    private static final String ANCHOR = "section remedies";

    private RemedyPages() {
    }

    static List<Block> blocks(Report report, Remedies study) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, report.say(RemedyWords.SECTION_ANNEX_REMEDIES), ANCHOR));
        RemedyWords outcome = study.remedies().isEmpty() ? RemedyWords.REMEDIES_NONE
                : study.cleared() ? RemedyWords.REMEDIES_CLEARED : RemedyWords.REMEDIES_CLOSEST;
        blocks.add(report.paragraph(outcome, Text.of(Integer.toString(study.tried()))));
        study.missing().forEach(said -> blocks.add(report.paragraph(RemedyWords.MISSING, Text.of(said))));
        if (study.remedies().isEmpty()) {
            return blocks;
        }
        blocks.add(new Block.Table(List.of(column(report, RemedyWords.COLUMN_CHANGE, 30),
                column(report, RemedyWords.COLUMN_OUTCOME, 36), column(report, RemedyWords.COLUMN_PRICE, 20),
                column(report, RemedyWords.COLUMN_AGREE, 14)), Block.Headings.TOP_AND_SIDE,
                study.remedies().stream().map(one -> row(report, one)).toList()));
        chart(report, study).ifPresent(chart -> blocks.add(new Block.Picture(report.words(RemedyWords.FIGURE_TRADE), chart,
                ANCHOR + " figure")));
        blocks.add(new Block.Heading(2, report.say(RemedyWords.CHANGES_TITLE), ANCHOR + " changes"));
        blocks.add(report.paragraph(RemedyWords.CHANGES_TEXT));
        for (Remedy one : study.remedies()) {
            blocks.add(new Block.Paragraph(Text.EMPTY.bold(one.id()).then(Text.of(" " + String.join("; ", one.changes()))),
                    Block.Tone.BODY));
            blocks.add(new Block.Items(false, known(report, one), Block.Tone.SMALL));
            blocks.add(report.small(Text.EMPTY.mono(one.patch().json().replace("\n", ""))));
        }
        return blocks;
    }

    private static List<Text> known(Report report, Remedy one) {
        List<Text> known = new ArrayList<>(one.notes().stream().map(Text::of).toList());
        known.add(report.say(RemedyWords.REQUALIFY, Text.of(String.join("; ", one.requalify()))));
        return known;
    }

    /** {@return the line of the contents} */
    static Block.Entry entry(Report report) {
        return new Block.Entry(report.words(RemedyWords.SECTION_ANNEX_REMEDIES), ANCHOR);
    }

    /** Strength against utilisation, where any change has one. */
    private static Optional<TradeChart> chart(Report report, Remedies study) {
        List<TradeChart.Change> changes = new ArrayList<>();
        for (Remedy one : study.remedies()) {
            one.utilisation().ifPresent(use -> changes.add(new TradeChart.Change(one.id(), one.strength() * 100, use,
                    one.clearsThePart())));
        }
        if (changes.isEmpty()) {
            return Optional.empty();
        }
        Comparator<TradeChart.Change> lowest = Comparator.comparingDouble(TradeChart.Change::use);
        String title = changes.stream().filter(TradeChart.Change::possible).min(lowest)
                .map(one -> report.words(RemedyWords.FIGURE_TRADE_CLEARS, values(one)))
                .orElseGet(() -> changes.stream().min(lowest).map(one -> report.words(RemedyWords.FIGURE_TRADE_CLOSEST,
                        one.id(), digits("%.2f", one.use()))).orElseThrow());
        String points = changes.stream().map(one -> report.words(RemedyWords.FIGURE_TRADE_POINT, values(one)))
                .collect(Collectors.joining("; "));
        return Optional.of(new TradeChart(title, report.words(RemedyWords.FIGURE_TRADE_ALTERNATIVE, points),
                report.words(RemedyWords.FIGURE_TRADE_NOTE), report.words(RemedyWords.FIGURE_TRADE_ACROSS),
                report.words(RemedyWords.FIGURE_TRADE_UP), report.words(RemedyWords.FIGURE_TRADE_LIMIT), changes));
    }

    private static String[] values(TradeChart.Change one) {
        return new String[] {one.id(), digits("%.0f", one.strength()), digits("%.2f", one.use())};
    }

    private static Block.Column column(Report report, RemedyWords title, double share) {
        return Block.Column.text(report.words(title), share);
    }

    private static Block.Row row(Report report, Remedy one) {
        List<Text> change = new ArrayList<>();
        change.add(Text.EMPTY.bold(one.id()).then(Text.of(one.pareto() ? " " + report.words(RemedyWords.BEST) : "")));
        one.changes().forEach(words -> change.add(Text.of(words)));
        return Block.Row.of(new Block.Cell(change), new Block.Cell(outcome(report, one)), new Block.Cell(price(report, one)),
                new Block.Cell(one.agree().stream().map(Text::of).toList()));
    }

    private static List<Text> outcome(Report report, Remedy one) {
        List<Text> texts = new ArrayList<>();
        texts.add(Text.EMPTY.bold(one.verdict().words()));
        one.utilisation().ifPresent(used -> texts.add(report.say(RemedyWords.UTILISATION, number("%.2f", used))));
        factors(report, RemedyWords.REMOVES, one.removed(), texts);
        factors(report, RemedyWords.WEAKENS, one.weakened(), texts);
        one.raises().forEach(said -> texts.add(report.say(RemedyWords.RAISES, Text.of(said))));
        one.objections().stream().filter(said -> !one.raises().contains(said))
                .forEach(said -> texts.add(report.say(RemedyWords.LEAVES, Text.of(said))));
        one.leavesOpen().forEach(said -> texts.add(report.say(RemedyWords.LEAVES_OPEN, Text.of(said))));
        return texts;
    }

    private static void factors(Report report, RemedyWords words, Set<Factor> factors, List<Text> texts) {
        if (!factors.isEmpty()) {
            texts.add(report.say(words, Text.of(factors.stream().sorted().map(Factor::word).collect(Collectors.joining(", ")))));
        }
    }

    private static List<Text> price(Report report, Remedy one) {
        List<Text> texts = new ArrayList<>();
        if (one.strength() != 1 || one.mass() != 1) {
            texts.add(report.say(RemedyWords.KEPT, number("%.0f", one.strength() * 100), number("%.3f", one.mass())));
        }
        if (!one.fits()) {
            texts.add(Text.of(report.words(RemedyWords.OUT_OF_ENVELOPE)));
        }
        texts.add(report.say(RemedyWords.TOUCHES, number("%.0f", one.drawings()), number("%.0f", one.processes())));
        return texts;
    }

    private static Text number(String format, double value) {
        return Text.of(digits(format, value));
    }

    private static String digits(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }
}
