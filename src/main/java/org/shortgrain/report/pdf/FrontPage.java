package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shortgrain.report.pdf.tagged.Block;
import org.shortgrain.report.pdf.tagged.Text;
import org.shortgrain.review.Amount;
import org.shortgrain.review.DirectionReview;
import org.shortgrain.review.FeatureReview;
import org.shortgrain.review.Finding;
import org.shortgrain.review.Grade;
import org.shortgrain.review.Question;
import org.shortgrain.review.Review;
import org.shortgrain.review.SustainedStress;

/** The page that answers whether the part can be released as described, and who must do what. */
final class FrontPage {

    /** Rows that leave room for the rest of the page. */
    private static final int WORST = 6;
    /** Places that are named in a row. */
    private static final int NAMED = 3;
    private static final int FIELDS_PER_ROW = 3;
    private static final String NOTHING = "\u2013";

    private FrontPage() {
    }

    static List<Block> blocks(Report report) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, report.say(Label.REPORT_TITLE), "top"));
        blocks.add(titleBlock(report));
        blocks.add(verdict(report));
        blocks.addAll(Preliminaries.warnings(report));
        blocks.add(new Block.Paragraph(counts(report), Block.Tone.BODY));
        blocks.addAll(worst(report));
        blocks.addAll(decisive(report));
        blocks.add(report.small(report.say(Sentence.THREE_FACTORS, report.link(Section.CAUTIONS))));
        blocks.add(factors(report));
        blocks.add(new Block.NewPage());
        blocks.addAll(contents(report));
        return blocks;
    }

    private static Block titleBlock(Report report) {
        Review review = report.review();
        List<Block.Field> fields = new ArrayList<>();
        fields.add(field(report, Label.LABEL_PART_NUMBER, review.part().number()));
        fields.add(field(report, Label.LABEL_REVISION, review.part().revision()));
        fields.add(field(report, Label.LABEL_NAME, review.part().name()));
        fields.add(field(report, Label.LABEL_DRAWING, pair(report, "/drawing/number", "/drawing/revision")));
        fields.add(field(report, Label.LABEL_PLANNING, pair(report, "/planning/number", "/planning/revision")));
        fields.add(field(report, Label.LABEL_CRITICALITY, spoken(report.declared("/part/criticality"))));
        fields.add(field(report, Label.LABEL_PURPOSE, spoken(review.purpose())));
        fields.add(field(report, Label.LABEL_PREPARED_BY, review.preparedBy()));
        fields.add(field(report, Label.LABEL_DATE, review.date()));
        fields.add(field(report, Label.LABEL_REPORT, report.options().number().isEmpty()
                ? report.words(Label.NO_NUMBER) : joined(report.options().number(), report.options().issue())));
        fields.add(field(report, Label.LABEL_STATUS, ReviewPdf.banner(report)));
        fields.add(field(report, Label.LABEL_RULEBOOK,
                joined(review.rulebook().edition(), review.tool().version())));
        fields.add(new Block.Field(report.words(Label.LABEL_CONTENT_HASH), Text.EMPTY.mono(review.contentHash())));
        return new Block.TitleBlock(FIELDS_PER_ROW, fields);
    }

    private static Block.Field field(Report report, Label label, String value) {
        String shown = value.isEmpty() ? report.words(Label.NOT_DECLARED) : value;
        return new Block.Field(report.words(label), Text.of(shown));
    }

    private static String pair(Report report, String number, String revision) {
        return joined(report.declared(number), report.stated().entered(revision).orElse(""));
    }

    private static String joined(String first, String second) {
        return second.isEmpty() ? first : first + " \u00b7 " + second;
    }

    /** Words of the description are written with underscores there. */
    static String spoken(String word) {
        return word.replace('_', ' ');
    }

    private static Block verdict(Report report) {
        Review review = report.review();
        Text explanation = report.say(switch (review.verdict()) {
            case OBJECTION -> Sentence.VERDICT_OBJECTION;
            case CANNOT_BE_JUDGED -> Sentence.VERDICT_CANNOT_BE_JUDGED;
            case NO_OBJECTION_SUBJECT_TO_CONDITIONS -> Sentence.VERDICT_CONDITIONS;
            case NO_OBJECTION -> Sentence.VERDICT_NO_OBJECTION;
        });
        for (String because : review.because()) {
            if (!isInTheTable(report, because)) {
                explanation = explanation.plain(" ").plain(because);
            }
        }
        return new Block.Verdict(review.verdict().words(), Report.frame(review.verdict()), explanation);
    }

    /** A reason that names a finding of the table below it would be read twice. */
    private static boolean isInTheTable(Report report, String because) {
        for (FindingGroup group : worstGroups(report)) {
            for (String id : group.ids()) {
                if (because.startsWith(id + " ")) {
                    return true;
                }
            }
        }
        return false;
    }

    private static List<FindingGroup> worstGroups(Report report) {
        List<FindingGroup> groups = FindingGroup.of(report.review().findings());
        return groups.subList(0, Math.min(WORST, groups.size()));
    }

    private static Text counts(Report report) {
        Review review = report.review();
        return report.say(Sentence.COUNTS, count(review.count(Grade.OBJECTION)), count(review.count(Grade.CONDITION)),
                count(review.questions().size()), count(decisiveQuestions(review).size()),
                count(review.count(Grade.ADVICE)));
    }

    private static List<Question> decisiveQuestions(Review review) {
        List<Question> decisive = new ArrayList<>();
        for (Question question : review.questions()) {
            if (question.decisive()) {
                decisive.add(question);
            }
        }
        return decisive;
    }

    private static Text count(long number) {
        return Text.of(Long.toString(number));
    }

    private static Block factors(Report report) {
        List<Block.Row> rows = new ArrayList<>();
        for (FeatureReview feature : report.review().features()) {
            Optional<DirectionReview> governing = feature.governing();
            rows.add(Block.Row.of(Block.Cell.of(Text.EMPTY.bold(feature.id())),
                    Block.Cell.of(report.state(feature.material().state())),
                    Block.Cell.of(report.state(feature.stress().state())),
                    Block.Cell.of(report.state(feature.environment().state())),
                    governing.isPresent() ? sustained(report, feature, governing.get()) : Block.Cell.of(NOTHING),
                    governing.isPresent() ? threshold(report, feature, governing.get()) : Block.Cell.of(NOTHING),
                    governing.isPresent() ? utilisation(report, feature, governing.get()) : Block.Cell.of(NOTHING)));
        }
        return new Block.Table(List.of(report.column(Label.COLUMN_FEATURE, 14),
                report.column(Label.COLUMN_MATERIAL, 12), report.column(Label.COLUMN_STRESS, 12),
                report.column(Label.COLUMN_ENVIRONMENT, 14), report.column(Label.COLUMN_SUSTAINED, 23),
                report.column(Label.COLUMN_THRESHOLD, 17), report.column(Label.COLUMN_UTILISATION, 12)),
                Block.Headings.TOP_AND_SIDE, rows);
    }

    private static Block.Cell sustained(Report report, FeatureReview feature, DirectionReview governing) {
        SustainedStress sum = governing.sustained();
        return amount(report, feature, sum.total(), sum.direction() + " ");
    }

    private static Block.Cell threshold(Report report, FeatureReview feature, DirectionReview governing) {
        return governing.threshold().isPresent()
                ? amount(report, feature, governing.threshold().get().amount(), "") : Block.Cell.of(NOTHING);
    }

    private static Block.Cell utilisation(Report report, FeatureReview feature, DirectionReview governing) {
        return governing.utilisation().isPresent()
                ? amount(report, feature, governing.utilisation().get(), "") : Block.Cell.of(NOTHING);
    }

    /** The number leads to its make-up, which leads to calculations, inputs and sources. */
    private static Block.Cell amount(Report report, FeatureReview feature, Amount amount, String before) {
        Text value = report.links().toStress(before + report.numbers().value(amount), feature.id());
        String range = report.numbers().single().range(amount);
        return range.isEmpty() ? Block.Cell.of(value) : new Block.Cell(List.of(value, Text.of(range)));
    }

    private static List<Block> worst(Report report) {
        List<Finding> findings = report.review().findings();
        if (findings.isEmpty()) {
            return List.of(report.paragraph(Sentence.NO_FINDINGS));
        }
        int shown = 0;
        List<Block.Row> rows = new ArrayList<>();
        for (FindingGroup group : worstGroups(report)) {
            shown += group.findings().size();
            Finding first = group.first();
            Text name = report.links().toFindings(group.ids()).plain(" ").then(report.badge(first.grade()));
            Text title = Text.of(places(report, group) + first.title()).then(report.onPage(Links.finding(first.id())));
            rows.add(Block.Row.of(Block.Cell.of(name), Block.Cell.of(title),
                    Block.Cell.of(first.remedies().isEmpty() ? "" : first.remedies().get(0)),
                    Block.Cell.of(report.answers(first.factor()))));
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(2, report.say(Sentence.WORST_FINDINGS), "worst"));
        blocks.add(new Block.Table(List.of(report.column(Label.COLUMN_FINDING, 19),
                report.column(Label.COLUMN_WRONG, 37), report.column(Label.COLUMN_FIRST_REMEDY, 34),
                report.column(Label.COLUMN_WHO, 10)), Block.Headings.TOP_AND_SIDE, rows));
        if (findings.size() > shown) {
            blocks.add(report.small(report.say(Sentence.MORE_FINDINGS, count(findings.size() - shown),
                    report.link(Section.FINDINGS), report.link(Section.ACTIONS))));
        }
        return blocks;
    }

    /** Few enough names to leave the page to what is wrong. */
    private static String places(Report report, FindingGroup group) {
        List<String> names = group.features();
        if (names.isEmpty()) {
            return "";
        }
        List<String> shown = names.subList(0, Math.min(NAMED, names.size()));
        return (names.size() == shown.size() ? String.join(", ", names) : report.words(Label.AND_MORE,
                String.join(", ", shown), Integer.toString(names.size() - shown.size()))) + ": ";
    }

    private static List<Block> decisive(Report report) {
        List<Text> links = new ArrayList<>();
        for (Question question : decisiveQuestions(report.review())) {
            links.add(report.links().toQuestion(question.id()));
        }
        return links.isEmpty() ? List.of()
                : List.of(report.paragraph(Sentence.DECISIVE_QUESTIONS, Links.joined(links)));
    }

    private static List<Block> contents(Report report) {
        List<Block.Entry> entries = new ArrayList<>();
        for (Section section : Section.values()) {
            entries.add(new Block.Entry(section.heading(report.wording()), section.anchor()));
        }
        return List.of(new Block.Heading(2, report.say(Sentence.CONTENTS), "contents"), new Block.Contents(entries));
    }
}
