package org.shortgrain.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.shortgrain.part.reader.PartReader;
import org.shortgrain.part.reader.Problem;
import org.shortgrain.part.reader.Reading;
import org.shortgrain.review.DirectionReview;
import org.shortgrain.review.FactorState;
import org.shortgrain.review.FeatureReview;
import org.shortgrain.review.Review;
import org.shortgrain.review.Verdict;
import org.shortgrain.terms.GrainDirection;

class ReviewerTest {

    private static final Knowledge KNOWLEDGE = Knowledge.shipped();
    private static final Reviewer REVIEWER = new Reviewer(KNOWLEDGE, Wording.shipped(), "test");

    private static Review review(String text) {
        Reading reading = new PartReader(KNOWLEDGE.vocabularies()).read("part.yaml", text.getBytes(StandardCharsets.UTF_8));
        if (reading instanceof Reading.Refused refused) {
            throw new AssertionError(Problem.text(refused.problems()));
        }
        Reading.Read read = (Reading.Read) reading;
        return REVIEWER.review(read.description(), new Review.InputId("part.yaml", read.source().sha256()), read.paths(),
                "2026-01-15");
    }

    private static String sample(String name) {
        try {
            return Files.readString(Path.of("sample-reviews", name + ".yaml"));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static FeatureReview feature(Review review, String id) {
        return review.features().stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    }

    @Test
    void theThreeFactorsMeetAtThePressedLugOfTheStrutFitting() {
        Review review = review(sample("strut-end-fitting"));
        assertEquals(Verdict.OBJECTION, review.verdict());
        FeatureReview lug = feature(review, "LUG");
        lug.factors().forEach(factor -> assertEquals(FactorState.PRESENT, factor.state(), factor.toString()));
        assertTrue(review.findings().stream().anyMatch(one -> one.rule().equals("COMBINED-01")
                && one.feature().filter("LUG"::equals).isPresent()));
    }

    /** Corrosion 23(11), 335 (1967), abstract: threshold of 7075-T651 plate in ST is 7 ksi (48 MPa). */
    @Test
    void theThresholdOf7075T651AcrossTheShortGrainIsThePublishedOne() {
        DirectionReview governing = feature(review(sample("strut-end-fitting")), "LUG").governing().orElseThrow();
        assertEquals(GrainDirection.ST, governing.sustained().direction());
        assertEquals(48, governing.threshold().orElseThrow().amount().low(), 0.5);
        assertEquals("corrosion-1967-335", governing.threshold().orElseThrow().source().id());
    }

    @Test
    void theSumIsThatOfItsContributions() {
        for (String name : new String[] {"strut-end-fitting", "rudder-horn-bracket", "hatch-hinge-arm"}) {
            for (FeatureReview feature : review(sample(name)).features()) {
                for (DirectionReview direction : feature.directions()) {
                    double sum = direction.sustained().parts().stream().mapToDouble(part -> part.amount().high()).sum();
                    assertEquals(sum, direction.sustained().total().high(), 1e-9 * Math.max(1, sum), feature.id());
                }
            }
        }
    }

    @Test
    void anUnknownTemperLeavesTheMaterialUnjudgedAndAsks() {
        Review review = review(sample("rudder-horn-bracket"));
        assertEquals(Verdict.CANNOT_BE_JUDGED, review.verdict());
        assertEquals(FactorState.UNKNOWN, feature(review, "BASE").material().state());
        assertTrue(review.questions().stream().anyMatch(one -> one.at().path().equals("/material/temper")));
    }

    @Test
    void aResistantTemperWithoutPressFitGetsNoObjection() {
        Review review = review(sample("hatch-hinge-arm"));
        assertTrue(review.verdict() == Verdict.NO_OBJECTION
                || review.verdict() == Verdict.NO_OBJECTION_SUBJECT_TO_CONDITIONS, review.because().toString());
        assertTrue(review.questions().stream().noneMatch(one -> one.decisive()), review.questions().toString());
    }

    @Test
    void withoutAZoneTheEnvironmentIsNeverAbsentAndNeverPresent() {
        Review review = review(sample("hatch-hinge-arm").replace("  zone: wing_external\n", ""));
        review.features().forEach(one -> assertEquals(FactorState.UNKNOWN, one.environment().state(), one.id()));
    }

    @Test
    void aDryZoneCountsAsDryOnlyWithHumidityOnRecord() {
        String dry = sample("hatch-hinge-arm").replace("zone: wing_external", "zone: hangar_dry")
                .replace("temperature: {min: -30 degC, max: 60 degC}", "temperature: {min: 10 degC, max: 30 degC}")
                .replace("fluids: [salt_water, rain]", "fluids: none")
                .replaceAll("(?s)    drainage:\\n      opening: down.*?filled_with: none\\n", "    drainage: none\n");
        Review recorded = review(dry.replace("humidity: moist", "humidity: 35 %"));
        recorded.features().forEach(one -> assertEquals(FactorState.ABSENT, one.environment().state(),
                one.environment().reasons().toString()));
        Review unrecorded = review(dry.replace("  humidity: moist\n", ""));
        unrecorded.features().forEach(one -> assertEquals(FactorState.UNKNOWN, one.environment().state(), one.id()));
    }

    @Test
    void aMeasuredResidualStressReplacesTheComputedOneWhichIsStillShown() {
        Review review = review(sample("strut-end-fitting").replace("    axis: X\n",
                "    axis: X\n    residual_stress: {value: 5 MPa, kind: measured, method: \"hole drilling\"}\n"));
        FeatureReview lug = feature(review, "LUG");
        assertTrue(lug.governing().orElseThrow().sustained().parts().stream()
                .anyMatch(part -> part.source().equals("residual stress as stated") && part.amount().high() == 5));
        assertTrue(review.computations().stream().anyMatch(one -> one.computed().id().equals("residual.exposed")
                && one.feature().filter("LUG"::equals).isPresent()));
        assertFalse(lug.governing().orElseThrow().sustained().parts().stream()
                .anyMatch(part -> part.source().startsWith("quench residual")));
    }

    @Test
    void withoutADeclaredFactorTheStandInIsListedAsAnAssumption() {
        Review review = review(sample("hatch-hinge-arm").replace("  threshold_factor: 0.5\n", ""));
        assertTrue(review.assumptions().stream().anyMatch(one -> one.text().contains("factor on the threshold")),
                review.assumptions().toString());
    }

    @Test
    void theSamePartIsReviewedTheSameTwice() {
        assertEquals(review(sample("strut-end-fitting")), review(sample("strut-end-fitting")));
    }
}
