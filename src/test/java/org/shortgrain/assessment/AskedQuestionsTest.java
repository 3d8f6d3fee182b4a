package org.shortgrain.assessment;

import static java.util.Map.entry;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shortgrain.part.reader.DescriptionValue;
import org.shortgrain.part.reader.EditableDescription;
import org.shortgrain.part.reader.JsonPatch;
import org.shortgrain.part.reader.PartReader;
import org.shortgrain.part.reader.Reading;
import org.shortgrain.review.Factor;
import org.shortgrain.review.Grade;
import org.shortgrain.review.Question;
import org.shortgrain.review.Review;
import org.shortgrain.rulebook.ExampleFile;
import org.shortgrain.rulebook.RuleInfo;

/**
 * Every question that a rule, the reader or a computation raises of the examples of the rules, of the samples, of the base of
 * the examples, and of samples and base with each datum taken away or left unknown: what may be answered to it.
 */
class AskedQuestionsTest {

    private static final Path EXAMPLES = Path.of("rules", "examples");
    private static final Knowledge KNOWLEDGE = Knowledge.shipped();
    private static final Reviewer REVIEWER = new Reviewer(KNOWLEDGE, Wording.shipped(), "test");
    private static final PartReader READER = new PartReader(KNOWLEDGE.vocabularies());
    private static final Trials TRIALS = new Trials(REVIEWER);
    private static final AdmissibleAnswers ANSWERS = new AdmissibleAnswers(TRIALS);

    /** Who asks at what place of which part without an admissible answer, and why there can be none. */
    private static final Map<String, String> CANNOT_BE_TRIED = Map.ofEntries(
            entry("- /material/alloy", "of an alloy not known, and of no family, anything may be true"),
            entry("- /material/temper", "the tempers of an alloy not known are not known"),
            entry("- /material", "modulus and expansion have no key: they follow from the alloy"),
            entry("- /features/*/clamp_up/*", "gap, span and thickness are stated; what is missing is the modulus of an alloy not"
                    + " known"),
            entry("- /route", "no card is the worst of all cards"),
            entry("- /route/*", "no operation is the worst of all operations"),
            entry("MATERIAL-04 /material", "an alloy that nobody rated may be among the worst, and none is the best"),
            entry("MATERIAL-23 /form", "beyond the thickest band nobody promises anything"),
            entry("ORDER-16 /route/*", "solution treatment, quench and ageing are operations of their own, not one answer"),
            entry("GALVANIC-14 /neighbours/*", "no other series may stand in for the anodic index"),
            entry("GALVANIC-14 /features/*/fasteners/*", "no other series may stand in for the anodic index"),
            entry("GALVANIC-14 /features/*/fit/bush_material", "no other series may stand in for the anodic index"));

    /** All questions: who asks at what place, to what was asked. */
    private static final Map<String, Asked> ASKED = new TreeMap<>();
    private static final List<String> REFUSED = new ArrayList<>();

    /**
     * A question, wherever it was raised.
     *
     * @param without a part of which no answer is admissible
     * @param with    a part of which some answer is
     */
    private record Asked(Optional<Raised> without, Optional<Raised> with) {

        private Asked or(Asked other) {
            return new Asked(without.or(other::without), with.or(other::with));
        }
    }

    private record Raised(String of, EditableDescription part, Question question) {
    }

    @BeforeAll
    static void collect() throws IOException {
        for (ExampleFile example : ExampleFile.in(EXAMPLES)) {
            ask(example.name(), EditableDescription.of(example.description(name -> read(EXAMPLES.resolve(name)))).orElseThrow());
        }
        List<Path> whole = new ArrayList<>(List.of(EXAMPLES.resolve(ExampleFile.BASE)));
        try (Stream<Path> files = Files.list(Path.of("sample-reviews"))) {
            files.filter(file -> file.toString().endsWith(".yaml")).sorted().forEach(whole::add);
        }
        for (Path file : whole) {
            EditableDescription part = EditableDescription.of(read(file)).orElseThrow();
            ask(file.toString(), part);
            for (String place : places(part, "")) {
                ask(file + " without " + place, part.with(new JsonPatch(List.of(JsonPatch.remove(place)))));
                ask(file + " unknown " + place, part.with(new JsonPatch(List.of(
                        JsonPatch.replace(place, DescriptionValue.of("unknown"))))));
            }
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static List<String> places(EditableDescription part, String at) {
        DescriptionValue value = part.at(at).orElseThrow();
        List<String> places = new ArrayList<>();
        value.entries().keySet().forEach(key -> places.add(at + "/" + key));
        for (int i = 0; i < value.items().size(); i++) {
            places.add(at + "/" + i);
        }
        List<String> below = places.stream().flatMap(place -> places(part, place).stream()).toList();
        places.addAll(below);
        return places;
    }

    /** A part that the reader refuses asks nothing. */
    private static void ask(String name, EditableDescription part) {
        TRIALS.of(part).ifPresent(trial -> trial.asked().forEach(question -> {
            List<AdmissibleAnswers.Possible> possible = ANSWERS.to(question, trial, part);
            Optional<Raised> raised = Optional.of(new Raised(name, part, question));
            ASKED.merge(key(question), possible.isEmpty() ? new Asked(raised, Optional.empty())
                    : new Asked(Optional.empty(), raised), Asked::or);
            possible.stream().filter(one -> READER.read("part", part.with(one.patch())) instanceof Reading.Refused)
                    .forEach(one -> REFUSED.add(name + ": " + one.words() + " " + one.patch().json()));
        }));
    }

    private static String key(Question question) {
        return question.rule().orElse("-") + " " + question.at().path().replaceAll("/\\d+", "/*");
    }

    @Test
    void onlyTheQuestionsThatAreNamedAndArguedCannotBeTried() {
        Map<String, Asked> without = new TreeMap<>(ASKED);
        without.values().removeIf(one -> one.without().isEmpty());
        assertEquals(new TreeSet<>(CANNOT_BE_TRIED.keySet()), without.keySet(), () -> without.values().stream()
                .map(one -> one.without().orElseThrow().of() + ": " + one.without().orElseThrow().question().text())
                .collect(Collectors.joining("\n")));
    }

    @Test
    void everyRuleThatAsksIsAmongThem() {
        Set<String> asking = ASKED.keySet().stream().map(key -> key.substring(0, key.indexOf(' '))).collect(Collectors.toSet());
        assertEquals(List.of(), KNOWLEDGE.rulebook().rules().stream().filter(rule -> rule.grade() == Grade.QUESTION)
                .filter(rule -> rule.factor() != Factor.RECORD).map(RuleInfo::id).filter(id -> !asking.contains(id)).toList());
    }

    @Test
    void theReaderRefusesNoAnswer() {
        assertEquals(List.of(), REFUSED);
    }

    static Stream<String> tried() throws IOException {
        if (ASKED.isEmpty()) {
            collect();
        }
        return ASKED.entrySet().stream().filter(one -> one.getValue().with().isPresent()).map(Map.Entry::getKey);
    }

    /** For one part for each question; the samples with several questions open are held to it in DecisiveQuestionsTest. */
    @ParameterizedTest
    @MethodSource("tried")
    void anAnswerToAnyOfThemGivesTheVerdictThatItPromised(String key) {
        Raised raised = ASKED.get(key).with().orElseThrow();
        Review review = review(raised.part());
        List<Question> same = review.questions().stream().filter(one -> key(one).equals(key)).toList();
        assertFalse(same.isEmpty(), "asked in a review as in a trial");
        for (Question question : same) {
            question.answers().forEach(answer -> assertEquals(answer.verdict(),
                    review(raised.part().with(answer.change())).verdict(), () -> raised.of() + ": " + answer.says()));
        }
    }

    private static Review review(EditableDescription part) {
        return REVIEWER.review((Reading.Read) READER.read("part.yaml", part.bytes()), new Review.InputId("part.yaml", ""), "2026-01-15");
    }
}
