package org.shortgrain.report.json;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.part.Disposition;
import org.shortgrain.part.Location;
import org.shortgrain.review.Amount;
import org.shortgrain.review.Assumption;
import org.shortgrain.review.Calculation;
import org.shortgrain.review.Contribution;
import org.shortgrain.review.DirectionReview;
import org.shortgrain.review.FactorJudgement;
import org.shortgrain.review.FeatureReview;
import org.shortgrain.review.Finding;
import org.shortgrain.review.MaterialLine;
import org.shortgrain.review.Question;
import org.shortgrain.review.Review;
import org.shortgrain.review.RouteLine;
import org.shortgrain.review.RuleUse;
import org.shortgrain.review.StatedLine;
import org.shortgrain.review.SustainedStress;
import org.shortgrain.review.Threshold;
import org.shortgrain.terms.Citation;

/** Writes a review key by key. What is written here is read by {@link ReviewReader} and described by the schema. */
final class ReviewWriter {

    /** Unit of a ratio. */
    static final String RATIO = "1";
    /** Between the parts of a citation that is written as one text. */
    static final String BAR = " | ";

    private final JsonOut out;

    ReviewWriter(JsonOut out) {
        this.out = out;
    }

    void writeHead(Review review) {
        out.text("format", ReviewJson.FORMAT).whole("version", ReviewJson.VERSION);
        out.object("tool", () -> out.text("version", review.tool().version()));
    }

    void writeRulebookAndInput(Review review) {
        out.object("rulebook", () -> out.text("edition", review.rulebook().edition())
                .text("sha256", review.rulebook().sha256()));
        out.object("input", () -> out.text("file", review.input().file()).text("sha256", review.input().sha256()));
    }

    /** What the content hash covers beside rulebook and input. */
    void writeContent(Review review) {
        out.object("part", () -> out.text("number", review.part().number())
                .text("revision", review.part().revision()).text("name", review.part().name()));
        out.text("purpose", review.purpose()).text("preparedBy", review.preparedBy()).text("date", review.date());
        out.text("verdict", review.verdict().name()).texts("because", review.because());
        out.objects("features", review.features(), this::feature);
        out.objects("findings", review.findings(), this::finding);
        out.objects("questions", review.questions(), this::question);
        out.objects("assumptions", review.assumptions(), this::assumption);
        out.objects("computations", review.computations(), this::calculation);
        out.objects("material", review.material(), this::materialLine);
        out.objects("route", review.route(), this::routeLine);
        out.objects("stated", review.stated(), this::statedLine);
        out.objects("rulesApplied", review.rulesApplied(), this::ruleUse);
        out.objects("rulesNotApplicable", review.rulesNotApplicable(), this::ruleUse);
        out.texts("readNotJudged", review.readNotJudged());
        out.objects("sources", review.sources(), source -> out.text("id", source.id()).text("title", source.title())
                .text("seen", source.seen()));
        out.texts("cautions", review.cautions());
        if (!review.inService().isEmpty()) {
            out.object("inService", () -> new InServiceWriter(out).write(review.inService()));
        }
        // left out where nobody has decided, as in every review before there were dispositions: their hashes still hold
        if (!review.dispositions().isEmpty()) {
            out.objects("dispositions", review.dispositions(), this::disposition);
        }
    }

    private void disposition(Disposition one) {
        out.text("finding", one.finding()).text("rule", one.rule()).text("feature", one.feature())
                .text("decision", one.decision().word()).text("reason", one.reason()).text("by", one.by())
                .text("decided", one.decided()).text("owner", one.owner()).text("due", one.due());
        one.closure().ifPresent(closure -> out.object("closure", () -> out.text("evidence", closure.evidence())
                .text("by", closure.by()).text("on", closure.on())));
    }

    private void feature(FeatureReview feature) {
        out.text("id", feature.id()).text("what", feature.what());
        out.object("factors", () -> judgements(feature)
                .forEach(one -> out.text(one.factor().word(), one.state().word())));
        out.object("reasons", () -> judgements(feature)
                .forEach(one -> out.texts(one.factor().word(), one.reasons())));
        feature.governing().ifPresent(this::direction);
        List<DirectionReview> others = feature.directions().stream().skip(1).toList();
        out.objects("otherDirections", others, this::direction);
    }

    private static Stream<FactorJudgement> judgements(FeatureReview feature) {
        return feature.factors().stream();
    }

    private void direction(DirectionReview direction) {
        SustainedStress sustained = direction.sustained();
        out.object("sustainedStress", () -> {
            out.text("direction", sustained.direction().name());
            amount(sustained.total(), "");
            out.objects("parts", sustained.parts(), part -> contribution(part, sustained.total().unit()));
        });
        direction.threshold().ifPresent(threshold -> out.object("threshold", () -> threshold(threshold)));
        direction.utilisation().ifPresent(ratio -> out.object("utilisation", () -> amount(ratio, RATIO)));
    }

    private void contribution(Contribution part, String unit) {
        out.text("source", part.source());
        amount(part.amount(), unit);
        out.text("calculation", part.calculation());
    }

    private void threshold(Threshold threshold) {
        amount(threshold.amount(), "");
        Citation source = threshold.source();
        out.number("factor", threshold.factor()).text("kind", threshold.kind())
                .text("source", source.id() + BAR + source.clause() + BAR + source.status().word());
    }

    private void amount(Amount amount, String understood) {
        if (!amount.unit().equals(understood)) {
            out.text("unit", amount.unit());
        }
        out.number("value", amount.value()).number("low", amount.low()).number("high", amount.high());
    }

    private void finding(Finding finding) {
        out.text("id", finding.id()).text("rule", finding.rule()).text("grade", finding.grade().word())
                .text("factor", finding.factor().word()).text("feature", finding.feature())
                .text("title", finding.title()).text("statement", finding.statement())
                .texts("evidence", finding.evidence()).text("why", finding.why()).texts("remedies", finding.remedies());
        citations("sources", finding.sources());
        out.objects("at", finding.at(), this::location);
        out.texts("foldedIn", finding.foldedIn()).truth("needsConfirmation", finding.needsConfirmation());
    }

    private void question(Question question) {
        out.text("id", question.id()).text("rule", question.rule()).text("role", word(question.role()))
                .text("factor", question.factor().word()).text("feature", question.feature())
                .text("text", question.text()).text("why", question.why()).text("standIn", question.standIn())
                .truth("decisive", question.decisive()).text("outlook", question.outlook());
        out.objects("answers", question.answers(), answer -> out.text("answer", answer.words())
                .text("verdict", answer.verdict().name()).text("effect", answer.effect())
                .patch("change", answer.change()));
        out.text("findOut", question.findOut()).object("at", () -> location(question.at()));
    }

    private void assumption(Assumption assumption) {
        out.text("id", assumption.id()).text("text", assumption.text()).text("effect", word(assumption.effect()));
        citations("sources", assumption.sources());
    }

    private void calculation(Calculation calculation) {
        Computed computed = calculation.computed();
        out.text("id", calculation.id()).text("feature", calculation.feature()).text("kind", computed.id())
                .text("title", computed.title()).text("unit", computed.unit().symbol());
        band(computed.value());
        out.text("equation", computed.equation());
        out.objects("inputs", computed.inputs(), this::input);
        out.objects("steps", computed.steps(), this::step);
        out.text("rangeBasis", computed.rangeBasis());
        out.object("validity", () -> out.truth("inside", computed.validity().inside())
                .text("statement", computed.validity().statement()));
        citations("sources", computed.sources());
        out.texts("notes", computed.notes());
        out.objects("profiles", computed.profiles(), profile -> out.text("name", profile.name())
                .text("xUnit", profile.xUnit().symbol()).text("yUnit", profile.yUnit().symbol())
                .numbers("x", profile.x()).numbers("y", profile.y()));
    }

    private void input(Computed.Input input) {
        out.text("symbol", input.symbol()).text("meaning", input.meaning()).text("unit", input.unit().symbol());
        band(input.value());
        out.text("origin", input.origin());
        input.source().ifPresent(source -> out.object("source", () -> citation(source)));
    }

    private void step(Computed.Step step) {
        out.text("symbol", step.symbol()).text("meaning", step.meaning()).text("unit", step.unit().symbol());
        band(step.value());
    }

    private void band(Band band) {
        out.number("value", band.value()).number("low", band.low()).number("high", band.high());
    }

    private void materialLine(MaterialLine line) {
        out.text("subject", line.subject()).text("word", line.word()).text("meaning", line.meaning())
                .truth("governs", line.governs()).object("source", () -> citation(line.source()));
    }

    private void routeLine(RouteLine line) {
        out.text("op", line.op()).text("entered", line.entered()).text("operation", line.operation())
                .texts("at", line.at()).text("effect", line.effect()).texts("breaches", line.breaches())
                .whole("proposed", line.proposed());
    }

    private void statedLine(StatedLine line) {
        out.text("path", line.path()).text("value", line.value()).text("si", line.si()).text("note", line.note());
    }

    private void ruleUse(RuleUse use) {
        out.text("rule", use.rule()).text("title", use.title()).text("reason", use.reason());
    }

    private void citations(String key, Collection<Citation> citations) {
        out.objects(key, citations, this::citation);
    }

    private void citation(Citation citation) {
        out.text("id", citation.id()).text("clause", citation.clause()).text("status", citation.status().word());
    }

    private void location(Location at) {
        out.text("path", at.path()).whole("line", at.line()).whole("column", at.column());
    }

    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

}
