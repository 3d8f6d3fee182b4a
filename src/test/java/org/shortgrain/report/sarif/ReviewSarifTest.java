package org.shortgrain.report.sarif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shortgrain.part.Location;
import org.shortgrain.report.SampleReview;
import org.shortgrain.review.Finding;
import org.shortgrain.review.Review;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ReviewSarifTest {

    private static JsonNode run(Review review) {
        return JsonMapper.shared().readTree(ReviewSarif.bytes(review)).at("/runs/0");
    }

    private static List<String> each(JsonNode results, String pointer) {
        return results.values().stream().map(result -> result.at(pointer).asString("")).toList();
    }

    @ParameterizedTest
    @CsvSource({"/results/0/ruleId, STRESS-03", "/results/0/kind, fail", "/results/0/level, error",
        "/results/1/level, warning", "/results/2/level, note", "/results/3/kind, open", "/results/3/level, none",
        "/results/4/ruleId, MINIMUM-SET", "/results/4/kind, open",
        "/results/0/locations/0/physicalLocation/region/startLine, 31",
        "/results/0/locations/0/physicalLocation/artifactLocation/uri, hinge.yaml",
        "/results/0/locations/0/logicalLocations/0/name, GROOVE",
        "/results/0/locations/0/logicalLocations/0/fullyQualifiedName, /features/0",
        "/tool/driver/name, Shortgrain", "/tool/driver/version, 0.1.0", "/tool/extensions/0/version, 2026.1",
        "/artifacts/0/hashes/sha-256, 0123456789abcdef0123456789abcdef0123456789abcdef0123456789abcdef",
        "/properties/verdict, OBJECTION"})
    void findingsAndQuestionsStandWhereSarifHasThem(String pointer, String value) {
        assertEquals(value, run(SampleReview.full()).at(pointer).asString());
    }

    /** Clause 3.27.10: if kind is not fail, level is none. */
    @Test
    void onlyAFailureHasALevel() {
        run(SampleReview.full()).at("/results").values().forEach(result ->
                assertEquals(!result.path("kind").asString().equals("fail"), result.path("level").asString().equals("none")));
    }

    /** Clause 3.52.4 and 3.52.7: index and toolComponent lead to the descriptor with the rule's id. */
    @Test
    void everyResultLeadsToItsRule() {
        JsonNode run = run(SampleReview.full());
        for (JsonNode result : run.at("/results").values()) {
            JsonNode rule = result.path("rule");
            String component = rule.has("toolComponent")
                    ? "/tool/extensions/" + rule.at("/toolComponent/index").asInt() : "/tool/driver";
            assertEquals(result.path("ruleId").asString(),
                    run.at(component + "/rules/" + rule.path("index").asInt() + "/id").asString());
        }
    }

    @Test
    void aPlaceThatStandsInNoLineHasNoRegion() {
        JsonNode location = run(SampleReview.full()).at("/results/4/locations/0");
        assertEquals("/planning", location.at("/logicalLocations/0/fullyQualifiedName").asString());
        assertTrue(location.at("/physicalLocation/region").isMissingNode());
    }

    private static List<String> fingerprints(Review review) {
        return each(run(review).at("/results"), "/fingerprints/shortgrainFinding~1v1");
    }

    private static Review with(Review review, List<Finding> findings) {
        return new Review(review.tool(), review.rulebook(), review.input(), review.contentHash(), review.part(),
                review.purpose(), review.preparedBy(), review.date(), review.verdict(), review.because(),
                review.features(), findings, List.of(), review.assumptions(), review.computations(),
                review.material(), review.route(), review.stated(), review.rulesApplied(), review.rulesNotApplicable(),
                review.readNotJudged(), review.sources(), review.cautions());
    }

    private static Finding moved(Finding finding) {
        return new Finding("F-09", finding.rule(), finding.grade(), finding.factor(), finding.feature(),
                finding.title(), "The groove carries 97 MPa.", finding.evidence(), finding.why(), finding.remedies(),
                finding.sources(), List.of(new Location("/features/3", 77, 9)), finding.foldedIn(),
                finding.needsConfirmation());
    }

    @Test
    void aFindingIsKnownAgainWhenItsNumbersAndLinesMove() {
        Review review = SampleReview.full();
        Finding finding = review.findings().get(0);
        assertEquals(fingerprints(with(review, List.of(finding))), fingerprints(with(review, List.of(moved(finding)))));
        List<String> all = fingerprints(review);
        assertEquals(all.size(), all.stream().distinct().count());
    }

    @Test
    void twoFindingsOfOneRuleAtOnePlaceAreToldApart() {
        Review review = SampleReview.full();
        Finding finding = review.findings().get(0);
        List<String> both = fingerprints(with(review, List.of(finding, moved(finding))));
        assertNotEquals(both.get(0), both.get(1));
    }

    @Test
    void aFileNameBecomesAUri() {
        Review review = SampleReview.full();
        Review named = new Review(review.tool(), review.rulebook(), new Review.InputId("my part (é).yaml", "0".repeat(64)),
                review.contentHash(), review.part(), review.purpose(), review.preparedBy(), review.date(),
                review.verdict(), review.because(), review.features(), review.findings(), review.questions(),
                review.assumptions(), review.computations(), review.material(), review.route(), review.stated(),
                review.rulesApplied(), review.rulesNotApplicable(), review.readNotJudged(), review.sources(),
                review.cautions());
        assertEquals("my%20part%20%28%C3%A9%29.yaml", run(named).at("/artifacts/0/location/uri").asString());
    }

    @Test
    void theRulesOfTheRulebookAreDescribedOnceEach() {
        List<String> ids = each(run(SampleReview.full()).at("/tool/extensions/0/rules"), "/id");
        assertEquals(List.of("STRESS-03", "ORDER-04", "DOC-01", "MAT-07", "TI-01", "WATER-05"), ids);
        assertEquals(0, Stream.of(run(SampleReview.bare()).at("/results")).mapToInt(JsonNode::size).sum());
    }
}
