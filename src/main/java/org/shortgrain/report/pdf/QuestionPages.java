package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.shortgrain.report.pdf.tagged.Block;
import org.shortgrain.report.pdf.tagged.Inline;
import org.shortgrain.report.pdf.tagged.Text;
import org.shortgrain.review.Answer;
import org.shortgrain.review.Question;
import org.shortgrain.review.RuleUse;

/** What was asked without a finding, and what could not be answered. */
final class QuestionPages {

    private QuestionPages() {
    }

    static List<Block> blocks(Report report) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(report.heading(Section.RULES));
        blocks.add(report.paragraph(Sentence.RULES_TEXT, report.link(Section.INPUTS)));
        blocks.addAll(asked(report));
        blocks.addAll(notApplicable(report));
        blocks.addAll(questions(report));
        return blocks;
    }

    /** What each rule asks, in one run for each reason: the list is looked up, not read. */
    private static List<Block> asked(Report report) {
        List<Block> blocks = begun(report, Sentence.RULES_APPLIED, "rules applied", report.review().rulesApplied());
        byReason(report.review().rulesApplied()).forEach((reason, rules) -> {
            blocks.add(fine(same(report, reason, rules)));
            bySubject(rules).forEach((subject, some) -> blocks.add(fine(Text.EMPTY.bold(subject).plain(" ")
                    .then(Links.joined(some.stream().map(QuestionPages::numberAndTitle).toList(), " \u00b7 ")))));
        });
        return blocks;
    }

    /** The numbers alone: why a subject was not asked says enough of its rules. */
    private static List<Block> notApplicable(Report report) {
        List<RuleUse> all = report.review().rulesNotApplicable();
        List<Block> blocks = begun(report, Sentence.RULES_NOT_APPLICABLE, "rules not applicable", all);
        byReason(all).forEach((reason, rules) -> blocks.add(fine(same(report, reason, rules)
                .plain(": " + numbers(rules)))));
        return blocks;
    }

    private static List<Block> begun(Report report, Sentence title, String anchor, List<RuleUse> rules) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(2, report.say(title), anchor));
        if (rules.isEmpty()) {
            blocks.add(report.paragraph(Sentence.RULES_NONE));
        }
        return blocks;
    }

    private static Text same(Report report, String reason, List<RuleUse> rules) {
        return report.say(Sentence.RULES_SAME, Text.of(reason), Text.of(Integer.toString(rules.size())));
    }

    private static Block fine(Text text) {
        return new Block.Paragraph(text, Block.Tone.FINE);
    }

    private static Map<String, List<RuleUse>> bySubject(List<RuleUse> rules) {
        Map<String, List<RuleUse>> bySubject = new LinkedHashMap<>();
        rules.forEach(rule -> bySubject.computeIfAbsent(subject(rule.rule()), key -> new ArrayList<>()).add(rule));
        return bySubject;
    }

    /** A rule is called by its subject and a number, such as FIT-02. */
    private static String subject(String rule) {
        int dash = rule.lastIndexOf('-');
        return dash < 0 ? rule : rule.substring(0, dash);
    }

    private static Text numberAndTitle(RuleUse rule) {
        return Text.EMPTY.bold(rule.rule().substring(rule.rule().lastIndexOf('-') + 1)).plain("\u00a0")
                .plain(rule.title());
    }

    private static String numbers(List<RuleUse> rules) {
        return bySubject(rules).entrySet().stream().map(some -> some.getKey() + " " + some.getValue().stream()
                        .map(rule -> rule.rule().substring(rule.rule().lastIndexOf('-') + 1))
                        .collect(Collectors.joining(", ")))
                .collect(Collectors.joining("; "));
    }

    private static Map<String, List<RuleUse>> byReason(List<RuleUse> rules) {
        Map<String, List<RuleUse>> byReason = new LinkedHashMap<>();
        for (RuleUse rule : rules) {
            String reason = rule.reason().endsWith(".") ? rule.reason().substring(0, rule.reason().length() - 1)
                    : rule.reason();
            byReason.computeIfAbsent(reason, key -> new ArrayList<>()).add(rule);
        }
        return byReason;
    }

    private static List<Block> questions(Report report) {
        List<Question> questions = report.review().questions();
        if (questions.isEmpty()) {
            return List.of(report.heading(Section.QUESTIONS), report.paragraph(Sentence.QUESTIONS_NONE));
        }
        List<Block.Row> rows = new ArrayList<>();
        for (Question question : questions) {
            rows.add(new Block.Row(List.of(
                    new Block.Cell(List.of(Text.EMPTY.bold(question.id()), weight(report, question))),
                    new Block.Cell(asked(report, question)), Block.Cell.of(question.why()),
                    new Block.Cell(FindingPages.plain(answers(question)))), List.of(Links.question(question.id()))));
        }
        List<Block.Column> columns = List.of(report.column(Label.COLUMN_NUMBER, 14), report.column(Label.COLUMN_QUESTION, 38),
                report.column(Label.COLUMN_WHY, 26), report.column(Label.COLUMN_ANSWERS, 22));
        return List.of(report.heading(Section.QUESTIONS), report.paragraph(Sentence.QUESTIONS_TEXT),
                new Block.Table(columns, Block.Headings.TOP_AND_SIDE, rows));
    }

    private static List<String> answers(Question question) {
        return question.answers().isEmpty() ? List.of(question.outlook())
                : question.answers().stream().map(Answer::says).toList();
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
