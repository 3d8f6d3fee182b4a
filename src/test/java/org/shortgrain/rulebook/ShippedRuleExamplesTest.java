package org.shortgrain.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.shortgrain.assessment.Knowledge;
import org.shortgrain.assessment.Reviewer;
import org.shortgrain.assessment.Wording;
import org.shortgrain.part.reader.PartReader;
import org.shortgrain.part.reader.Problem;
import org.shortgrain.part.reader.Reading;
import org.shortgrain.review.Finding;
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

    private static Knowledge knowledge;
    private static Reviewer reviewer;

    @BeforeAll
    static void load() {
        knowledge = Knowledge.shipped();
        reviewer = new Reviewer(knowledge, Wording.shipped(), "test");
    }

    private static Review review(String yaml) {
        Reading reading = new PartReader(knowledge.vocabularies()).read("example.yaml",
                yaml.getBytes(StandardCharsets.UTF_8));
        if (reading instanceof Reading.Refused refused) {
            return fail(Problem.text(refused.problems()) + "\n" + yaml);
        }
        Reading.Read read = (Reading.Read) reading;
        assertEquals(List.of(), read.warnings(), "an example is read without a warning");
        return reviewer.review(read.description(), new Review.InputId("example.yaml", ""), read.paths(), "2026-01-15");
    }

    private static Set<String> raised(String yaml) {
        Review review = review(yaml);
        Set<String> raised = new TreeSet<>();
        for (Finding finding : review.findings()) {
            raised.add(finding.rule());
            raised.addAll(finding.foldedIn());
        }
        review.questions().forEach(question -> question.rule().ifPresent(raised::add));
        return raised;
    }

    @TestFactory
    Stream<DynamicTest> everyRuleSpeaksOfItsTriggerAndIsQuietOnItsNearMiss() {
        Stream<DynamicTest> tests = new RuleExamples(knowledge.rulebook().rules(), EXAMPLES,
                ShippedRuleExamplesTest::raised).tests();
        return tests.filter(test -> WANTED.stream().anyMatch(test.getDisplayName()::startsWith));
    }

    @Test
    void theBaseOfTheExamplesGivesNoFindingAboveAdvice() throws IOException {
        Review review = review(Files.readString(EXAMPLES.resolve("base.yaml")));
        List<String> grave = review.findings().stream().filter(finding -> finding.grade() != Grade.ADVICE)
                .map(finding -> finding.rule() + ": " + finding.statement()).toList();
        assertEquals(List.of(), grave);
        assertEquals(List.of(), review.questions().stream().map(question -> question.text()).toList());
    }
}
