package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.List;
import org.shortgrain.report.pdf.tagged.Block;
import org.shortgrain.report.pdf.tagged.Text;
import org.shortgrain.review.Contribution;
import org.shortgrain.review.DirectionReview;
import org.shortgrain.review.FactorJudgement;
import org.shortgrain.review.FeatureReview;
import org.shortgrain.review.MaterialLine;
import org.shortgrain.review.Review;
import org.shortgrain.review.RouteLine;
import org.shortgrain.review.StatedLine;

/**
 * The part in the order of the trade's stress-corrosion evaluation form, which every checker of the trade has filled
 * in, followed by what the tables say of the material and why each factor counts as it does.
 */
final class PartPages {

    private static final String WELD = "weld";

    private PartPages() {
    }

    static List<Block> blocks(Report report, ReviewFigures figures) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(report.heading(Section.PART));
        blocks.add(report.paragraph(Sentence.PART_TEXT, report.link(Section.ANNEX_VALUES)));
        blocks.add(form(report));
        blocks.addAll(figures.in(Section.PART));
        blocks.addAll(factors(report));
        blocks.addAll(material(report));
        return blocks;
    }

    private static Block form(Report report) {
        List<Block.Row> rows = new ArrayList<>();
        rows.add(report.labelled(Sentence.FORM_PART_NUMBER, declared(report, "/part/number")));
        rows.add(report.labelled(Sentence.FORM_NAME, declared(report, "/part/name")));
        rows.add(report.labelled(Sentence.FORM_NEXT_ASSEMBLY, declared(report, "/part/next_assembly")));
        rows.add(report.labelled(Sentence.FORM_MANUFACTURER, declared(report, "/part/manufacturer")));
        rows.add(report.labelled(Sentence.FORM_MATERIAL, group(report, "/material")));
        rows.add(report.labelled(Sentence.FORM_HEAT_TREATMENT, declared(report, "/material/temper")));
        rows.add(report.labelled(Sentence.FORM_SIZE, group(report, "/form")));
        rows.add(report.labelled(Sentence.FORM_STRESS, stresses(report)));
        rows.add(report.labelled(Sentence.FORM_SPECIAL,
                report.say(Sentence.FORM_SPECIAL_TEXT, report.link(Section.ROUTE))));
        rows.add(report.labelled(Sentence.FORM_WELDMENTS, welds(report)));
        rows.add(report.labelled(Sentence.FORM_ENVIRONMENT, group(report, "/environment")));
        rows.add(report.labelled(Sentence.FORM_FINISH, group(report, "/surface")));
        rows.add(report.labelled(Sentence.FORM_FUNCTION, declared(report, "/part/function")));
        rows.add(report.labelled(Sentence.FORM_EFFECT, declared(report, "/part/effect_of_failure")));
        rows.add(report.labelled(Sentence.FORM_EVALUATION, Text.EMPTY.bold(report.review().verdict().words())));
        rows.add(report.labelled(Sentence.FORM_REMARKS, declared(report, "/review/remarks")));
        return new Block.Table(List.of(report.column(Label.COLUMN_ITEM, 24), report.column(Label.COLUMN_DECLARED, 76)),
                Block.Headings.TOP_AND_SIDE, rows).dense();
    }

    private static Text declared(Report report, String path) {
        return Text.of(report.declared(path));
    }

    /** A group of the description in one paragraph: key and value, in the order entered. */
    private static Text group(Report report, String path) {
        List<StatedLine> lines = report.stated().under(path);
        if (lines.isEmpty()) {
            return Text.of(report.words(Label.NOT_DECLARED));
        }
        Text text = Text.EMPTY;
        for (StatedLine line : lines) {
            String key = line.path().equals(path) ? "" : line.path().substring(path.length() + 1).replace('/', ' ');
            text = text.parts().isEmpty() ? text : text.plain("; ");
            text = text.plain(FrontPage.spoken(key)).plain(key.isEmpty() ? "" : " ").bold(line.value());
        }
        return text;
    }

    private static List<Text> stresses(Report report) {
        List<Text> texts = new ArrayList<>();
        for (FeatureReview feature : report.review().features()) {
            for (DirectionReview direction : feature.directions()) {
                List<String> parts = new ArrayList<>();
                for (Contribution part : direction.sustained().parts()) {
                    parts.add(part.source() + " " + report.numbers().value(part.amount()));
                }
                texts.add(report.links().toStress(feature.id() + ", " + direction.sustained().direction(), feature.id())
                        .plain(": ").plain(String.join("; ", parts)));
            }
        }
        return texts.isEmpty() ? List.of(Text.of(report.words(Sentence.STRESS_NONE))) : texts;
    }

    private static Text welds(Report report) {
        Review review = report.review();
        List<String> welds = new ArrayList<>();
        for (RouteLine line : review.route()) {
            if (line.operation().contains(WELD) || line.entered().contains(WELD)) {
                welds.add(line.entered());
            }
        }
        for (FeatureReview feature : review.features()) {
            if (feature.what().contains(WELD)) {
                welds.add(feature.id());
            }
        }
        return welds.isEmpty() ? report.say(Sentence.FORM_WELDMENTS_NONE) : Text.of(String.join("; ", welds));
    }

    private static List<Block> factors(Report report) {
        List<Block> blocks = new ArrayList<>();
        if (report.review().features().isEmpty()) {
            return blocks;
        }
        blocks.add(new Block.Heading(2, report.say(Sentence.PART_FACTORS), "factors"));
        List<Block.Row> rows = new ArrayList<>();
        for (FeatureReview feature : report.review().features()) {
            for (FactorJudgement judgement : feature.factors()) {
                rows.add(Block.Row.of(Block.Cell.of(feature.id()),
                        Block.Cell.of(report.factor(judgement.factor())),
                        Block.Cell.of(report.state(judgement.state())),
                        Block.Cell.of(String.join(" \u00b7 ", judgement.reasons()))));
            }
        }
        blocks.add(new Block.Table(List.of(report.column(Label.COLUMN_FEATURE, 14),
                report.column(Label.COLUMN_FACTOR, 11), report.column(Label.COLUMN_STATE, 10),
                report.column(Label.COLUMN_REASONS, 65)), Block.Headings.TOP_AND_SIDE, rows).dense());
        return blocks;
    }

    private static List<Block> material(Report report) {
        List<MaterialLine> lines = report.review().material();
        if (lines.isEmpty()) {
            return List.of();
        }
        List<Block.Row> rows = new ArrayList<>();
        for (MaterialLine line : lines) {
            Text word = line.governs() ? Text.EMPTY.bold(line.word()) : Text.of(line.word());
            rows.add(Block.Row.of(Block.Cell.of(line.subject()), Block.Cell.of(word.plain(": " + line.meaning())),
                    Block.Cell.of(report.links().toSource(line.source()))));
        }
        return List.of(new Block.Heading(2, report.say(Sentence.PART_MATERIAL), "material"),
                new Block.Table(List.of(report.column(Label.COLUMN_SUBJECT, 23), report.column(Label.COLUMN_WORD, 50),
                        report.column(Label.COLUMN_SOURCE, 27)),
                        Block.Headings.TOP_AND_SIDE, rows).dense());
    }
}
