package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.shortgrain.report.pdf.tagged.Block;
import org.shortgrain.report.pdf.tagged.Inline;
import org.shortgrain.report.pdf.tagged.Text;
import org.shortgrain.review.Assumption;
import org.shortgrain.review.FeatureReview;
import org.shortgrain.review.Finding;
import org.shortgrain.review.Review;

/** Cautions, scope, inputs and assumptions: what must be known before a finding is used. */
final class Preliminaries {

    private Preliminaries() {
    }

    static List<Block> blocks(Report report) {
        List<Block> blocks = new ArrayList<>();
        blocks.addAll(cautions(report));
        blocks.addAll(scope(report));
        blocks.addAll(inputs(report));
        blocks.addAll(assumptions(report));
        return blocks;
    }

    private static List<Block> cautions(Report report) {
        List<Text> cautions = new ArrayList<>();
        for (String caution : report.review().cautions()) {
            if (!isWarning(report, caution)) {
                cautions.add(Text.of(caution));
            }
        }
        return List.of(report.heading(Section.CAUTIONS), report.paragraph(Sentence.CAUTIONS_TEXT),
                new Block.Items(true, cautions));
    }

    /** {@return the warnings among the cautions, which stand on page one as well} */
    static List<Block> warnings(Report report) {
        String label = report.words(Label.WARNING_LABEL);
        List<Text> warnings = new ArrayList<>();
        for (String caution : report.review().cautions()) {
            if (isWarning(report, caution)) {
                warnings.add(Text.of(caution.substring(label.length()).replaceFirst("^[.:]? *", "")));
            }
        }
        return warnings.isEmpty() ? List.of() : List.of(new Block.Callout(label, Inline.Frame.SOLID, warnings));
    }

    private static boolean isWarning(Report report, String caution) {
        return caution.startsWith(report.words(Label.WARNING_LABEL));
    }

    private static List<Block> scope(Report report) {
        Review review = report.review();
        List<String> places = new ArrayList<>();
        for (FeatureReview feature : review.features()) {
            places.add(feature.id());
        }
        Set<String> broken = new HashSet<>();
        for (Finding finding : review.findings()) {
            broken.add(finding.rule());
        }
        int rules = review.rulesApplied().size() + review.rulesNotApplicable().size() + broken.size();
        List<Block> blocks = new ArrayList<>();
        blocks.add(report.heading(Section.SCOPE));
        blocks.add(report.paragraph(Sentence.SCOPE_TEXT, Text.of(FrontPage.spoken(review.purpose())),
                places.isEmpty() ? Text.of(report.words(Label.WHOLE_PART))
                        : report.say(Sentence.SCOPE_PLACES, Text.of(String.join(", ", places))),
                Text.of(review.part().number()), Text.of(Integer.toString(rules)),
                Text.of(review.rulebook().edition())));
        blocks.add(report.paragraph(Sentence.SCOPE_NOT));
        blocks.add(report.paragraph(Sentence.SCOPE_FORMS));
        if (!review.readNotJudged().isEmpty()) {
            List<Text> keys = new ArrayList<>();
            for (String key : review.readNotJudged()) {
                keys.add(Text.EMPTY.mono(key));
            }
            blocks.add(report.paragraph(Sentence.SCOPE_UNJUDGED, Links.joined(keys)));
        }
        return blocks;
    }

    private static List<Block> inputs(Report report) {
        Review review = report.review();
        List<Block.Row> rows = new ArrayList<>();
        rows.add(Block.Row.of(Block.Cell.of(review.input().file()),
                Block.Cell.of(report.words(Sentence.INPUTS_DESCRIPTION)),
                Block.Cell.of(Text.EMPTY.mono(review.input().sha256()))));
        return List.of(report.heading(Section.INPUTS), report.paragraph(Sentence.INPUTS_TEXT),
                report.paragraph(Sentence.INPUTS_RULEBOOK, Text.of(review.rulebook().edition()),
                        Text.of(review.rulebook().sha256()), Text.of(review.tool().version()),
                        report.link(Section.ANNEX_VALUES)),
                new Block.Table(List.of(report.column(Label.COLUMN_FILE, 19),
                        report.column(Label.COLUMN_DESCRIPTION, 14), report.column(Label.COLUMN_HASH, 67)),
                        Block.Headings.TOP_AND_SIDE, rows));
    }

    private static List<Block> assumptions(Report report) {
        List<Assumption> assumptions = report.review().assumptions();
        if (assumptions.isEmpty()) {
            return List.of(report.heading(Section.ASSUMPTIONS), report.paragraph(Sentence.ASSUMPTIONS_NONE));
        }
        List<Block.Row> rows = new ArrayList<>();
        for (Assumption assumption : assumptions) {
            rows.add(Block.Row.of(Block.Cell.of(assumption.id()), Block.Cell.of(assumption.text()),
                    Block.Cell.of(report.words(effect(assumption.effect()))),
                    Block.Cell.of(Links.joined(report.links().toSources(assumption.sources()), "; "))));
        }
        return List.of(report.heading(Section.ASSUMPTIONS), report.paragraph(Sentence.ASSUMPTIONS_TEXT),
                new Block.Table(List.of(report.column(Label.COLUMN_NUMBER, 9),
                        report.column(Label.COLUMN_ASSUMPTION, 50), report.column(Label.COLUMN_EFFECT, 15),
                        report.column(Label.COLUMN_SOURCES, 26)), Block.Headings.TOP_AND_SIDE, rows).dense());
    }

    private static Label effect(Assumption.Effect effect) {
        return switch (effect) {
            case CONSERVATIVE -> Label.EFFECT_CONSERVATIVE;
            case NEUTRAL -> Label.EFFECT_NEUTRAL;
            case UNKNOWN -> Label.EFFECT_UNKNOWN;
        };
    }
}
