package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.report.pdf.tagged.Block;
import org.shortgrain.report.pdf.tagged.Text;
import org.shortgrain.review.Calculation;
import org.shortgrain.review.Finding;
import org.shortgrain.review.Grade;
import org.shortgrain.review.Question;
import org.shortgrain.review.SourceLine;

/** What people add to the report, and what it rests on: actions, opinions, limits, sources, signatures. */
final class ClosingPages {

    private static final int OPINION_ROWS = 3;
    /** Leaves room to write by hand. */
    private static final Block.Cell ROOM = new Block.Cell(List.of(Text.of(" "), Text.of(" ")));

    private ClosingPages() {
    }

    static List<Block> blocks(Report report) {
        List<Block> blocks = new ArrayList<>();
        blocks.addAll(actions(report));
        blocks.addAll(opinions(report));
        blocks.addAll(limits(report));
        blocks.addAll(sources(report));
        blocks.addAll(signatures(report));
        return blocks;
    }

    private static List<Block> actions(Report report) {
        List<Block.Row> rows = new ArrayList<>();
        for (FindingGroup group : FindingGroup.of(report.review().findings())) {
            Finding finding = group.first();
            boolean decided = !Decisions.on(report, group.ids()).isEmpty();
            if (decided || finding.grade() == Grade.OBJECTION || finding.grade() == Grade.CONDITION) {
                rows.add(action(report, group.ids(), report.links().toFindings(group.ids()).plain(" ").then(report.badge(finding.grade())),
                        finding.remedies().isEmpty() ? finding.title() : finding.remedies().get(0),
                        report.answers(finding.factor())));
            }
        }
        for (Question question : report.review().questions()) {
            if (question.decisive() || report.review().disposition(question.id()).isPresent()) {
                rows.add(action(report, List.of(question.id()), report.links().toQuestion(question.id()).plain(" ")
                        .then(report.badge(Grade.QUESTION)), question.text(), report.answers(question.factor())));
            }
        }
        if (rows.isEmpty()) {
            return List.of(report.heading(Section.ACTIONS), report.paragraph(Sentence.ACTIONS_NONE));
        }
        return List.of(report.heading(Section.ACTIONS), report.paragraph(report.review().dispositions().isEmpty()
                        ? Sentence.ACTIONS_TEXT : FollowUp.DECISIONS_TEXT),
                new Block.Table(List.of(report.column(Label.COLUMN_FINDING, 18), report.column(Label.COLUMN_ACTION, 32),
                        report.column(Label.COLUMN_WHO, 9), report.column(Label.COLUMN_OWNER, 12),
                        report.column(Label.COLUMN_DISPOSITION, 13), report.column(Label.COLUMN_CLOSED, 16)), Block.Headings.TOP_AND_SIDE, rows));
    }

    private static Block.Row action(Report report, List<String> ids, Text what, String action, String answers) {
        List<Block.Cell> decided = Decisions.cells(report, ids, ROOM);
        return Block.Row.of(Block.Cell.of(what), Block.Cell.of(action), Block.Cell.of(answers), decided.get(0),
                decided.get(1), decided.get(2));
    }

    private static List<Block> opinions(Report report) {
        List<Block.Row> rows = new ArrayList<>(Decisions.overruling(report));
        for (int i = 0; i < OPINION_ROWS; i++) {
            rows.add(Block.Row.of(ROOM, ROOM, ROOM, ROOM));
        }
        return List.of(report.heading(Section.OPINIONS), report.paragraph(Sentence.OPINIONS_TEXT),
                new Block.Table(List.of(report.column(Label.COLUMN_REVIEWER, 20), report.column(Label.COLUMN_ABOUT, 16),
                        report.column(Label.COLUMN_OPINION, 50), report.column(Label.LABEL_DATE, 14)),
                        Block.Headings.TOP, rows));
    }

    private static List<Block> limits(Report report) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(report.heading(Section.LIMITS));
        blocks.add(report.paragraph(Sentence.LIMITS_TEXT, report.link(Section.CAUTIONS)));
        Map<Computed.Validity, List<Text>> byValidity = new LinkedHashMap<>();
        for (Calculation calculation : report.review().computations()) {
            Computed.Validity validity = calculation.computed().validity();
            if (!validity.inside()) {
                byValidity.putIfAbsent(validity, new ArrayList<>());
                byValidity.get(validity).add(report.links().toCalculation(calculation.id()));
            }
        }
        List<Block.Row> rows = new ArrayList<>();
        for (Map.Entry<Computed.Validity, List<Text>> left : byValidity.entrySet()) {
            rows.add(Block.Row.of(Block.Cell.of(Links.joined(left.getValue())),
                    Block.Cell.of(left.getKey().statement()),
                    Block.Cell.of(CalculationPages.here(report, left.getKey()))));
        }
        if (rows.isEmpty()) {
            blocks.add(report.paragraph(Sentence.LIMITS_KEPT));
        } else {
            blocks.add(report.paragraph(Sentence.LIMITS_LEFT));
            blocks.add(new Block.Table(List.of(report.column(Label.COLUMN_CALCULATION, 26),
                    report.column(Label.COLUMN_METHOD_RANGE, 56), report.column(Label.COLUMN_HERE, 18)),
                    Block.Headings.TOP_AND_SIDE, rows));
        }
        return blocks;
    }

    private static List<Block> sources(Report report) {
        if (report.review().sources().isEmpty()) {
            return List.of(report.heading(Section.SOURCES), report.paragraph(Sentence.SOURCES_NONE));
        }
        List<Block.Row> rows = new ArrayList<>();
        for (SourceLine source : report.review().sources()) {
            rows.add(Block.Row.of(Block.Cell.of(source.id()), Block.Cell.of(Text.of(source.title() + ": ")
                    .italic(source.seen()))).named(Links.source(source.id())));
        }
        return List.of(report.heading(Section.SOURCES), report.paragraph(Sentence.SOURCES_TEXT),
                new Block.Table(List.of(report.column(Label.COLUMN_SOURCE, 20),
                        report.column(Label.COLUMN_DOCUMENT, 80)), Block.Headings.TOP_AND_SIDE, rows).dense());
    }

    private static List<Block> signatures(Report report) {
        if (report.options().status() == ReviewPdf.Status.DRAFT) {
            return List.of(report.heading(Section.SIGNATURES), report.paragraph(Signing.SIGNATURES_DRAFT));
        }
        List<Block.Slot> slots = new ArrayList<>();
        for (SignatureRole role : SignatureRole.values()) {
            slots.add(slot(report, role));
        }
        return List.of(report.heading(Section.SIGNATURES), report.paragraph(Signing.SIGNATURES_TEXT),
                new Block.Signatures(slots),
                report.small(report.say(Signing.SIGNATURES_NOTE)));
    }

    private static Block.Slot slot(Report report, SignatureRole role) {
        String name = role.title(report.wording());
        return new Block.Slot(role.field(), name, role.meaning(report.wording()),
                report.words(Signing.NOT_SIGNED, name));
    }
}
