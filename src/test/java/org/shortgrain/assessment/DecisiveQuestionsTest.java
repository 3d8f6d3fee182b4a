package org.shortgrain.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shortgrain.part.reader.EditableDescription;
import org.shortgrain.part.reader.JsonPatch;
import org.shortgrain.part.reader.PartReader;
import org.shortgrain.part.reader.Problem;
import org.shortgrain.part.reader.Reading;
import org.shortgrain.review.Answer;
import org.shortgrain.review.Question;
import org.shortgrain.review.Review;
import org.shortgrain.review.Verdict;

/** Which open questions cap the verdict, and whether an answer does what the report says that it does. */
class DecisiveQuestionsTest {

    private static final Knowledge KNOWLEDGE = Knowledge.shipped();
    private static final Reviewer REVIEWER = new Reviewer(KNOWLEDGE, Wording.shipped(), "test");
    private static final PartReader READER = new PartReader(KNOWLEDGE.vocabularies());

    /** A bracket of plate in a dry, controlled place; loads, fits, gaps and sizes are not known. */
    private static final String UNKNOWN_SIZES = """
            schema: 1
            review: {purpose: design, prepared_by: "checker", date: 2026-01-15, threshold_factor: 0.5}
            part: {number: "T-1", revision: "A", name: "Bracket", criticality: secondary, single_load_path: false,
                   function: "carries a pipe", effect_of_failure: "none", design_authority: "design office"}
            drawing: {number: "T-1", revision: "A", changes: none}
            planning: {number: "P-1", revision: "1", drawing_revision_on_card: "A"}
            material: {alloy: "7075", temper: "T7351", procurement_spec: "AMS-QQ-A-250/12"}
            form: {product: plate, heat_treat_thickness: unknown, heat_treat_shape: plate}
            grain: {basis: drawing_arrow, L: X, LT: Y, ST: Z, end_grain_exposed: none}
            route:
              - {op: "10", do: rough_machine, removes: 2 mm}
              - {op: "20", do: finish_machine, at: [WEB], removes: 2 mm}
              - {op: "30", do: conductivity, limit: "38.0 %IACS and above"}
              - {op: "40", do: anodize, spec: "MIL-PRF-8625 type IC"}
              - {op: "50", do: prime, spec: "MIL-PRF-23377"}
            route_complete: true
            features:
              - {id: WEB, what: web, stress_direction: ST, restraint: held, loads: unknown, stress_concentration: none,
                 fit: unknown, clamp_up: unknown, drainage: none}
            surface: {pretreatment: "MIL-PRF-8625 type IC", primer: "MIL-PRF-23377", topcoat: "MIL-PRF-85285",
                      areas_bare: none, peened: none, complete_finish_system: true}
            sealant: {faying: "AMS3276 class B", fillet: none, fasteners_wet: true, gap_fill: none}
            environment: {zone: hangar_dry, salt: inland, temperature: {min: 10 degC, max: 30 degC}, humidity: 35 %,
                          fluids: none}
            neighbours: none
            inspection: {access: open, method: visual, first: 4 years, repeat: 2 years}
            evidence: {conductivity: {value: 39.5 %IACS, kind: measured, scope: lot}, hardness: "82 HRB",
                       certificate: "lot 7"}
            """;

    private static Reading.Read read(byte[] bytes) {
        Reading reading = READER.read("part.yaml", bytes);
        if (reading instanceof Reading.Refused refused) {
            throw new AssertionError(Problem.text(refused.problems()) + "\n" + new String(bytes, StandardCharsets.UTF_8));
        }
        return (Reading.Read) reading;
    }

    private static Review review(byte[] bytes) {
        return REVIEWER.review(read(bytes), new Review.InputId("part.yaml", ""), "2026-01-15");
    }

    private static Review review(String text) {
        return review(text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<Question> decisive(Review review) {
        return review.questions().stream().filter(Question::decisive).toList();
    }

    @Test
    void aResistantTemperInADryPlaceIsNotCappedByLoadsAndSizesThatNobodyKnows() {
        Review review = review(UNKNOWN_SIZES);
        assertEquals(List.of(), decisive(review));
        assertTrue(review.verdict() == Verdict.NO_OBJECTION
                || review.verdict() == Verdict.NO_OBJECTION_SUBJECT_TO_CONDITIONS, review.because().toString());
        assertTrue(review.questions().size() >= 4, review.questions().toString());
        assertTrue(review.because().stream().anyMatch(one -> one.contains("no admissible answer changes the verdict")),
                review.because().toString());
    }

    @Test
    void aSusceptibleTemperInAWetPlaceIsCappedByThemAndEachIsExplained() {
        Review review = review(UNKNOWN_SIZES.replace("T7351", "T651").replace("zone: hangar_dry", "zone: wing_external")
                .replace("humidity: 35 %", "humidity: moist").replace("fluids: none", "fluids: [rain]")
                .replace("salt: inland", "salt: coastal"));
        assertEquals(Verdict.CANNOT_BE_JUDGED, review.verdict());
        Question loads = decisive(review).stream().filter(one -> one.at().path().endsWith("/loads")).findFirst()
                .orElseThrow(() -> new AssertionError(review.questions().toString()));
        assertTrue(loads.answers().stream().anyMatch(one -> one.verdict() == Verdict.OBJECTION), loads.toString());
        assertTrue(loads.answers().stream().anyMatch(one -> one.verdict() != Verdict.OBJECTION), loads.toString());
        assertFalse(loads.findOut().isEmpty());
    }

    @Test
    void theDecisiveQuestionsStandFirstTheCheapestToFindOutBeforeTheOthers() {
        Review review = review(UNKNOWN_SIZES.replace("T7351", "T651").replace("zone: hangar_dry", "zone: unknown"));
        List<Boolean> order = review.questions().stream().map(Question::decisive).toList();
        assertEquals(order.stream().sorted(java.util.Comparator.reverseOrder()).toList(), order);
        List<Integer> efforts = decisive(review).stream()
                .map(one -> KNOWLEDGE.tables().findingOut().of(one.at().path()).effort()).toList();
        assertEquals(efforts.stream().sorted().toList(), efforts);
        assertTrue(efforts.size() > 1, review.questions().toString());
    }

    @Test
    void aTemperThatTheTablesDoNotRateLeavesThePartUnjudgedHoweverItIsAnswered() {
        Review review = review(UNKNOWN_SIZES.replace("alloy: \"7075\", temper: \"T7351\"", "alloy: \"7099\", temper: \"T1\""));
        assertEquals(Verdict.CANNOT_BE_JUDGED, review.verdict());
        Question rating = decisive(review).stream().filter(one -> one.answers().isEmpty()).findFirst()
                .orElseThrow(() -> new AssertionError(decisive(review).toString()));
        assertEquals("No answer to it can be tried: it is decisive until it is answered.", rating.outlook());
    }

    static Stream<String> parts() throws IOException {
        List<String> samples;
        try (Stream<Path> files = Files.list(Path.of("sample-reviews"))) {
            samples = files.filter(file -> file.toString().endsWith(".yaml")).sorted().map(DecisiveQuestionsTest::text).toList();
        }
        Stream<String> lessKnown = samples.stream().flatMap(text -> Stream.of(
                text.replaceAll("(?m)^( +)loads:(\\n\\1  - .*)+", "$1loads: unknown"),
                text.replaceAll("(?m)^  zone: .*$", "  zone: unknown"),
                text.replaceAll("(?m)^  temper: .*$", "  temper: unknown"),
                text.replaceAll("(?m)^( +)as_quenched_depth: .*$", "$1as_quenched_depth: unknown")
                        .replaceAll("(?m)^( +)stress_direction: .*$", "$1stress_direction: unknown")));
        return Stream.concat(Stream.concat(samples.stream(), lessKnown), Stream.of(UNKNOWN_SIZES,
                UNKNOWN_SIZES.replace("T7351", "T651").replace("zone: hangar_dry", "zone: unknown"),
                UNKNOWN_SIZES.replace("temper: \"T7351\"", "temper: unknown")));
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @ParameterizedTest
    @MethodSource("parts")
    void anAnswerMadeAsTheReportSaysGivesTheVerdictThatItPromised(String text) {
        Reading.Read read = read(text.getBytes(StandardCharsets.UTF_8));
        Review review = REVIEWER.review(read, new Review.InputId("part.yaml", ""), "2026-01-15");
        EditableDescription part = EditableDescription.of(read.source()).orElseThrow();
        for (Question question : review.questions()) {
            for (Answer answer : question.answers()) {
                byte[] answered = part.with(JsonPatch.parse(answer.change().json())).bytes();
                assertEquals(answer.verdict(), review(answered).verdict(), () -> question.id() + " " + question.text() + " -> "
                        + answer.says() + "\n" + new String(answered, StandardCharsets.UTF_8));
            }
        }
        if (review.verdict() == Verdict.CANNOT_BE_JUDGED) {
            assertFalse(decisive(review).isEmpty(), "capped by nothing");
        }
        nothingChangesByAnsweringTheOthers(review, part);
    }

    /** What is told of a question for the record: no answer that can be tried changes the verdict. */
    private static void nothingChangesByAnsweringTheOthers(Review review, EditableDescription part) {
        Trials trials = new Trials(REVIEWER);
        AdmissibleAnswers answers = new AdmissibleAnswers(trials);
        Trials.Trial trial = trials.of(part).orElseThrow();
        for (Question question : review.questions()) {
            if (question.role() == Question.Role.JUDGING && !question.decisive()) {
                assertEquals("No answer that can be tried changes the verdict.", question.outlook());
                answers.to(question, trial, part).forEach(answer -> assertEquals(review.verdict(),
                        trials.verdict(trials.of(part.with(answer.patch())).orElseThrow()),
                        () -> question.id() + " " + question.text() + " -> " + answer.words()));
            }
        }
    }
}
