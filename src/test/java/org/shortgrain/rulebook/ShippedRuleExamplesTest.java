package org.shortgrain.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.shortgrain.review.Grade;
import org.shortgrain.review.Review;

/**
 * Every rule of the shipped rulebook against its two examples, through the whole review.
 *
 * <p>{@code -Dexamples=DRAINAGE,SEALING} runs the rules whose ids begin so.
 */
class ShippedRuleExamplesTest {

    private static final Path EXAMPLES = Path.of("rules", "examples");
    private static final List<String> WANTED = List.of(System.getProperty("examples", "").split(","));

    private static ShippedReview reviewer;

    @BeforeAll
    static void load() {
        reviewer = ShippedReview.ofShipped();
    }

    private static Set<String> raised(String yaml) {
        return ShippedReview.raised(reviewer.review(yaml));
    }

    @TestFactory
    Stream<DynamicTest> everyRuleSpeaksOfItsTriggerAndIsQuietOnItsNearMiss() {
        Stream<DynamicTest> tests = new RuleExamples(reviewer.knowledge().rulebook().rules(), EXAMPLES,
                ShippedRuleExamplesTest::raised).tests();
        return tests.filter(test -> WANTED.stream().anyMatch(test.getDisplayName()::startsWith));
    }

    @Test
    void theBaseOfTheExamplesGivesNoFindingAboveAdvice() throws IOException {
        Review review = reviewer.review(Files.readString(EXAMPLES.resolve("base.yaml")));
        List<String> grave = review.findings().stream().filter(finding -> finding.grade() != Grade.ADVICE)
                .map(finding -> finding.rule() + ": " + finding.statement()).toList();
        assertEquals(List.of(), grave);
        assertEquals(List.of(), review.questions().stream().map(question -> question.text()).toList());
    }
}
