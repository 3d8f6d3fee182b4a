package org.shortgrain.report.json;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.report.SampleReview;
import org.shortgrain.review.Review;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

class ReviewJsonTest {

    static Stream<Review> reviews() {
        return Stream.of(SampleReview.full(), SampleReview.bare());
    }

    private static JsonNode json(Review review) {
        return JsonMapper.shared().readTree(ReviewJson.bytes(review));
    }

    @ParameterizedTest
    @MethodSource("reviews")
    void aReviewIsReadBackEqualToWhatWasWritten(Review review) throws UnreadableReviewException {
        assertEquals(review, ReviewJson.read(ReviewJson.bytes(review)));
    }

    @ParameterizedTest
    @MethodSource("reviews")
    void whatIsWrittenIsOfThePublishedForm(Review review) {
        assertEquals(List.of(), ReviewSchema.faults(json(review)));
    }

    @Test
    void thePublishedFormRefusesAnotherWordAMissingKeyAndAnUnknownKey() {
        for (String verdict : List.of("APPROVED", "objection")) {
            ObjectNode changed = (ObjectNode) json(SampleReview.full());
            assertEquals(1, ReviewSchema.faults(changed.put("verdict", verdict)).size());
        }
        ObjectNode less = (ObjectNode) json(SampleReview.full());
        less.remove("cautions");
        assertEquals(1, ReviewSchema.faults(less).size());
        ObjectNode more = (ObjectNode) json(SampleReview.full());
        assertEquals(1, ReviewSchema.faults(more.put("severity", "high")).size());
    }

    @Test
    void thePublishedFormIsItselfASchema() {
        assertEquals(List.of(), SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7)
                .getSchema(com.networknt.schema.SchemaLocation.of("http://json-schema.org/draft-07/schema#"))
                .validate(JsonMapper.shared().readTree(ReviewJson.schema())));
    }

    @ParameterizedTest
    @CsvSource({"/format, shortgrain-review", "/verdict, OBJECTION", "/features/0/factors/material, present",
        "/features/0/factors/environment, unknown", "/features/0/sustainedStress/direction, ST",
        "/features/0/sustainedStress/unit, MPa", "/features/0/sustainedStress/value, 96",
        "/features/0/sustainedStress/parts/0/source, quench residual after machining",
        "/features/0/threshold/low, 48", "'/features/0/threshold/source', 'handbook | 3.1.2, table 4 | read'",
        "/features/0/utilisation/high, 2.70833", "/findings/0/rule, STRESS-03", "/findings/0/grade, objection",
        "/findings/0/sources/1/status, common practice", "/findings/0/at/0/path, /features/0",
        "/findings/0/at/0/line, 31", "/computations/0/unit, Pa", "/computations/0/inputs/0/value, 71700000000",
        "/computations/0/steps/0/value, 1.2E-7"})
    void theNamesOfTheFormAreFixed(String pointer, String value) {
        assertEquals(value, json(SampleReview.full()).at(pointer).toString().replace("\"", ""));
    }

    @Test
    void theSameReviewGivesTheSameBytesInEveryLocale() {
        byte[] bytes = ReviewJson.bytes(SampleReview.full());
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            assertArrayEquals(bytes, ReviewJson.bytes(SampleReview.full()));
        } finally {
            Locale.setDefault(before);
        }
        String text = new String(bytes, StandardCharsets.UTF_8);
        assertTrue(text.endsWith("}\n") && !text.contains("\r"), "line feeds only");
        assertTrue(text.contains("\u03c3 over threshold"), "text stays readable");
        assertTrue(text.contains("\"y\": [-120000000, 0, 70250000]"), text);
    }

    @Test
    void whatIsReadAndWrittenAgainKeepsItsBytes() throws UnreadableReviewException {
        byte[] bytes = ReviewJson.bytes(ReviewJson.sealed(SampleReview.full()));
        assertArrayEquals(bytes, ReviewJson.bytes(ReviewJson.read(bytes)));
    }

    @Test
    void theContentHashCoversWhatIsSaidAndNotWhoSaysIt() {
        Review review = ReviewJson.sealed(SampleReview.full());
        assertTrue(review.contentHash().matches("[0-9a-f]{64}"));
        assertEquals(review, ReviewJson.sealed(review));
        assertEquals(review.contentHash(), ReviewJson.contentHash(with(review, "0.2.0", review.date())));
        assertNotEquals(review.contentHash(), ReviewJson.contentHash(with(review, "0.1.0", "2026-01-16")));
        assertNotEquals(review.contentHash(), ReviewJson.contentHash(SampleReview.bare()));
    }

    @Test
    void aReviewSealedWithItsBytesIsWrittenAsByItself() {
        for (Review review : List.of(SampleReview.full(), SampleReview.bare())) {
            SealedReview sealed = SealedReview.of(review);
            assertEquals(ReviewJson.sealed(review), sealed.review());
            assertEquals(new String(ReviewJson.bytes(sealed.review()), StandardCharsets.UTF_8),
                    new String(sealed.json(), StandardCharsets.UTF_8));
        }
    }

    private static Review with(Review review, String tool, String date) {
        return new Review(new Review.Tool(tool), review.rulebook(), review.input(), review.contentHash(), review.part(),
                review.purpose(), review.preparedBy(), date, review.verdict(), review.because(), review.features(),
                review.findings(), review.questions(), review.assumptions(), review.computations(), review.material(),
                review.route(), review.stated(), review.rulesApplied(), review.rulesNotApplicable(),
                review.readNotJudged(), review.sources(), review.cautions(), review.inService(), review.dispositions());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '!', textBlock = """
            {                                                   ! this is no JSON
            []                                                  ! this is no shortgrain-review
            {"format": "other"}                                 ! this is no shortgrain-review but other
            {"format": "shortgrain-review", "version": 2}       ! the review is of version 2 of its form; this tool reads version 1
            {"format": "shortgrain-review", "version": 1}       ! the review is not of its form
            """)
    void aFileThatHoldsNoReviewIsRefusedInOneLine(String text, String message) {
        UnreadableReviewException refused = assertThrows(UnreadableReviewException.class,
                () -> ReviewJson.read(text.getBytes(StandardCharsets.UTF_8)));
        assertTrue(refused.getMessage().startsWith(message), refused.getMessage());
        assertEquals(1, refused.getMessage().lines().count());
    }

    @Test
    void aReviewThatContradictsItselfIsRefused() {
        String upsideDown = new String(ReviewJson.bytes(SampleReview.full()), StandardCharsets.UTF_8)
                .replace("\"low\": 40000000", "\"low\": 400000000");
        UnreadableReviewException refused = assertThrows(UnreadableReviewException.class,
                () -> ReviewJson.read(upsideDown.getBytes(StandardCharsets.UTF_8)));
        assertTrue(refused.getMessage().startsWith("the review contradicts itself: not a band"), refused.getMessage());
    }

    @Test
    void everyUnitOfAComputedNumberIsInTheForm() {
        JsonNode units = JsonMapper.shared().readTree(ReviewJson.schema()).at("/definitions/unit/enum");
        assertEquals(Stream.of(SiUnit.values()).map(SiUnit::symbol).toList(),
                units.values().stream().map(JsonNode::stringValue).toList());
    }

    @Test
    void aNumberThatIsNotFiniteIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Decimal.of(new Band(0, 0, Double.POSITIVE_INFINITY).high()));
        assertThrows(IllegalArgumentException.class, () -> Decimal.of(Double.NaN));
    }
}
