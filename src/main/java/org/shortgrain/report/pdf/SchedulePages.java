package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.shortgrain.report.pdf.tagged.Block;
import org.shortgrain.report.pdf.tagged.Inline;
import org.shortgrain.report.pdf.tagged.Text;
import org.shortgrain.review.Amount;
import org.shortgrain.review.InspectionSchedule;
import org.shortgrain.review.InspectionSchedule.Outcome;

/** When to look at each place, and the declared plan against it. */
final class SchedulePages {

    private SchedulePages() {
    }

    static List<Block> blocks(Report report, List<InspectionSchedule> schedules) {
        if (schedules.isEmpty()) {
            return List.of();
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(2, report.say(ServiceWords.SCHEDULES_TITLE), "when to look"));
        blocks.add(report.paragraph(ServiceWords.SCHEDULES_TEXT));
        blocks.add(new Block.Table(List.of(report.column(Label.COLUMN_FEATURE, 14),
                ServicePages.column(report, ServiceWords.COLUMN_LOOKED_FOR, 36),
                ServicePages.column(report, ServiceWords.COLUMN_FIRST, 13),
                ServicePages.column(report, ServiceWords.COLUMN_REPEAT, 13),
                ServicePages.column(report, ServiceWords.COLUMN_SET_BY, 24)), Block.Headings.TOP_AND_SIDE,
                schedules.stream().map(one -> row(report, one)).toList()).dense());
        schedules.forEach(one -> blocks.addAll(detail(report, one)));
        schedules.stream().flatMap(one -> one.cautions().stream()).distinct()
                .forEach(caution -> blocks.add(report.small(Text.of(caution))));
        return blocks;
    }

    private static Block.Row row(Report report, InspectionSchedule schedule) {
        return Block.Row.of(Block.Cell.of(schedule.feature()), Block.Cell.of(schedule.lookedFor()),
                Block.Cell.of(days(report, schedule.first())), Block.Cell.of(days(report, schedule.repeat())),
                Block.Cell.of(schedule.outcome() == Outcome.NOT_INSPECTABLE
                        ? Text.EMPTY.badge(report.words(ServiceWords.NOT_INSPECTABLE), Inline.Frame.HEAVY)
                        : Text.of(schedule.outcome().words())));
    }

    private static Text days(Report report, Optional<Amount> amount) {
        return amount.map(one -> Text.of(report.numbers().value(one))).orElse(Text.of("\u2013"));
    }

    private static List<Block> detail(Report report, InspectionSchedule schedule) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(3, report.say(ServiceWords.SCHEDULE_WHY, Text.of(schedule.feature())),
                "schedule " + schedule.feature()));
        Stream.of(schedule.because(), schedule.declared()).flatMap(List::stream)
                .forEach(sentence -> blocks.add(new Block.Paragraph(Text.of(sentence), Block.Tone.BODY)));
        if (!schedule.calculations().isEmpty()) {
            blocks.add(report.small(report.say(ServiceWords.SCHEDULE_BEHIND, Links.joined(schedule.calculations().stream()
                    .map(report.links()::toCalculation).toList()))));
        }
        if (!schedule.dates().isEmpty()) {
            blocks.add(report.small(report.say(ServiceWords.SCHEDULE_DATES, Text.of(schedule.feature()))));
            blocks.add(new Block.Table(List.of(ServicePages.column(report, ServiceWords.COLUMN_WHEN, 40),
                    ServicePages.column(report, ServiceWords.COLUMN_DUE, 60)), Block.Headings.TOP_AND_SIDE,
                    schedule.dates().stream().map(one -> Block.Row.of(Block.Cell.of(one.when()), Block.Cell.of(one.what())))
                            .toList()).dense());
        }
        return blocks;
    }
}
