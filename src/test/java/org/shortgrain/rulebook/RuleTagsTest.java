package org.shortgrain.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.shortgrain.assessment.Knowledge;
import org.shortgrain.assessment.Matter;
import org.shortgrain.assessment.Reviewer;
import org.shortgrain.assessment.Wording;

/**
 * The tags of a rule ({@code @applies}) say to an auditor of which parts it was not asked. They do not gate the rule: its
 * conditions must imply them. Every example is reviewed, and no rule may speak of a part that its tags leave out.
 */
class RuleTagsTest {

    private static final Path EXAMPLES = Path.of("rules", "examples");

    @Test
    void noRuleSpeaksOfAPartThatItsTagsLeaveOut() throws IOException {
        Knowledge knowledge = Knowledge.shipped();
        ShippedReview reading = new ShippedReview(knowledge);
        Reviewer reviewer = new Reviewer(knowledge, Wording.shipped(), "test");
        Set<String> tagged = new TreeSet<>();
        Set<String> wrong = new TreeSet<>();
        for (ExampleFile example : ExampleFile.in(EXAMPLES)) {
            Matter matter = reviewer.matter(reading.read(example.description(RuleTagsTest::text)).description());
            for (String id : matter.ask(knowledge.rulebook()).raised()) {
                for (String tag : knowledge.rulebook().rule(id).orElseThrow().applies()) {
                    tagged.add(id);
                    matter.applicability().keepsOut(tag).ifPresent(reason ->
                            wrong.add(id + " [" + tag + "] speaks in " + example.name() + ": " + reason));
                }
            }
        }
        assertEquals(Set.of(), wrong);
        long withTags = knowledge.rulebook().rules().stream().filter(rule -> !rule.applies().isEmpty()).count();
        assertTrue(tagged.size() == withTags, () -> tagged.size() + " of " + withTags + " rules with tags spoke");
    }

    private static String text(String example) {
        try {
            return Files.readString(EXAMPLES.resolve(example));
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }
}
