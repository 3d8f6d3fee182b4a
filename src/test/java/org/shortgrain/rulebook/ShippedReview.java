package org.shortgrain.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.shortgrain.assessment.Knowledge;
import org.shortgrain.assessment.Reviewer;
import org.shortgrain.assessment.Wording;
import org.shortgrain.part.reader.PartReader;
import org.shortgrain.part.reader.Problem;
import org.shortgrain.part.reader.Reading;
import org.shortgrain.review.Finding;
import org.shortgrain.review.Review;

/** The whole review of a description, from text to findings, with the knowledge that a test names. */
final class ShippedReview {

    private final Knowledge knowledge;
    private final Reviewer reviewer;

    ShippedReview(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.reviewer = new Reviewer(knowledge, Wording.shipped(), "test");
    }

    /** {@return the review with the rulebook and tables that ship} */
    static ShippedReview ofShipped() {
        return new ShippedReview(Knowledge.shipped());
    }

    Knowledge knowledge() {
        return knowledge;
    }

    /** {@return what was read; a description that is refused, or read with a warning, fails the test} */
    Reading.Read read(String yaml) {
        Reading.Read read = readWithWarnings(yaml);
        assertEquals(List.of(), read.warnings(), "a description of a test is read without a warning");
        return read;
    }

    private Reading.Read readWithWarnings(String yaml) {
        Reading reading = new PartReader(knowledge.vocabularies()).read("part.yaml", yaml.getBytes(StandardCharsets.UTF_8));
        if (reading instanceof Reading.Refused refused) {
            return fail(Problem.text(refused.problems()) + "\n" + yaml);
        }
        return (Reading.Read) reading;
    }

    Review review(String yaml) {
        return review(read(yaml));
    }

    /** {@return the review of a description of which the reader may warn} */
    Review reviewWithWarnings(String yaml) {
        return review(readWithWarnings(yaml));
    }

    private Review review(Reading.Read read) {
        return reviewer.review(read.description(), new Review.InputId("part.yaml", ""), read.paths(), "2026-01-15");
    }

    /** {@return ids of the rules that speak in a review, as findings or questions of their own or folded in} */
    static Set<String> raised(Review review) {
        Set<String> raised = new TreeSet<>();
        for (Finding finding : review.findings()) {
            raised.add(finding.rule());
            raised.addAll(finding.foldedIn());
        }
        review.questions().forEach(question -> question.rule().ifPresent(raised::add));
        return raised;
    }
}
