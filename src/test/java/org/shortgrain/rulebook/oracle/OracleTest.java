package org.shortgrain.rulebook.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.shortgrain.assessment.Knowledge;
import org.shortgrain.assessment.Reviewer;
import org.shortgrain.assessment.Wording;
import org.shortgrain.part.reader.PartReader;
import org.shortgrain.part.reader.Problem;
import org.shortgrain.review.Finding;
import org.shortgrain.review.Question;
import org.shortgrain.review.Review;

/** The rulebook and the oracle, asked about the same thousand parts. */
class OracleTest {

    private static final int PARTS = 1000;
    private static final long SEED = 20_260_115L;
    /** Each rule must have had its say often enough, both ways, for the comparison to mean something. */
    private static final int LEAST = 5;

    private final Knowledge knowledge = Knowledge.shipped();
    private final PartReader reader = new PartReader(knowledge.vocabularies());
    private final Reviewer reviewer = new Reviewer(knowledge, Wording.shipped(), "test");
    private final Oracle oracle = new Oracle();

    @Test
    void theOracleKnowsFortyRulesOfTheRulebook() {
        assertTrue(oracle.rules().size() >= 40, () -> oracle.rules().size() + " rules");
        oracle.rules().forEach(id -> assertTrue(knowledge.rulebook().rule(id).isPresent(), id));
    }

    @Test
    void theRulebookAndTheOracleFindTheSameInAThousandParts() {
        Random random = new Random(SEED);
        List<String> differences = new ArrayList<>();
        Map<String, Integer> spoke = new TreeMap<>();
        for (int n = 0; n < PARTS; n++) {
            String text = GeneratedPart.next(random);
            var read = read(text);
            Said said = Said.in(reviewer.review(read.description(), new Review.InputId("part.yaml", ""), read.paths(),
                    "2026-01-15"));
            for (String rule : oracle.rules()) {
                Set<String> owed = oracle.owes(rule, read.description());
                spoke.merge(rule, owed.isEmpty() ? 0 : 1, Integer::sum);
                if (!said.agrees(rule, owed)) {
                    differences.add(rule + " owes " + owed + ", says " + said.of(rule) + " of part " + n + "\n" + text);
                }
            }
        }
        assertEquals(List.of(), differences.stream().limit(5).toList(), () -> differences.size()
                + " differences, of rules " + new TreeSet<>(differences.stream().map(one -> one.substring(0, one.indexOf(' '))).toList()));
        spoke.forEach((rule, often) -> assertTrue(often >= LEAST && often <= PARTS - LEAST,
                () -> rule + " is owed in " + often + " parts"));
    }

    private org.shortgrain.part.reader.Reading.Read read(String text) {
        var reading = reader.read("part.yaml", text.getBytes(StandardCharsets.UTF_8));
        if (reading instanceof org.shortgrain.part.reader.Reading.Refused refused) {
            throw new AssertionError(Problem.text(refused.problems()) + "\n" + text);
        }
        return (org.shortgrain.part.reader.Reading.Read) reading;
    }

    /**
     * Where rules spoke in a review.
     *
     * @param at       rule to places; a rule that was folded into a finding at a place spoke at that place
     * @param anywhere rules that were folded into a finding on the whole part, which does not tell the place
     */
    private record Said(Map<String, Set<String>> at, Set<String> anywhere) {

        static Said in(Review review) {
            Said said = new Said(new TreeMap<>(), new TreeSet<>());
            for (Finding finding : review.findings()) {
                said.add(finding.rule(), finding.feature().orElse(Oracle.WHOLE_PART));
                for (String folded : finding.foldedIn()) {
                    if (finding.feature().isEmpty()) {
                        said.anywhere().add(folded);
                    } else {
                        said.add(folded, finding.feature().get());
                    }
                }
            }
            for (Question question : review.questions()) {
                question.rule().ifPresent(rule -> said.add(rule, question.feature().orElse(Oracle.WHOLE_PART)));
            }
            return said;
        }

        private void add(String rule, String place) {
            at.computeIfAbsent(rule, one -> new TreeSet<>()).add(place);
        }

        Set<String> of(String rule) {
            return at.getOrDefault(rule, Set.of());
        }

        boolean agrees(String rule, Set<String> owed) {
            return anywhere.contains(rule) ? !owed.isEmpty() && owed.containsAll(of(rule)) : of(rule).equals(owed);
        }
    }
}
