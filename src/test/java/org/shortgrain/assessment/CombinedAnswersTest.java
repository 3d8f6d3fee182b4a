package org.shortgrain.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.shortgrain.part.reader.DescriptionValue;
import org.shortgrain.part.reader.EditableDescription;
import org.shortgrain.reference.AnswerTable;
import org.shortgrain.review.Question;
import org.shortgrain.review.Review;
import org.shortgrain.review.Verdict;

/**
 * Decisive questions against every combination of their answers, made without regard to how they are searched for: with up
 * to five questions open, each is answered at its worst and at its best, and what an answer opens is answered likewise.
 *
 * <p>The parts are the base of the examples of the rules in a susceptible temper, the same loaded across the grain, and in a
 * resistant temper in dry air, each with every two and with some three of its data unknown.
 */
class CombinedAnswersTest {

    private static final int FEW = 5;
    private static final int ROUNDS = 8;
    private static final Reviewer REVIEWER = new Reviewer(Knowledge.shipped(), Wording.shipped(), "test");
    private static final Trials TRIALS = new Trials(REVIEWER);
    private static final AdmissibleAnswers ANSWERS = new AdmissibleAnswers(TRIALS);
    private static final DecisiveQuestions QUESTIONS = new DecisiveQuestions(TRIALS);
    private static final List<String> DATA = List.of("/features/0/loads", "/features/0/stress_direction", "/features/0/fit",
            "/features/0/clamp_up", "/features/0/drainage", "/features/1/loads", "/material/temper",
            "/form/heat_treat_thickness", "/environment/zone", "/features/0/as_quenched_depth", "/neighbours");

    private static List<EditableDescription> starts() throws IOException {
        EditableDescription base = EditableDescription.of(Files.readString(Path.of("rules", "examples", "base.yaml"))).orElseThrow();
        EditableDescription prone = set(base, "/material/temper", "T651");
        EditableDescription loaded = set(set(prone, "/features/0/stress_direction", "ST"), "/features/0/loads",
                "[{source: one_g_ground, stress: 60 MPa, share_of_life: 1, report: \"stress note 1\"}]");
        EditableDescription dry = set(set(set(set(base, "/environment/zone", "hangar_dry"), "/environment/salt", "inland"),
                "/environment/humidity", "35 %"), "/environment/fluids", "none");
        return List.of(prone, loaded, dry);
    }

    private static EditableDescription set(EditableDescription part, String place, String value) {
        return part.with(part.setting(place, DescriptionValue.of(value)));
    }

    private static List<EditableDescription> parts() throws IOException {
        List<EditableDescription> parts = new ArrayList<>();
        for (EditableDescription start : starts()) {
            for (int i = 0; i < DATA.size(); i++) {
                for (int k = i + 1; k < DATA.size(); k++) {
                    EditableDescription two = set(set(start, DATA.get(i), "unknown"), DATA.get(k), "unknown");
                    parts.add(two);
                    if (k == i + 1) {
                        parts.add(set(two, DATA.get((i + k) % DATA.size()), "unknown"));
                    }
                }
            }
        }
        return parts;
    }

    /** What a part comes to when everything open is answered at one side; empty if something stays open or is refused. */
    private static Optional<Verdict> settled(EditableDescription part, AnswerTable.Side side) {
        EditableDescription now = part;
        for (int round = 0; round < ROUNDS; round++) {
            Optional<Trials.Trial> trial = TRIALS.of(now);
            if (trial.isEmpty() || trial.get().asked().isEmpty()) {
                return trial.map(Trials.Trial::free);
            }
            for (Question question : trial.get().asked()) {
                now = answered(now, question, trial.get(), side);
            }
        }
        return Optional.empty();
    }

    private static EditableDescription answered(EditableDescription part, Question question, Trials.Trial trial,
            AnswerTable.Side side) {
        return AdmissibleAnswers.furthest(ANSWERS.to(question, trial, part), side).map(one -> part.with(one.patch())).orElse(part);
    }

    /** The verdicts of one combination: bit by bit the best answer, else the worst. */
    private static List<Optional<Verdict>> combination(Trials.Trial trial, int best) {
        EditableDescription part = trial.part();
        for (int i = 0; i < trial.asked().size(); i++) {
            part = answered(part, trial.asked().get(i), trial,
                    (best >> i & 1) == 1 ? AnswerTable.Side.BEST : AnswerTable.Side.WORST);
        }
        return List.of(settled(part, AnswerTable.Side.WORST), settled(part, AnswerTable.Side.BEST));
    }

    private record Searched(Trials.Trial trial, Review review, List<List<Optional<Verdict>>> combinations) {

        /** Numbers of the questions whose answer changes the verdict in some combination of answers to the others. */
        Set<Integer> matter() {
            Set<Integer> matter = new TreeSet<>();
            for (int i = 0; i < trial.asked().size(); i++) {
                int bit = 1 << i;
                for (int best = 0; best < combinations.size(); best++) {
                    if (!combinations.get(best).equals(combinations.get(best | bit))) {
                        matter.add(i);
                    }
                }
            }
            return matter;
        }

        Set<Optional<Verdict>> verdicts() {
            return combinations.stream().flatMap(List::stream).collect(Collectors.toCollection(LinkedHashSet::new));
        }

        boolean isDecisive(int number) {
            Question asked = trial.asked().get(number);
            return review.questions().stream().filter(Question::decisive)
                    .anyMatch(one -> one.text().equals(asked.text()) && one.at().path().equals(asked.at().path()));
        }

        String say() {
            return review.verdict() + " " + verdicts() + "\n" + trial.asked().stream().map(one -> isDecisive(
                    trial.asked().indexOf(one)) + " " + one.text()).collect(Collectors.joining("\n"));
        }
    }

    private static Stream<Searched> searched() throws IOException {
        return parts().stream().flatMap(part -> TRIALS.of(part).stream())
                .filter(trial -> !trial.asked().isEmpty() && trial.asked().size() <= FEW)
                .filter(trial -> trial.asked().stream().noneMatch(one -> ANSWERS.to(one, trial, trial.part()).isEmpty()))
                .map(trial -> {
                    List<List<Optional<Verdict>>> all = new ArrayList<>();
                    for (int best = 0; best < 1 << trial.asked().size(); best++) {
                        all.add(combination(trial, best));
                    }
                    return new Searched(trial, QUESTIONS.decided(trial.review(), trial.part()), all);
                });
    }

    /** The searches are made once for both tests. */
    private static List<Searched> all = List.of();

    @BeforeAll
    static void search() throws IOException {
        all = searched().toList();
    }

    @Test
    void withFewQuestionsOpenNoneThatMattersInSomeCombinationIsLeftOut() {
        List<Searched> capped = all.stream().filter(one -> one.review().verdict() == Verdict.CANNOT_BE_JUDGED).toList();
        List<Searched> free = all.stream().filter(one -> one.review().verdict() != Verdict.CANNOT_BE_JUDGED
                && one.review().verdict() != Verdict.OBJECTION).toList();
        assertTrue(capped.size() > 50 && free.size() > 20, capped.size() + " capped, " + free.size() + " not");
        for (Searched one : capped) {
            assertFalse(one.review().questions().stream().noneMatch(Question::decisive), one::say);
            one.matter().forEach(number -> assertTrue(one.isDecisive(number), () -> "left out: " + number + "\n" + one.say()));
        }
        for (Searched one : free) {
            assertEquals(Set.of(Optional.of(one.review().verdict())), one.verdicts(), one::say);
        }
    }

    @Test
    void anObjectionThatSomeCombinationLiftsNamesAQuestion() {
        List<Searched> objections = all.stream().filter(one -> one.review().verdict() == Verdict.OBJECTION).toList();
        assertTrue(objections.size() > 20, objections.size() + " objections");
        for (Searched one : objections) {
            if (one.verdicts().stream().anyMatch(verdict -> verdict.filter(Verdict.OBJECTION::equals).isEmpty())) {
                assertTrue(one.review().questions().stream().anyMatch(Question::decisive), one::say);
            }
        }
    }

    @Test
    void noAnswerToAQuestionForTheRecordChangesTheVerdict() {
        for (Searched one : all) {
            for (int i = 0; i < one.trial().asked().size(); i++) {
                if (!one.isDecisive(i)) {
                    Question question = one.trial().asked().get(i);
                    ANSWERS.to(question, one.trial(), one.trial().part()).forEach(answer -> assertEquals(
                            Optional.of(one.review().verdict()),
                            TRIALS.of(one.trial().part().with(answer.patch())).map(TRIALS::verdict),
                            () -> question.text() + " " + answer.words() + "\n" + one.say()));
                }
            }
        }
    }
}
