package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.List;
import org.shortgrain.part.Location;
import org.shortgrain.report.pdf.tagged.Block;
import org.shortgrain.report.pdf.tagged.Text;
import org.shortgrain.review.Finding;

/** One block for each finding: what is wrong, what shows it, why it matters, what would mend it, who says so. */
final class FindingPages {

    private static final double LABELS = 17;
    private static final double TEXT = 83;

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
        report.review().findings().forEach(finding -> blocks.addAll(finding(report, finding)));
        return blocks;
    }

    private static List<Block> finding(Report report, Finding finding) {
        Text heading = Text.of(finding.id() + "\u2002").then(report.badge(finding.grade()))
                .plain("\u2002" + finding.title());
        List<Block.Row> rows = new ArrayList<>();
        rows.add(report.labelled(Label.ROW_WHERE, where(report, finding)));
        add(rows, report, Label.ROW_EVIDENCE, plain(finding.evidence()));
        if (!finding.why().isEmpty()) {
            rows.add(report.labelled(Label.ROW_WHY, Text.of(finding.why())));
        }
        add(rows, report, Label.ROW_REMEDIES, numbered(finding.remedies()));
        add(rows, report, Label.ROW_PLACE, places(report, finding.at()));
        add(rows, report, Label.ROW_SOURCES, report.links().toSources(finding.sources()));
        if (!finding.foldedIn().isEmpty()) {
            rows.add(report.labelled(Label.ROW_FOLDED, Text.of(String.join(", ", finding.foldedIn()))));
        }
        if (finding.needsConfirmation()) {
            rows.add(report.labelled(Label.ROW_CONFIRM, report.say(Sentence.CONFIRM_TEXT)));
        }
        return List.of(new Block.Heading(2, heading, Links.finding(finding.id())),
                new Block.Paragraph(Text.of(finding.statement()), Block.Tone.BODY),
                new Block.Table(List.of(Block.Column.text("", LABELS), Block.Column.text("", TEXT)),
                        Block.Headings.SIDE, rows));
    }

    private static Text where(Report report, Finding finding) {
        Text place = finding.feature().map(id -> report.links().toStress(id, id))
                .orElseGet(() -> report.say(Label.WHOLE_PART));
        return place.plain(" \u00b7 " + report.factor(finding.factor()) + " \u00b7 ")
                .then(report.say(Label.RULE_WORD, Text.of(finding.rule())));
    }

    private static void add(List<Block.Row> rows, Report report, Label label, List<Text> paragraphs) {
        if (!paragraphs.isEmpty()) {
            rows.add(report.labelled(label, paragraphs));
        }
    }

    static List<Text> plain(List<String> sentences) {
        return sentences.stream().map(Text::of).toList();
    }

    private static List<Text> numbered(List<String> remedies) {
        List<Text> texts = new ArrayList<>();
        for (String remedy : remedies) {
            texts.add(Text.of(remedies.size() == 1 ? remedy : texts.size() + 1 + ". " + remedy));
        }
        return texts;
    }

    static List<Text> places(Report report, List<Location> places) {
        return places.stream().map(place -> report.links().toValue(place.path()).plain(", ")
                .then(report.say(Label.LINE, Text.of(Integer.toString(place.line()))))).toList();
    }
}
