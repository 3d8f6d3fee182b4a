package org.shortgrain.report.json;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.shortgrain.review.Amount;
import org.shortgrain.review.CrackFound;
import org.shortgrain.review.Factor;
import org.shortgrain.review.InService;
import org.shortgrain.review.InspectionSchedule;
import org.shortgrain.review.OwnTests;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.SourceStatus;
import tools.jackson.databind.JsonNode;

/** Reads what {@link InServiceWriter} writes. */
final class InServiceReader {

    InService service(JsonNode json) {
        return new InService(list(json, "cracks", this::crack), list(json, "schedules", this::schedule),
                list(json, "ownTests", this::tests));
    }

    private CrackFound crack(JsonNode json) {
        return new CrackFound(text(json, "id"), text(json, "feature"), text(json, "what"),
                list(json, "factors", one -> new CrackFound.Evidence(
                        Factor.valueOf(text(one, "factor").toUpperCase(Locale.ROOT)), texts(one, "speaksFor"),
                        texts(one, "speaksAgainst"))),
                list(json, "contributions", one -> new CrackFound.Share(text(one, "source"),
                        amount(one.required("amount")), one.required("share").doubleValue())),
                list(json, "alternatives", one -> new CrackFound.Alternative(text(one, "name"), texts(one, "speaksFor"),
                        texts(one, "speaksAgainst"), text(one, "decides"), source(one))),
                list(json, "onPart", this::check), list(json, "onSisters", this::check));
    }

    private CrackFound.Check check(JsonNode json) {
        return new CrackFound.Check(text(json, "action"), source(json));
    }

    private InspectionSchedule schedule(JsonNode json) {
        String outcome = text(json, "outcome");
        return new InspectionSchedule(text(json, "feature"), text(json, "lookedFor"),
                Arrays.stream(InspectionSchedule.Outcome.values()).filter(one -> one.words().equals(outcome)).findFirst()
                        .orElseThrow(() -> new IllegalArgumentException("'" + outcome + "' is no outcome of a schedule")),
                json.optional("first").map(InServiceReader::amount), json.optional("repeat").map(InServiceReader::amount),
                texts(json, "because"), list(json, "dates", one -> new InspectionSchedule.Due(text(one, "when"),
                        text(one, "what"))),
                texts(json, "declared"), texts(json, "cautions"), texts(json, "calculations"));
    }

    private OwnTests tests(JsonNode json) {
        return new OwnTests(text(json, "feature"), text(json, "scope"),
                list(json, "points", one -> new OwnTests.Point(one.required("stress").doubleValue(),
                        one.required("days").doubleValue(), one.required("cracked").booleanValue())),
                json.optional("threshold").map(InServiceReader::amount), json.required("identified").booleanValue(),
                json.required("counted").booleanValue(), texts(json, "because"),
                Optional.of(json.path("calculation").asString("")).filter(one -> !one.isEmpty()));
    }

    private static Amount amount(JsonNode json) {
        return new Amount(text(json, "unit"), json.required("value").doubleValue(), json.required("low").doubleValue(),
                json.required("high").doubleValue());
    }

    private static Citation source(JsonNode json) {
        JsonNode source = json.required("source");
        return new Citation(text(source, "id"), text(source, "clause"), SourceStatus.of(text(source, "status")));
    }

    private static String text(JsonNode json, String key) {
        return json.required(key).stringValue();
    }

    private static List<String> texts(JsonNode json, String key) {
        return list(json, key, JsonNode::stringValue);
    }

    private static <T> List<T> list(JsonNode json, String key, Function<JsonNode, T> read) {
        return json.required(key).values().stream().map(read).toList();
    }
}
