package org.shortgrain.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shortgrain.part.reader.DescriptionValue;
import org.shortgrain.part.reader.EditableDescription;
import org.shortgrain.part.reader.JsonPatch;
import org.shortgrain.part.reader.MinimumSet;
import org.shortgrain.part.reader.PartReader;
import org.shortgrain.part.reader.Reading;
import org.shortgrain.review.Answer;
import org.shortgrain.review.Question;
import org.shortgrain.review.Review;
import org.shortgrain.review.Verdict;
import org.shortgrain.rulebook.ExampleFile;

/** Several values of which one holds are a question, and what each of them would lead to is what it does lead to. */
class StatedAlternativesTest {

    private static final Path EXAMPLES = Path.of("rules", "examples");
    private static final Knowledge KNOWLEDGE = Knowledge.shipped();
    private static final Reviewer REVIEWER = new Reviewer(KNOWLEDGE, Wording.shipped(), "test");
    private static final PartReader READER = new PartReader(KNOWLEDGE.vocabularies());
    private static final EditableDescription BASE = part(text("base.yaml"));

    private static String text(String example) {
        try {
            return Files.readString(EXAMPLES.resolve(example));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static EditableDescription part(String yaml) {
        return EditableDescription.of(yaml).orElseThrow();
    }

    private static Optional<Reading.Read> read(EditableDescription part) {
        return READER.read("part.yaml", part.bytes()) instanceof Reading.Read read ? Optional.of(read) : Optional.empty();
    }

    private static Review review(EditableDescription part) {
        return REVIEWER.review(read(part).orElseThrow(), new Review.InputId("part.yaml", ""), "2026-01-15");
    }

    private static EditableDescription base(String place, String value) {
        return BASE.with(BASE.setting(place, DescriptionValue.of(value)));
    }

    private static Question asked(Review review, String place) {
        return review.questions().stream().filter(one -> one.at().path().equals(place)).findFirst()
                .orElseThrow(() -> new AssertionError(review.questions().toString()));
    }

    private static List<String> words(Question question) {
        return question.answers().stream().map(Answer::words).toList();
    }

    @Test
    void aSusceptibleAlternativeCountsAndTheReportTellsWhichOneWouldLiftTheObjection() {
        EditableDescription pulled = base("/features/0", "{id: BORE, what: lug_bore, stress_direction: ST, restraint: held,"
                + " loads: [{source: one_g_ground, stress: 90 MPa, share_of_life: 1, report: \"stress note 1\"}],"
                + " stress_concentration: none, fit: none, clamp_up: none, drainage: none, as_quenched_depth: 4 mm}");
        Review review = review(pulled.with(pulled.setting("/material/temper", DescriptionValue.of("[T7351, T651]"))));
        assertEquals(Verdict.OBJECTION, review.verdict());
        Question temper = asked(review, "/material/temper");
        assertTrue(temper.decisive());
        assertEquals(List.of("the temper is T651", "the temper is T7351"), words(temper));
        assertEquals("The entry \"temper\" (material) holds 2 alternatives: T7351 or T651.", temper.text());
        assertEquals(Verdict.OBJECTION, temper.answers().get(0).verdict());
        assertFalse(temper.answers().get(1).verdict() == Verdict.OBJECTION);
    }

    @Test
    void alternativesThatAreAlikeForTheVerdictDoNotCapItAndAreStillTold() {
        Review plain = review(BASE);
        Review review = review(base("/material/procurement_spec", "[\"AMS-QQ-A-250/12\", \"AMS 4078\"]"));
        assertEquals(plain.verdict(), review.verdict(), review.because().toString());
        Question spec = asked(review, "/material/procurement_spec");
        assertFalse(spec.decisive());
        assertEquals(2, spec.answers().size());
        assertTrue(spec.answers().stream().allMatch(one -> one.verdict() == plain.verdict()), spec.toString());
    }

    @Test
    void alternativesMayStandInTheLongFormAndBeGroups() {
        Review review = review(base("/material/temper", "{value: [T7351, T651], kind: inferred, ref: \"sketch\"}"));
        Question temper = asked(review, "/material/temper");
        assertEquals(List.of("the temper is T651", "the temper is T7351"), words(temper));
        String fits = "[{kind: clearance}, {kind: press_bushing, hole: {min: 25 mm, max: 25.021 mm},"
                + " bush: {min: 25.035 mm, max: 25.048 mm}, bush_bore: 20 mm, outer_width: 50 mm,"
                + " bush_material: [\"15-5PH H1025\", \"7075\"], coldest: -55 degC}]";
        Review fitted = review(base("/features/0/fit", fits));
        Question fit = asked(fitted, "/features/0/fit");
        assertEquals(2, fit.answers().size());
        assertTrue(words(fit).get(0).contains("press bushing"), words(fit).toString());
        assertTrue(words(fit).get(1).endsWith("no. 1 of those stated, kind clearance"), words(fit).toString());
        promisesHold(base("/features/0/fit", fits));
    }

    @Test
    void whatIdentifiesThePartMustBeSettledBeforeSigningAndDoesNotBearOnTheVerdict() {
        Review review = review(base("/part/revision", "[A, B]"));
        assertEquals(review(BASE).verdict(), review.verdict());
        assertEquals(Question.Role.IDENTITY, asked(review, "/part/revision").role());
    }

    @Test
    void theSameValueTwiceIsNoQuestion() {
        assertEquals(List.of(), review(base("/material/temper", "[T7351, T7351]")).questions());
    }

    /** Every key of the base part with a single value, beside other values that the examples of the rules have there. */
    static Stream<String> places() throws IOException {
        Map<String, Set<String>> values = new LinkedHashMap<>();
        for (ExampleFile example : ExampleFile.in(EXAMPLES)) {
            scalars(part(example.description(StatedAlternativesTest::text)), "").forEach((place, value) -> values
                    .computeIfAbsent(place.replaceAll("/\\d+", "/*"), key -> new TreeSet<>()).add(value.json()));
        }
        return scalars(BASE, "").entrySet().stream().filter(one -> !one.getKey().equals("/schema")).flatMap(one -> {
            Set<String> several = new LinkedHashSet<>(List.of(one.getValue().json()));
            several.addAll(values.get(one.getKey().replaceAll("/\\d+", "/*")).stream()
                    .filter(other -> isTaken(one.getKey(), "[" + one.getValue().json() + ", " + other + "]")).limit(2).toList());
            return several.size() < 2 ? Stream.empty()
                    : Stream.of(one.getKey() + " " + several.stream().collect(Collectors.joining(", ", "[", "]")));
        });
    }

    private static boolean isTaken(String place, String values) {
        return read(base(place, values)).filter(read -> new MinimumSet().open(read.description()).alternatives().stream()
                .anyMatch(one -> one.at().path().equals(place))).isPresent();
    }

    private static Map<String, DescriptionValue> scalars(EditableDescription part, String at) {
        DescriptionValue value = part.at(at).orElseThrow();
        Map<String, DescriptionValue> found = new LinkedHashMap<>();
        if (!value.isGroup() && value.items().isEmpty()) {
            found.put(at, value);
        }
        value.entries().keySet().forEach(key -> found.putAll(scalars(part, at + "/" + key)));
        for (int i = 0; i < value.items().size(); i++) {
            found.putAll(scalars(part, at + "/" + i));
        }
        return found;
    }

    @ParameterizedTest
    @MethodSource("places")
    void atEveryKeyTheAnswersAreExactlyTheAlternativesAndEachDoesWhatIsPromised(String placeAndValues) {
        String place = placeAndValues.substring(0, placeAndValues.indexOf(' '));
        DescriptionValue values = DescriptionValue.of(placeAndValues.substring(place.length() + 1));
        EditableDescription part = base(place, values.json());
        Review review = promisesHold(part);
        Question question = asked(review, place);
        if (question.role() == Question.Role.JUDGING) {
            Set<String> answered = question.answers().stream()
                    .map(one -> part.with(one.change()).at(place).orElseThrow().json()).collect(Collectors.toSet());
            assertEquals(values.items().stream().map(DescriptionValue::json).collect(Collectors.toSet()), answered);
            List<Verdict> alone = question.answers().stream().map(Answer::verdict).toList();
            assertEquals(alone.stream().sorted().toList(), alone, "the worst first");
            if (alone.stream().distinct().count() > 1 && review.verdict() != Verdict.OBJECTION) {
                assertEquals(Verdict.CANNOT_BE_JUDGED, review.verdict());
                assertTrue(question.decisive());
            }
        }
    }

    private static Review promisesHold(EditableDescription part) {
        Review review = review(part);
        List<String> broken = new ArrayList<>();
        for (Question question : review.questions()) {
            for (Answer answer : question.answers()) {
                Verdict made = review(part.with(JsonPatch.parse(answer.change().json()))).verdict();
                if (made != answer.verdict()) {
                    broken.add(question.text() + " " + answer.says() + " gives " + made);
                }
            }
        }
        assertEquals(List.of(), broken);
        return review;
    }
}
