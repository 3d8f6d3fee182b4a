package org.shortgrain.report.json;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.part.Decision;
import org.shortgrain.part.Disposition;
import org.shortgrain.part.Location;
import org.shortgrain.part.reader.JsonPatch;
import org.shortgrain.review.Amount;
import org.shortgrain.review.Answer;
import org.shortgrain.review.Assumption;
import org.shortgrain.review.Calculation;
import org.shortgrain.review.Contribution;
import org.shortgrain.review.DirectionReview;
import org.shortgrain.review.Factor;
import org.shortgrain.review.FactorJudgement;
import org.shortgrain.review.FactorState;
import org.shortgrain.review.FeatureReview;
import org.shortgrain.review.Finding;
import org.shortgrain.review.Grade;
import org.shortgrain.review.InService;
import org.shortgrain.review.MaterialLine;
import org.shortgrain.review.Question;
import org.shortgrain.review.Review;
import org.shortgrain.review.RouteLine;
import org.shortgrain.review.RuleUse;
import org.shortgrain.review.SourceLine;
import org.shortgrain.review.StatedLine;
import org.shortgrain.review.SustainedStress;
import org.shortgrain.review.Threshold;
import org.shortgrain.review.Verdict;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.GrainDirection;
import org.shortgrain.terms.SourceStatus;
import tools.jackson.databind.JsonNode;

/** Reads what {@link ReviewWriter} writes, from JSON that the schema has passed. */
final class ReviewReader {

    Review review(JsonNode json) {
        JsonNode rulebook = json.required("rulebook");
        JsonNode input = json.required("input");
        JsonNode part = json.required("part");
        return new Review(new Review.Tool(text(json.required("tool"), "version")),
                new Review.RulebookId(text(rulebook, "edition"), text(rulebook, "sha256")),
                new Review.InputId(text(input, "file"), text(input, "sha256")), text(json, "contentHash"),
                new Review.PartId(text(part, "number"), text(part, "revision"), text(part, "name")),
                text(json, "purpose"), text(json, "preparedBy"), text(json, "date"),
                Verdict.valueOf(text(json, "verdict")), texts(json, "because"),
                list(json, "features", this::feature), list(json, "findings", this::finding),
                list(json, "questions", this::question), list(json, "assumptions", this::assumption),
                list(json, "computations", this::calculation), list(json, "material", this::materialLine),
                list(json, "route", this::routeLine), list(json, "stated", this::statedLine),
                list(json, "rulesApplied", this::ruleUse), list(json, "rulesNotApplicable", this::ruleUse),
                texts(json, "readNotJudged"), list(json, "sources", this::sourceLine), texts(json, "cautions"))
                .withInService(json.optional("inService").map(new InServiceReader()::service).orElse(InService.NONE))
                .withDispositions(json.optional("dispositions")
                        .map(there -> list(json, "dispositions", this::disposition)).orElse(List.of()));
    }

    private Disposition disposition(JsonNode json) {
        return new Disposition(text(json, "finding"), optionalText(json, "rule"), optionalText(json, "feature"),
                word(json, "decision", Decision.class), text(json, "reason"), text(json, "by"),
                optionalText(json, "decided"), optionalText(json, "owner"), optionalText(json, "due"),
                json.optional("closure").map(closure -> new Disposition.Closure(text(closure, "evidence"),
                        optionalText(closure, "by"), optionalText(closure, "on"))));
    }

    private FeatureReview feature(JsonNode json) {
        Stream<DirectionReview> governing = json.optional("sustainedStress").map(there -> direction(json)).stream();
        Stream<DirectionReview> others = list(json, "otherDirections", this::direction).stream();
        return new FeatureReview(text(json, "id"), text(json, "what"), judgement(json, Factor.MATERIAL),
                judgement(json, Factor.STRESS), judgement(json, Factor.ENVIRONMENT),
                Stream.concat(governing, others).toList());
    }

    private FactorJudgement judgement(JsonNode json, Factor factor) {
        return new FactorJudgement(factor, word(json.required("factors"), factor.word(), FactorState.class),
                texts(json.required("reasons"), factor.word()));
    }

    private DirectionReview direction(JsonNode json) {
        JsonNode stress = json.required("sustainedStress");
        Amount total = amount(stress, "");
        return new DirectionReview(
                new SustainedStress(GrainDirection.valueOf(text(stress, "direction")), total,
                        list(stress, "parts", part -> contribution(part, total.unit()))),
                json.optional("threshold").map(this::threshold),
                json.optional("utilisation").map(ratio -> amount(ratio, ReviewWriter.RATIO)));
    }

    private Contribution contribution(JsonNode json, String unit) {
        return new Contribution(text(json, "source"), amount(json, unit), optionalText(json, "calculation"));
    }

    private Threshold threshold(JsonNode json) {
        String source = text(json, "source");
        int first = source.indexOf(ReviewWriter.BAR);
        int last = source.lastIndexOf(ReviewWriter.BAR);
        int bar = ReviewWriter.BAR.length();
        return new Threshold(amount(json, ""), number(json, "factor"), text(json, "kind"),
                new Citation(source.substring(0, first), source.substring(first + bar, Math.max(first + bar, last)),
                        SourceStatus.of(source.substring(last + bar))));
    }

    private static Amount amount(JsonNode json, String understood) {
        return new Amount(optionalText(json, "unit").orElse(understood), number(json, "value"), number(json, "low"),
                number(json, "high"));
    }

    private Finding finding(JsonNode json) {
        return new Finding(text(json, "id"), text(json, "rule"), word(json, "grade", Grade.class),
                word(json, "factor", Factor.class), optionalText(json, "feature"), text(json, "title"),
                text(json, "statement"), texts(json, "evidence"), text(json, "why"), texts(json, "remedies"),
                citations(json, "sources"), list(json, "at", this::location), texts(json, "foldedIn"),
                truth(json, "needsConfirmation"));
    }

    private Question question(JsonNode json) {
        return new Question(text(json, "id"), optionalText(json, "rule"), word(json, "role", Question.Role.class),
                word(json, "factor", Factor.class), optionalText(json, "feature"), text(json, "text"),
                text(json, "why"), optionalText(json, "standIn"), truth(json, "decisive"), list(json, "answers", this::answer),
                text(json, "findOut"),
                location(json.required("at")));
    }

    private Answer answer(JsonNode json) {
        return new Answer(text(json, "answer"), Verdict.valueOf(text(json, "verdict")), text(json, "effect"),
                JsonPatch.parse(json.required("change").toString()));
    }

    private Assumption assumption(JsonNode json) {
        return new Assumption(text(json, "id"), text(json, "text"), word(json, "effect", Assumption.Effect.class),
                citations(json, "sources"));
    }

    private Calculation calculation(JsonNode json) {
        JsonNode validity = json.required("validity");
        return new Calculation(text(json, "id"), optionalText(json, "feature"),
                new Computed(text(json, "kind"), text(json, "title"), unit(json, "unit"), band(json),
                        text(json, "equation"), list(json, "inputs", this::input), list(json, "steps", this::step),
                        text(json, "rangeBasis"),
                        new Computed.Validity(truth(validity, "inside"), text(validity, "statement")),
                        citations(json, "sources"), texts(json, "notes"), list(json, "profiles", this::profile)));
    }

    private Computed.Input input(JsonNode json) {
        return new Computed.Input(text(json, "symbol"), text(json, "meaning"), unit(json, "unit"), band(json),
                text(json, "origin"), json.optional("source").map(this::citation));
    }

    private Computed.Step step(JsonNode json) {
        return new Computed.Step(text(json, "symbol"), text(json, "meaning"), unit(json, "unit"), band(json));
    }

    private Computed.Profile profile(JsonNode json) {
        return new Computed.Profile(text(json, "name"), unit(json, "xUnit"), unit(json, "yUnit"),
                list(json, "x", JsonNode::doubleValue), list(json, "y", JsonNode::doubleValue));
    }

    private static Band band(JsonNode json) {
        return new Band(number(json, "value"), number(json, "low"), number(json, "high"));
    }

    private MaterialLine materialLine(JsonNode json) {
        return new MaterialLine(text(json, "subject"), text(json, "word"), text(json, "meaning"),
                truth(json, "governs"), citation(json.required("source")));
    }

    private RouteLine routeLine(JsonNode json) {
        return new RouteLine(text(json, "op"), text(json, "entered"), text(json, "operation"), texts(json, "at"),
                text(json, "effect"), texts(json, "breaches"), json.required("proposed").intValue());
    }

    private StatedLine statedLine(JsonNode json) {
        return new StatedLine(text(json, "path"), text(json, "value"), text(json, "si"), text(json, "note"));
    }

    private RuleUse ruleUse(JsonNode json) {
        return new RuleUse(text(json, "rule"), text(json, "title"), text(json, "reason"));
    }

    private SourceLine sourceLine(JsonNode json) {
        return new SourceLine(text(json, "id"), text(json, "title"), text(json, "seen"));
    }

    private List<Citation> citations(JsonNode json, String key) {
        return list(json, key, this::citation);
    }

    private Citation citation(JsonNode json) {
        return new Citation(text(json, "id"), text(json, "clause"), SourceStatus.of(text(json, "status")));
    }

    private Location location(JsonNode json) {
        return new Location(text(json, "path"), json.required("line").intValue(), json.required("column").intValue());
    }

    private static SiUnit unit(JsonNode json, String key) {
        String symbol = text(json, key);
        return Arrays.stream(SiUnit.values()).filter(unit -> unit.symbol().equals(symbol)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("'" + symbol + "' is no unit of a computed number"));
    }

    private static <E extends Enum<E>> E word(JsonNode json, String key, Class<E> type) {
        return Enum.valueOf(type, text(json, key).toUpperCase(Locale.ROOT));
    }

    private static String text(JsonNode json, String key) {
        return json.required(key).stringValue();
    }

    private static Optional<String> optionalText(JsonNode json, String key) {
        return json.optional(key).map(JsonNode::stringValue);
    }

    private static List<String> texts(JsonNode json, String key) {
        return list(json, key, JsonNode::stringValue);
    }

    private static double number(JsonNode json, String key) {
        return json.required(key).doubleValue();
    }

    private static boolean truth(JsonNode json, String key) {
        return json.required(key).booleanValue();
    }

    private static <T> List<T> list(JsonNode json, String key, Function<JsonNode, T> read) {
        return json.required(key).values().stream().map(read).toList();
    }
}
