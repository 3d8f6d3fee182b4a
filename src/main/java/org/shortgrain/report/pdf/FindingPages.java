package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.List;
import org.shortgrain.part.Disposition;
import org.shortgrain.part.Location;
import org.shortgrain.report.pdf.tagged.Block;
import org.shortgrain.report.pdf.tagged.Text;
import org.shortgrain.review.Finding;

/**
 * One block for each finding: what is wrong, what shows it, why it matters, what would mend it, who says so. Findings of
 * one rule at several places share a block.
 */
final class FindingPages {

    private static final double LABELS = 13;
    private static final double TEXT = 87;
    private static final String WIDE_SPACE = "\u2002";
    private static final String AND = " \u00b7 ";

    private FindingPages() {
    }

    static List<Block> blocks(Report report) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(report.heading(Section.FINDINGS));
        if (report.review().findings().isEmpty()) {
            blocks.add(report.paragraph(Sentence.NO_FINDINGS));
            return blocks;
        }
        blocks.add(report.paragraph(Sentence.FINDINGS_TEXT));
        for (FindingGroup group : FindingGroup.of(report.review().findings())) {
            blocks.addAll(group(report, group));
        }
        return blocks;
    }

    private static List<Block> group(Report report, FindingGroup group) {
        Finding first = group.first();
        Text heading = Text.of(String.join(", ", group.ids()) + WIDE_SPACE).then(report.badge(first.grade()))
                .plain(WIDE_SPACE + first.title());
        boolean alone = group.findings().size() == 1;
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(2, heading, Links.finding(first.id())));
        List<Block.Row> rows = new ArrayList<>();
        if (alone) {
            blocks.add(new Block.Paragraph(Text.of(first.statement()), Block.Tone.BODY));
            rows.add(report.labelled(Label.ROW_WHERE, place(report, first).plain(AND).then(about(report, first))));
            add(rows, report, Label.ROW_EVIDENCE, shown(report, first));
        } else {
            rows.add(report.labelled(Label.ROW_ABOUT, about(report, first)));
            for (Finding member : group.findings()) {
                rows.add(member(report, group, member));
            }
        }
        if (!first.why().isEmpty()) {
            rows.add(report.labelled(Label.ROW_WHY, Text.of(first.why())));
        }
        add(rows, report, Label.ROW_REMEDIES, numbered(group.remedies()));
        add(rows, report, Label.ROW_SOURCES, Links.joined(report.links().toSources(group.sources()), "; "));
        List<Text> decided = new ArrayList<>();
        for (Disposition one : Decisions.on(report, group.ids())) {
            Text sentence = Decisions.sentence(report, one);
            decided.add(alone ? sentence : Text.of(one.finding() + AND).then(sentence));
        }
        if (!decided.isEmpty()) {
            rows.add(report.labelled(FollowUp.ROW_DECIDED, decided));
        }
        if (first.needsConfirmation()) {
            rows.add(report.labelled(Label.ROW_CONFIRM, report.say(Sentence.CONFIRM_TEXT)));
        }
        blocks.add(new Block.Table(List.of(Block.Column.text("", LABELS), Block.Column.text("", TEXT)),
                Block.Headings.SIDE, rows).dense());
        return blocks;
    }

    /** One place of several: its own statement, evidence and lines of the file. */
    private static Block.Row member(Report report, FindingGroup group, Finding finding) {
        Text place = Text.of(finding.id() + AND).then(place(report, finding));
        List<Text> texts = new ArrayList<>(List.of(Text.EMPTY.bold(finding.statement()), shown(report, finding)));
        List<String> own = group.remediesOnlyOf(finding);
        if (!own.isEmpty()) {
            texts.add(report.say(Label.REMEDIES_HERE, numbered(own)));
        }
        Block.Row row = Block.Row.of(Block.Cell.of(place), new Block.Cell(texts));
        return finding == group.first() ? row : row.named(Links.finding(finding.id()));
    }

    private static Text place(Report report, Finding finding) {
        return finding.feature().isPresent()
                ? report.links().toStress(finding.feature().get(), finding.feature().get())
                : report.say(Label.WHOLE_PART);
    }

    private static Text about(Report report, Finding finding) {
        return Text.of(report.factor(finding.factor()) + AND)
                .then(report.say(Label.RULE_WORD, Text.of(finding.rule())));
    }

    /** Evidence, the places in the file, and the rules that the finding stands for, in one run. */
    private static Text shown(Report report, Finding finding) {
        List<Text> parts = new ArrayList<>(plain(finding.evidence()));
        if (!finding.at().isEmpty()) {
            parts.add(report.say(Label.IN_THE_FILE, Links.joined(places(report, finding.at()), ", ")));
        }
        if (!finding.foldedIn().isEmpty()) {
            parts.add(report.say(Label.STANDS_FOR, Text.of(String.join(", ", finding.foldedIn()))));
        }
        return Links.joined(parts, AND);
    }

    private static void add(List<Block.Row> rows, Report report, Label label, Text text) {
        if (!text.parts().isEmpty()) {
            rows.add(report.labelled(label, text));
        }
    }

    static List<Text> plain(List<String> sentences) {
        List<Text> texts = new ArrayList<>();
        for (String sentence : sentences) {
            texts.add(Text.of(sentence));
        }
        return texts;
    }

    private static Text numbered(List<String> remedies) {
        List<Text> texts = new ArrayList<>();
        for (String remedy : remedies) {
            texts.add(remedies.size() == 1 ? Text.of(remedy)
                    : Text.EMPTY.bold(texts.size() + 1 + ".\u00a0").plain(remedy));
        }
        return Links.joined(texts, "  ");
    }

    private static List<Text> places(Report report, List<Location> places) {
        List<Text> texts = new ArrayList<>();
        for (Location place : places) {
            texts.add(report.links().toValue(place.path()).plain(" ")
                    .then(report.say(Label.LINE, Text.of(Integer.toString(place.line())))));
        }
        return texts;
    }
}
