package org.shortgrain.report.json;

import java.util.List;
import java.util.Locale;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.part.Disposition;
import org.shortgrain.part.Location;
import org.shortgrain.review.Amount;
import org.shortgrain.review.Answer;
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
import org.shortgrain.review.SourceLine;
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
        out.object("tool").text("version", review.tool().version()).end();
    }

    void writeRulebookAndInput(Review review) {
        out.object("rulebook").text("edition", review.rulebook().edition()).text("sha256", review.rulebook().sha256()).end();
        out.object("input").text("file", review.input().file()).text("sha256", review.input().sha256()).end();
    }

    /** What the content hash covers beside rulebook and input. */
    void writeContent(Review review) {
        out.object("part").text("number", review.part().number()).text("revision", review.part().revision())
                .text("name", review.part().name()).end();
        out.text("purpose", review.purpose()).text("preparedBy", review.preparedBy()).text("date", review.date());
        out.text("verdict", review.verdict().name()).texts("because", review.because());
        features(review.features());
        findings(review.findings());
        questions(review.questions());
        assumptions(review.assumptions());
        computations(review.computations());
        material(review.material());
        route(review.route());
        stated(review.stated());
        ruleUses("rulesApplied", review.rulesApplied());
        ruleUses("rulesNotApplicable", review.rulesNotApplicable());
        out.texts("readNotJudged", review.readNotJudged());
        sources(review.sources());
        out.texts("cautions", review.cautions());
        if (!review.inService().isEmpty()) {
            out.object("inService");
            new InServiceWriter(out).write(review.inService());
            out.end();
        }
        // left out where nobody has decided, as in every review before there were dispositions: their hashes still hold
        if (!review.dispositions().isEmpty()) {
            dispositions(review.dispositions());
        }
    }

    private void features(List<FeatureReview> features) {
        out.list("features");
        for (FeatureReview feature : features) {
            out.item().text("id", feature.id()).text("what", feature.what()).object("factors");
            for (FactorJudgement one : feature.factors()) {
                out.text(one.factor().word(), one.state().word());
            }
            out.end().object("reasons");
            for (FactorJudgement one : feature.factors()) {
                out.texts(one.factor().word(), one.reasons());
            }
            out.end();
            directions(feature.directions());
            out.end();
        }
        out.end();
    }

    /** The governing direction comes first and stands with the feature itself. */
    private void directions(List<DirectionReview> directions) {
        if (!directions.isEmpty()) {
            direction(directions.get(0));
        }
        out.list("otherDirections");
        for (int i = 1; i < directions.size(); i++) {
            out.item();
            direction(directions.get(i));
            out.end();
        }
        out.end();
    }

    private void direction(DirectionReview direction) {
        SustainedStress sustained = direction.sustained();
        out.object("sustainedStress").text("direction", sustained.direction().name());
        amount(sustained.total(), "");
        out.list("parts");
        for (Contribution part : sustained.parts()) {
            out.item().text("source", part.source());
            amount(part.amount(), sustained.total().unit());
            out.text("calculation", part.calculation()).end();
        }
        out.end().end();
        if (direction.threshold().isPresent()) {
            threshold(direction.threshold().get());
        }
        if (direction.utilisation().isPresent()) {
            out.object("utilisation");
            amount(direction.utilisation().get(), RATIO);
            out.end();
        }
    }

    private void threshold(Threshold threshold) {
        out.object("threshold");
        amount(threshold.amount(), "");
        Citation source = threshold.source();
        out.number("factor", threshold.factor()).text("kind", threshold.kind())
                .text("source", source.id() + BAR + source.clause() + BAR + source.status().word()).end();
    }

    private void amount(Amount amount, String understood) {
        if (!amount.unit().equals(understood)) {
            out.text("unit", amount.unit());
        }
        out.number("value", amount.value()).number("low", amount.low()).number("high", amount.high());
    }

    private void findings(List<Finding> findings) {
        out.list("findings");
        for (Finding finding : findings) {
            out.item().text("id", finding.id()).text("rule", finding.rule()).text("grade", finding.grade().word())
                    .text("factor", finding.factor().word()).text("feature", finding.feature())
                    .text("title", finding.title()).text("statement", finding.statement())
                    .texts("evidence", finding.evidence()).text("why", finding.why())
                    .texts("remedies", finding.remedies());
            citations(finding.sources());
            out.list("at");
            for (Location at : finding.at()) {
                location(out.item(), at);
                out.end();
            }
            out.end().texts("foldedIn", finding.foldedIn()).truth("needsConfirmation", finding.needsConfirmation()).end();
        }
        out.end();
    }

    private void questions(List<Question> questions) {
        out.list("questions");
        for (Question question : questions) {
            out.item().text("id", question.id()).text("rule", question.rule()).text("role", word(question.role()))
                    .text("factor", question.factor().word()).text("feature", question.feature())
                    .text("text", question.text()).text("why", question.why()).text("standIn", question.standIn())
                    .truth("decisive", question.decisive()).text("outlook", question.outlook()).list("answers");
            for (Answer answer : question.answers()) {
                out.item().text("answer", answer.words()).text("verdict", answer.verdict().name())
                        .text("effect", answer.effect()).patch("change", answer.change()).end();
            }
            out.end().text("findOut", question.findOut());
            location(out.object("at"), question.at());
            out.end().end();
        }
        out.end();
    }

    private void assumptions(List<Assumption> assumptions) {
        out.list("assumptions");
        for (Assumption assumption : assumptions) {
            out.item().text("id", assumption.id()).text("text", assumption.text())
                    .text("effect", word(assumption.effect()));
            citations(assumption.sources());
            out.end();
        }
        out.end();
    }

    private void computations(List<Calculation> calculations) {
        out.list("computations");
        for (Calculation calculation : calculations) {
            out.item().text("id", calculation.id()).text("feature", calculation.feature());
            computed(calculation.computed());
            out.end();
        }
        out.end();
    }

    private void computed(Computed computed) {
        out.text("kind", computed.id()).text("title", computed.title()).text("unit", computed.unit().symbol());
        band(computed.value());
        out.text("equation", computed.equation()).list("inputs");
        for (Computed.Input input : computed.inputs()) {
            out.item().text("symbol", input.symbol()).text("meaning", input.meaning())
                    .text("unit", input.unit().symbol());
            band(input.value());
            out.text("origin", input.origin());
            if (input.source().isPresent()) {
                citation(out.object("source"), input.source().get());
                out.end();
            }
            out.end();
        }
        out.end().list("steps");
        for (Computed.Step step : computed.steps()) {
            out.item().text("symbol", step.symbol()).text("meaning", step.meaning()).text("unit", step.unit().symbol());
            band(step.value());
            out.end();
        }
        out.end().text("rangeBasis", computed.rangeBasis());
        out.object("validity").truth("inside", computed.validity().inside())
                .text("statement", computed.validity().statement()).end();
        citations(computed.sources());
        out.texts("notes", computed.notes()).list("profiles");
        for (Computed.Profile profile : computed.profiles()) {
            out.item().text("name", profile.name()).text("xUnit", profile.xUnit().symbol())
                    .text("yUnit", profile.yUnit().symbol()).numbers("x", profile.x()).numbers("y", profile.y()).end();
        }
        out.end();
    }

    private void band(Band band) {
        out.number("value", band.value()).number("low", band.low()).number("high", band.high());
    }

    private void material(List<MaterialLine> lines) {
        out.list("material");
        for (MaterialLine line : lines) {
            out.item().text("subject", line.subject()).text("word", line.word()).text("meaning", line.meaning())
                    .truth("governs", line.governs());
            citation(out.object("source"), line.source());
            out.end().end();
        }
        out.end();
    }

    private void route(List<RouteLine> lines) {
        out.list("route");
        for (RouteLine line : lines) {
            out.item().text("op", line.op()).text("entered", line.entered()).text("operation", line.operation())
                    .texts("at", line.at()).text("effect", line.effect()).texts("breaches", line.breaches())
                    .whole("proposed", line.proposed()).end();
        }
        out.end();
    }

    private void stated(List<StatedLine> lines) {
        out.list("stated");
        for (StatedLine line : lines) {
            out.item().text("path", line.path()).text("value", line.value()).text("si", line.si())
                    .text("note", line.note()).end();
        }
        out.end();
    }

    private void ruleUses(String key, List<RuleUse> uses) {
        out.list(key);
        for (RuleUse use : uses) {
            out.item().text("rule", use.rule()).text("title", use.title()).text("reason", use.reason()).end();
        }
        out.end();
    }

    private void sources(List<SourceLine> sources) {
        out.list("sources");
        for (SourceLine source : sources) {
            out.item().text("id", source.id()).text("title", source.title()).text("seen", source.seen()).end();
        }
        out.end();
    }

    private void dispositions(List<Disposition> dispositions) {
        out.list("dispositions");
        for (Disposition one : dispositions) {
            out.item().text("finding", one.finding()).text("rule", one.rule()).text("feature", one.feature())
                    .text("decision", one.decision().word()).text("reason", one.reason()).text("by", one.by())
                    .text("decided", one.decided()).text("owner", one.owner()).text("due", one.due());
            if (one.closure().isPresent()) {
                Disposition.Closure closure = one.closure().get();
                out.object("closure").text("evidence", closure.evidence()).text("by", closure.by())
                        .text("on", closure.on()).end();
            }
            out.end();
        }
        out.end();
    }

    private void citations(List<Citation> citations) {
        out.list("sources");
        for (Citation citation : citations) {
            citation(out.item(), citation);
            out.end();
        }
        out.end();
    }

    private static void citation(JsonOut out, Citation citation) {
        out.text("id", citation.id()).text("clause", citation.clause()).text("status", citation.status().word());
    }

    private static void location(JsonOut out, Location at) {
        out.text("path", at.path()).whole("line", at.line()).whole("column", at.column());
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
