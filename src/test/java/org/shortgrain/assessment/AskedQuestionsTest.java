package org.shortgrain.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.shortgrain.part.reader.DescriptionValue;
import org.shortgrain.part.reader.EditableDescription;
import org.shortgrain.part.reader.JsonPatch;
import org.shortgrain.review.Question;
import org.shortgrain.rulebook.ExampleFile;

/**
 * Every question that a rule, the reader or a computation can raise, as far as the examples of the rules, the samples and
 * both with each datum taken away or left unknown raise them: which of them no answer can be tried to.
 */
class AskedQuestionsTest {

    private static final Path EXAMPLES = Path.of("rules", "examples");
    private static final Trials TRIALS = new Trials(new Reviewer(Knowledge.shipped(), Wording.shipped(), "test"));
    private static final AdmissibleAnswers ANSWERS = new AdmissibleAnswers(TRIALS);

    /** The questions of all parts: who asks at what place, to one example of it and how many answers it has. */
    private static final Map<String, Asked> ASKED = new TreeMap<>();

    private record Asked(String text, String of, int without, int with) {
    }

    @BeforeAll
    static void collect() throws IOException {
        for (ExampleFile example : ExampleFile.in(EXAMPLES)) {
            ask(example.name(), example.description(name -> read(EXAMPLES.resolve(name))));
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

    private static void ask(String name, String text) {
        ask(name, EditableDescription.of(text).orElseThrow());
    }

    private static void ask(String name, EditableDescription part) {
        TRIALS.of(part).ifPresent(trial -> trial.asked().forEach(question -> {
            String at = question.at().path().replaceAll("/\\d+", "/*");
            boolean none = ANSWERS.to(question, trial, part).isEmpty();
            ASKED.merge(question.rule().orElse("-") + " " + at, new Asked(question.text(), name, none ? 1 : 0, none ? 0 : 1),
                    (a, b) -> new Asked(a.without() > 0 ? a.text() : b.text(), a.without() > 0 ? a.of() : b.of(),
                            a.without() + b.without(), a.with() + b.with()));
        }));
    }

    @Test
    void dump() {
        ASKED.forEach((key, one) -> System.out.println((one.without() > 0 ? "NONE " : "ok   ") + key + " | " + one));
        assertEquals("", "");
    }
}
