package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shortgrain.report.pdf.tagged.Block;
import org.shortgrain.report.pdf.tagged.Inline;
import org.shortgrain.report.pdf.tagged.Text;
import org.shortgrain.review.Question;
import org.shortgrain.review.RuleUse;

/** What was asked without a finding, and what could not be answered. */
final class QuestionPages {

    /** From so many rules on, a reason they share is said once. */
    private static final int MANY = 4;

    private QuestionPages() {
    }

    static List<Block> blocks(Report report) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(report.heading(Section.RULES));
        blocks.addAll(rules(report, Sentence.RULES_APPLIED, Label.COLUMN_REASON, report.review().rulesApplied(),
                "rules applied"));
        blocks.addAll(rules(report, Sentence.RULES_NOT_APPLICABLE, Label.COLUMN_REASON_NOT_APPLICABLE,
                report.review().rulesNotApplicable(), "rules not applicable"));
        blocks.addAll(questions(report));
        return blocks;
    }

    private static List<Block> rules(Report report, Sentence title, Label reason, List<RuleUse> rules,
            String anchor) {
        Block heading = new Block.Heading(2, report.say(title), anchor);
        if (rules.isEmpty()) {
            return List.of(heading, report.paragraph(Sentence.RULES_NONE));
        }
        Map<String, List<RuleUse>> byReason = new LinkedHashMap<>();
        rules.forEach(rule -> byReason.computeIfAbsent(rule.reason(), key -> new ArrayList<>()).add(rule));
        List<Block> blocks = new ArrayList<>(List.of(heading));
        List<Block.Row> single = new ArrayList<>();
        byReason.forEach((why, same) -> {
            if (same.size() >= MANY) {
                blocks.add(report.paragraph(Sentence.RULES_SAME, Text.of(why),
                        Text.of(Integer.toString(same.size()))));
                blocks.add(twoUp(report, same));
            } else {
                same.forEach(rule -> single.add(Block.Row.of(Block.Cell.of(rule.rule()), Block.Cell.of(rule.title()),
                        Block.Cell.of(rule.reason()))));
            }
        });
        if (!single.isEmpty()) {
            blocks.add(new Block.Table(List.of(report.column(Label.COLUMN_RULE, 16),
                    report.column(Label.COLUMN_TITLE, 44), report.column(reason, 40)), Block.Headings.TOP_AND_SIDE,
                    single));
        }
        return blocks;
    }

    /** Rules with one and the same reason, two in a row, read along the rows. */
    private static Block twoUp(Report report, List<RuleUse> rules) {
        Block.Cell none = new Block.Cell(List.of());
        List<Block.Row> rows = new ArrayList<>();
        for (int i = 0; i < rules.size(); i += 2) {
            RuleUse left = rules.get(i);
            Optional<RuleUse> right = i + 1 < rules.size() ? Optional.of(rules.get(i + 1)) : Optional.empty();
            rows.add(Block.Row.of(Block.Cell.of(left.rule()), Block.Cell.of(left.title()),
                    right.map(rule -> Block.Cell.of(rule.rule())).orElse(none),
                    right.map(rule -> Block.Cell.of(rule.title())).orElse(none)));
        }
        return new Block.Table(List.of(report.column(Label.COLUMN_RULE, 15), report.column(Label.COLUMN_TITLE, 35),
                report.column(Label.COLUMN_RULE, 15), report.column(Label.COLUMN_TITLE, 35)), Block.Headings.TOP, rows);
    }

    private static List<Block> questions(Report report) {
        List<Question> questions = report.review().questions();
        if (questions.isEmpty()) {
            return List.of(report.heading(Section.QUESTIONS), report.paragraph(Sentence.QUESTIONS_NONE));
        }
        boolean answered = questions.stream().anyMatch(question -> !question.answers().isEmpty());
        List<Block.Row> rows = new ArrayList<>();
        for (Question question : questions) {
            List<Block.Cell> cells = new ArrayList<>(List.of(
                    new Block.Cell(List.of(Text.EMPTY.bold(question.id()), weight(report, question))),
                    new Block.Cell(asked(report, question)), Block.Cell.of(question.why())));
            if (answered) {
                cells.add(new Block.Cell(FindingPages.plain(question.answers())));
            }
            rows.add(new Block.Row(cells, List.of(Links.question(question.id()))));
        }
        List<Block.Column> columns = new ArrayList<>(List.of(report.column(Label.COLUMN_NUMBER, 14),
                report.column(Label.COLUMN_QUESTION, 38), report.column(Label.COLUMN_WHY, 26)));
        if (answered) {
            columns.add(report.column(Label.COLUMN_ANSWERS, 22));
        }
        return List.of(report.heading(Section.QUESTIONS), report.paragraph(Sentence.QUESTIONS_TEXT),
                new Block.Table(columns, Block.Headings.TOP_AND_SIDE, rows));
    }

    private static Text weight(Report report, Question question) {
        return question.decisive() ? Text.EMPTY.badge(report.words(Label.DECISIVE), Inline.Frame.HEAVY)
                : Text.of(report.words(Label.FOR_THE_RECORD));
    }

    private static List<Text> asked(Report report, Question question) {
        List<Text> texts = new ArrayList<>();
        texts.add(Text.of(question.text()));
        texts.add(Text.of(question.feature().orElseGet(() -> report.words(Label.WHOLE_PART)) + ", ")
                .then(report.links().toValue(question.at().path())));
        question.standIn().ifPresent(standIn -> texts.add(report.say(Label.MEANWHILE, Text.of(standIn))));
        return texts;
    }
}
