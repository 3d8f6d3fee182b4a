package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
        for (Map.Entry<String, List<RuleUse>> reason : byReason(report.review().rulesApplied()).entrySet()) {
            blocks.add(fine(same(report, reason.getKey(), reason.getValue())));
            for (Map.Entry<String, List<RuleUse>> subject : bySubject(reason.getValue()).entrySet()) {
                List<Text> rules = new ArrayList<>();
                for (RuleUse rule : subject.getValue()) {
                    rules.add(Text.EMPTY.bold(number(rule)).plain("\u00a0").plain(rule.title()));
                }
                blocks.add(fine(Text.EMPTY.bold(subject.getKey()).plain(" ").then(Links.joined(rules, " \u00b7 "))));
            }
        }
        return blocks;
    }

    /** The numbers alone: why a subject was not asked says enough of its rules. */
    private static List<Block> notApplicable(Report report) {
        List<RuleUse> all = report.review().rulesNotApplicable();
        List<Block> blocks = begun(report, Sentence.RULES_NOT_APPLICABLE, "rules not applicable", all);
        for (Map.Entry<String, List<RuleUse>> reason : byReason(all).entrySet()) {
            blocks.add(fine(same(report, reason.getKey(), reason.getValue()).plain(": " + numbers(reason.getValue()))));
        }
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
        for (RuleUse rule : rules) {
            String subject = subject(rule.rule());
            bySubject.putIfAbsent(subject, new ArrayList<>());
            bySubject.get(subject).add(rule);
        }
        return bySubject;
    }

    /** A rule is called by its subject and a number, such as FIT-02. */
    private static String subject(String rule) {
        int dash = rule.lastIndexOf('-');
        return dash < 0 ? rule : rule.substring(0, dash);
    }

    private static String number(RuleUse rule) {
        return rule.rule().substring(rule.rule().lastIndexOf('-') + 1);
    }

    private static String numbers(List<RuleUse> rules) {
        List<String> subjects = new ArrayList<>();
        for (Map.Entry<String, List<RuleUse>> subject : bySubject(rules).entrySet()) {
            List<String> numbers = new ArrayList<>();
            for (RuleUse rule : subject.getValue()) {
                numbers.add(number(rule));
            }
            subjects.add(subject.getKey() + " " + String.join(", ", numbers));
        }
        return String.join("; ", subjects);
    }

    private static Map<String, List<RuleUse>> byReason(List<RuleUse> rules) {
        Map<String, List<RuleUse>> byReason = new LinkedHashMap<>();
        for (RuleUse rule : rules) {
            String reason = rule.reason().endsWith(".") ? rule.reason().substring(0, rule.reason().length() - 1)
                    : rule.reason();
            byReason.putIfAbsent(reason, new ArrayList<>());
            byReason.get(reason).add(rule);
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
        if (question.answers().isEmpty()) {
            return List.of(question.outlook());
        }
        List<String> answers = new ArrayList<>();
        for (Answer answer : question.answers()) {
            answers.add(answer.says());
        }
        return answers;
    }

    private static Text weight(Report report, Question question) {
        return question.decisive() ? Text.EMPTY.badge(report.words(Label.DECISIVE), Inline.Frame.HEAVY)
                : Text.of(report.words(Label.FOR_THE_RECORD));
    }

    private static List<Text> asked(Report report, Question question) {
        List<Text> texts = new ArrayList<>();
        texts.add(Text.of(question.text()));
        texts.add(Text.of(report.place(question.feature()) + ", ")
                .then(report.links().toValue(question.at().path())));
        if (question.standIn().isPresent()) {
            texts.add(report.say(Label.MEANWHILE, Text.of(question.standIn().get())));
        }
        return texts;
    }
}
