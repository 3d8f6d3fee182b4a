package org.shortgrain.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.shortgrain.review.Question;
import org.shortgrain.review.Review;
import org.shortgrain.review.Verdict;

/**
 * Planning cards as a checker meets them, invented: whole sequences rather than the smallest change. Each file in
 * {@code cards/} changes the base part of the examples; its first lines say what is the matter, which rules owe a word and
 * which must stay quiet. Both were written down before the rulebook was asked.
 */
class CardCasesTest {

    private static final Path CARDS = Path.of("src", "test", "resources", "cards");
    private static final Path BASE = Path.of("rules", "examples", "base.yaml");

    private static ShippedReview reviewer;

    @BeforeAll
    static void load() {
        reviewer = ShippedReview.ofShipped();
    }

    @TestFactory
    Stream<DynamicTest> eachCardRaisesWhatIsTheMatterAndNothingThatIsNot() throws IOException {
        try (Stream<Path> files = Files.list(CARDS)) {
            List<Path> cards = files.sorted().toList();
            assertFalse(cards.isEmpty());
            return cards.stream().map(card -> DynamicTest.dynamicTest(
                    card.getFileName().toString().replace(".yaml", "").replace('-', ' '), () -> check(card)));
        }
    }

    private static void check(Path card) throws IOException {
        String change = Files.readString(card);
        Set<String> raised = ShippedReview.raised(reviewer.review(ExamplePatch.merged(Files.readString(BASE), change)));
        Set<String> owed = named(change, "speaks");
        owed.removeAll(raised);
        assertEquals(Set.of(), owed, () -> "rules that are silent; raised: " + raised);
        Set<String> wrong = named(change, "quiet");
        wrong.retainAll(raised);
        assertEquals(Set.of(), wrong, "rules that speak of what is in order");
    }

    @Test
    void anOperationThatNobodyKnowsIsAskedForByItsNumber() throws IOException {
        Review review = ofCard("process per spec 123");
        assertEquals(1, review.questions().size(), () -> "" + review.questions());
        assertEquals("What is done in op 20 (process per spec 123)?", review.questions().get(0).text());
        assertEquals(Verdict.CANNOT_BE_JUDGED, review.verdict());
    }

    @Test
    void anOperationThatIsMisspeltIsAskedForWithTheNearestThatIsKnown() throws IOException {
        assertEquals(List.of("What is done in op 20 (shott pen)? The nearest operation of the list is shot peen."),
                ofCard("shott pen").questions().stream().map(Question::text).toList());
    }

    private static Review ofCard(String operation) throws IOException {
        return reviewer.reviewWithWarnings(ExamplePatch.merged(Files.readString(BASE),
                "route: {\"20\": {do: \"" + operation + "\"}}"));
    }

    private static Set<String> named(String text, String word) {
        Matcher line = Pattern.compile("(?m)^# " + word + ":(.*)$").matcher(text);
        if (!line.find()) {
            throw new IllegalArgumentException("no line '# " + word + ":'");
        }
        Set<String> ids = new TreeSet<>(Arrays.asList(line.group(1).strip().split(" +")));
        ids.remove("");
        return ids;
    }
}
