package org.shortgrain.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.part.reader.PartReader;
import org.shortgrain.part.reader.Problem;
import org.shortgrain.part.reader.Reading;
import org.shortgrain.review.CrackFound;
import org.shortgrain.review.Factor;
import org.shortgrain.review.FeatureReview;
import org.shortgrain.review.InspectionSchedule;
import org.shortgrain.review.InspectionSchedule.Outcome;
import org.shortgrain.review.OwnTests;
import org.shortgrain.review.Review;

/** The sample part in service, and what changes when one thing about it is stated otherwise. */
class InServiceReviewTest {

    private static final Knowledge KNOWLEDGE = Knowledge.shipped();
    private static final Reviewer REVIEWER = new Reviewer(KNOWLEDGE, Wording.shipped(), "test");
    private static final String SAMPLE = sample();

    private static String sample() {
        try {
            return Files.readString(Path.of("sample-reviews", "keel-step-fitting.yaml"));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static Review review(String text) {
        Reading reading = new PartReader(KNOWLEDGE.vocabularies()).read("part.yaml", text.getBytes(StandardCharsets.UTF_8));
        if (reading instanceof Reading.Refused refused) {
            throw new AssertionError(Problem.text(refused.problems()));
        }
        Reading.Read read = (Reading.Read) reading;
        return REVIEWER.review(read.description(), new Review.InputId("part.yaml", read.source().sha256()), read.paths(),
                "2026-01-15");
    }

    /** The sample with one text in place of another, which must stand in it. */
    private static Review with(String text, String instead) {
        assertTrue(SAMPLE.contains(text), text);
        return review(SAMPLE.replace(text, instead));
    }

    private static InspectionSchedule schedule(Review review, String feature) {
        return review.inService().schedules().stream().filter(one -> one.feature().equals(feature)).findFirst().orElseThrow();
    }

    private static boolean raised(Review review, String rule) {
        return review.findings().stream().anyMatch(one -> one.rule().equals(rule));
    }

    @Test
    void nothingThatIsJudgedOfServiceIsLeftUnjudged() {
        assertEquals(List.of(), review(SAMPLE).readNotJudged().stream().filter(one -> one.startsWith("/service")
                || one.startsWith("/test_data") || one.startsWith("/inspection")).toList());
    }

    @Test
    void eachCrackIsWeighedForEachFactorAndAgainstEachAlternative() {
        CrackFound crack = review(SAMPLE).inService().cracks().get(0);
        assertEquals(List.of(Factor.MATERIAL, Factor.STRESS, Factor.ENVIRONMENT),
                crack.factors().stream().map(CrackFound.Evidence::factor).toList());
        assertEquals(List.of("stress corrosion", "fatigue", "corrosion fatigue", "hydrogen embrittlement", "overload"),
                crack.alternatives().stream().map(CrackFound.Alternative::name).toList());
        assertTrue(crack.alternatives().stream().allMatch(one -> one.decides().contains("Decides: ")));
        assertTrue(String.join(" ", crack.factors().get(1).speaksFor()).contains("tension of the core"));
        assertTrue(String.join(" ", crack.factors().get(2).speaksFor()).contains("9.6 years after entry into service"),
                "April 2016 to November 2025 are 9 years and 7 months");
        assertTrue(String.join(" ", crack.factors().get(2).speaksFor()).contains("stood still 96 %"),
                "3100 of 84,000 hours in 115 months: it operated 3.7 % of the time");
        assertFalse(crack.onPart().isEmpty());
        assertFalse(crack.onSisters().isEmpty());
    }

    @Test
    void theContributionsAreRankedAndTheirSharesAddUpToOne() {
        List<CrackFound.Share> shares = review(SAMPLE).inService().cracks().get(0).contributions();
        assertEquals("quench residual after machining", shares.get(0).source());
        assertEquals(1, shares.stream().mapToDouble(CrackFound.Share::share).sum(), 1e-9);
        for (int i = 1; i < shares.size(); i++) {
            assertTrue(shares.get(i).amount().value() <= shares.get(i - 1).amount().value());
        }
    }

    @Test
    void theLaboratorysWordsCountOnTheSideOnWhichTheyStand() {
        CrackFound.Alternative fatigue = review(SAMPLE).inService().cracks().get(0).alternatives().get(1);
        assertTrue(fatigue.speaksAgainst().stream().anyMatch(one -> one.startsWith("No marks of cycles")));
        CrackFound.Alternative seen = with("no striations", "striations").inService().cracks().get(0).alternatives().get(1);
        assertTrue(seen.speaksFor().stream().anyMatch(one -> one.startsWith("Marks of cycles")));
    }

    /** Words that would claim more than evidence, and those that no verdict may use. */
    @Test
    void nothingClaimsACauseProven() {
        Review review = review(SAMPLE);
        String said = Stream.concat(review.inService().cracks().stream().flatMap(one -> Stream.concat(
                        one.factors().stream().flatMap(f -> Stream.concat(f.speaksFor().stream(), f.speaksAgainst().stream())),
                        one.alternatives().stream().flatMap(a -> Stream.of(a.speaksFor(), a.speaksAgainst())
                                .flatMap(List::stream)))),
                review.inService().schedules().stream().flatMap(one -> Stream.of(one.because(), one.declared(), one.cautions())
                        .flatMap(List::stream))).collect(Collectors.joining(" ")).toLowerCase(Locale.ROOT);
        for (String word : List.of("proves", "proven", "the cause is", "caused by", "root cause", "safe", "approved", "certified",
                "airworthy", "immune", "zero risk")) {
            assertFalse(said.contains(word), word);
        }
    }

    @Test
    void ownTestsInScopeGiveTheThreshold() {
        Review review = review(SAMPLE);
        OwnTests tests = review.inService().tests().get(0);
        assertTrue(tests.counted());
        FeatureReview groove = review.features().get(0);
        assertEquals(tests.threshold().orElseThrow().low(), groove.governing().orElseThrow().threshold().orElseThrow().amount()
                .low(), 1e-9);
        assertTrue(groove.governing().orElseThrow().threshold().orElseThrow().kind().startsWith("own tests"));
        assertEquals("corrosion-1967-335", review.features().get(1).governing().orElseThrow().threshold().orElseThrow()
                .source().id(), "the tests are stated for the groove alone");
        assertTrue(String.join(" ", tests.because()).contains("No statement beyond the longest test of 240 days"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            alloy: "7075"~    temper: "T651"~    product | alloy: "7050"~    temper: "T651"~    product | specimens are 7050
            product: plate~    ref | ref | form of the specimens is not stated
            product: plate~    ref | product: extrusion~    ref | specimens are extrusion
            ASTM G44, alternate immersion | boiling magnesium chloride | is not known to stand for the environment
            fluids: [sea_water, rain] | fluids: [sea_water, battery_acid] | does not stand for battery acid
            """)
    void testsOfSomethingElseDoNotCountAndTheReviewSaysWhy(String text, String instead, String why) {
        Review review = with(text.replace('~', '\n'), instead.replace('~', '\n'));
        OwnTests tests = review.inService().tests().get(0);
        assertFalse(tests.counted());
        assertTrue(String.join(" ", tests.because()).contains(why), tests.because().toString());
        assertEquals("corrosion-1967-335", review.features().get(0).governing().orElseThrow().threshold().orElseThrow()
                .source().id());
    }

    @Test
    void aCrackThatOutrunsEveryInspectionIsCalledNotInspectableWithTheNumber() {
        Review review = review(SAMPLE);
        InspectionSchedule groove = schedule(review, "GROOVE");
        assertEquals(Outcome.NOT_INSPECTABLE, groove.outcome());
        assertTrue(groove.first().isEmpty() && groove.repeat().isEmpty() && groove.dates().isEmpty());
        assertTrue(groove.because().get(0).matches("Repeat: not inspectable: .* may take [0-9.]+ days, .*"), groove.toString());
        assertTrue(raised(review, "GROWTH-01"));
        Computed window = review.computations().stream().map(one -> one.computed())
                .filter(one -> one.id().equals("crack.window")).findFirst().orElseThrow();
        assertTrue(window.value().low() < 30 * 86_400.0);
    }

    @Test
    void aPlaceBelowTheThresholdsIsLookedAtByTheCalendar() {
        InspectionSchedule flange = schedule(review(SAMPLE), "FLANGE");
        assertEquals(Outcome.BY_CALENDAR, flange.outcome());
        assertEquals(365, flange.repeat().orElseThrow().value(), 0);
        assertEquals("2017-04-01", flange.dates().get(0).when(), "a year after April 2016");
        assertEquals("2026-01-15", flange.dates().get(1).when(), "the look is overdue: now, the date of the review");
        assertTrue(flange.declared().stream().anyMatch(one -> one.contains("interval of 2 years is longer than 12 months")));
    }

    @Test
    void withoutPublishedGrowthThePracticeStandsAlone() {
        InspectionSchedule groove = schedule(with("product: plate\n  heat", "product: die_forging\n  heat"), "GROOVE");
        assertEquals(Outcome.BY_CALENDAR, groove.outcome());
        assertTrue(groove.because().get(0).startsWith("Growth is not computed: no K_ISCC is published"), groove.toString());
        assertTrue(groove.calculations().isEmpty());
    }

    @Test
    void aDeclaredSizeTakesThePlaceOfThePublishedOne() {
        InspectionSchedule flange = schedule(with("first: 4 years, repeat: 2 years", "first: 4 years, repeat: 2 years,"
                + " detectable: 8 mm"), "FLANGE");
        assertEquals(Outcome.NOT_INSPECTABLE, flange.outcome(), "8 mm of a section of 9 mm");
        assertTrue(flange.because().get(0).contains("critical already"));
    }

    /** 5 mm deep of a critical depth of some millimetres more, at up to 1e-7 m/s: 8.64 mm a day. */
    @Test
    void whatIsLeftToTheCrackThatWasFoundIsSaid() {
        InspectionSchedule groove = schedule(review(SAMPLE), "GROOVE");
        assertTrue(groove.because().stream().anyMatch(one -> one.matches(
                "The crack that was found, 5.0 mm deep, may become critical within 0\\.[0-9]+ days\\.")), groove.toString());
        InspectionSchedule deep = schedule(with("depth: 5 mm", "depth: 30 mm"), "GROOVE");
        assertTrue(deep.because().stream().anyMatch(one -> one.contains("nothing is left to inspect")), deep.toString());
    }

    @Test
    void aPlaceThatNobodyReachesIsNotInspectable() {
        InspectionSchedule flange = schedule(with("access: partial", "access: none_without_disassembly"), "FLANGE");
        assertEquals(Outcome.NOT_INSPECTABLE, flange.outcome());
        assertTrue(flange.because().get(0).contains("cannot be reached"));
    }

    @Test
    void whoDoesNotAskForInspectionGetsNoSchedule() {
        Review review = review(SAMPLE.replaceFirst("(?m)^inspection:.*\n", "").replace("purpose: in_service", "purpose: design"));
        assertEquals(List.of(), review.inService().schedules());
    }
}
