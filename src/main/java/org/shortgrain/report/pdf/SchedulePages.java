package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.shortgrain.report.pdf.tagged.Block;
import org.shortgrain.report.pdf.tagged.Inline;
import org.shortgrain.report.pdf.tagged.Text;
import org.shortgrain.review.Amount;
import org.shortgrain.review.InspectionSchedule.Outcome;
import org.shortgrain.review.InspectionSchedule;

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
        List<Block.Row> rows = new ArrayList<>();
        Set<String> cautions = new LinkedHashSet<>();
        for (InspectionSchedule one : schedules) {
            rows.add(row(report, one));
            cautions.addAll(one.cautions());
        }
        blocks.add(new Block.Table(List.of(report.column(Label.COLUMN_FEATURE, 14),
                ServicePages.column(report, ServiceWords.COLUMN_LOOKED_FOR, 36),
                ServicePages.column(report, ServiceWords.COLUMN_FIRST, 13),
                ServicePages.column(report, ServiceWords.COLUMN_REPEAT, 13),
                ServicePages.column(report, ServiceWords.COLUMN_SET_BY, 24)), Block.Headings.TOP_AND_SIDE,
                rows).dense());
        for (InspectionSchedule one : schedules) {
            blocks.addAll(detail(report, one));
        }
        for (String caution : cautions) {
            blocks.add(report.small(Text.of(caution)));
        }
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
        return Text.of(amount.isPresent() ? report.numbers().value(amount.get()) : "\u2013");
    }

    private static List<Block> detail(Report report, InspectionSchedule schedule) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(3, report.say(ServiceWords.SCHEDULE_WHY, Text.of(schedule.feature())),
                "schedule " + schedule.feature()));
        for (List<String> sentences : List.of(schedule.because(), schedule.declared())) {
            for (String sentence : sentences) {
                blocks.add(new Block.Paragraph(Text.of(sentence), Block.Tone.BODY));
            }
        }
        if (!schedule.calculations().isEmpty()) {
            List<Text> links = new ArrayList<>();
            for (String calculation : schedule.calculations()) {
                links.add(report.links().toCalculation(calculation));
            }
            blocks.add(report.small(report.say(ServiceWords.SCHEDULE_BEHIND, Links.joined(links))));
        }
        if (!schedule.dates().isEmpty()) {
            blocks.add(report.small(report.say(ServiceWords.SCHEDULE_DATES, Text.of(schedule.feature()))));
            List<Block.Row> dates = new ArrayList<>();
            for (InspectionSchedule.Due one : schedule.dates()) {
                dates.add(Block.Row.of(Block.Cell.of(one.when()), Block.Cell.of(one.what())));
            }
            blocks.add(new Block.Table(List.of(ServicePages.column(report, ServiceWords.COLUMN_WHEN, 40),
                    ServicePages.column(report, ServiceWords.COLUMN_DUE, 60)), Block.Headings.TOP_AND_SIDE,
                    dates).dense());
        }
        return blocks;
    }
}
