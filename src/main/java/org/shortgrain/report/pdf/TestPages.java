package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.List;
import org.shortgrain.report.pdf.tagged.Block;
import org.shortgrain.report.pdf.tagged.Text;
import org.shortgrain.review.OwnTests;

/** Own stress and time results, and whether they count. */
final class TestPages {

    private TestPages() {
    }

    static List<Block> blocks(Report report, List<OwnTests> tests) {
        if (tests.isEmpty()) {
            return List.of();
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(2, report.say(ServiceWords.TESTS_TITLE), "own tests"));
        List<Block.Row> rows = new ArrayList<>();
        for (OwnTests one : tests) {
            rows.add(row(report, one));
        }
        blocks.add(new Block.Table(List.of(ServicePages.column(report, ServiceWords.COLUMN_SCOPE, 26),
                ServicePages.column(report, ServiceWords.COLUMN_RESULTS, 16),
                ServicePages.column(report, ServiceWords.COLUMN_INTERVAL, 18),
                ServicePages.column(report, ServiceWords.COLUMN_COUNTS, 40)), Block.Headings.TOP_AND_SIDE, rows).dense());
        return blocks;
    }

    private static Block.Row row(Report report, OwnTests tests) {
        List<Text> interval = new ArrayList<>();
        if (tests.threshold().isPresent()) {
            interval.add(Text.of(report.numbers().value(tests.threshold().get())));
            interval.add(Text.of(report.numbers().single().range(tests.threshold().get())));
        }
        if (tests.calculation().isPresent()) {
            interval.add(report.links().toCalculation(tests.calculation().get()));
        }
        List<Text> counts = new ArrayList<>(List.of(Text.EMPTY.bold(report.words(tests.counted() ? ServiceWords.TESTS_COUNTED
                : ServiceWords.TESTS_NOT_COUNTED))));
        counts.addAll(FindingPages.plain(tests.because()));
        String place = tests.feature().isEmpty() ? report.words(Label.WHOLE_PART) : tests.feature();
        return Block.Row.of(new Block.Cell(List.of(Text.of(place), Text.of(tests.scope()))),
                Block.Cell.of(report.say(ServiceWords.TESTS_SPECIMENS, count(tests, true), count(tests, false))),
                new Block.Cell(interval), new Block.Cell(counts));
    }

    private static Text count(OwnTests tests, boolean cracked) {
        return Text.of(Long.toString(tests.count(cracked)));
    }
}
