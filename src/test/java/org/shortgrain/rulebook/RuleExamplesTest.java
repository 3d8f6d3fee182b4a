package org.shortgrain.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.yaml.snakeyaml.Yaml;

/** The harness for examples of rules, held against the small rulebook; and that it fails when it should. */
class RuleExamplesTest {

    @TempDir
    private Path temporary;
    private Path folder;
    private Rulebook small;

    @BeforeEach
    void compile() throws RulebookException {
        folder = RulebookFixture.copy("small", temporary.resolve("small"));
        small = Rulebook.from(folder, new RuleCache(Path.of("target", "test-cache", "rulebooks").toAbsolutePath()));
    }

    /** Reads {@code features: [{id, hoop, wet}]} into bores. */
    private Set<String> raised(String yaml) {
        Map<String, List<Map<String, Object>>> part = new Yaml().load(yaml);
        List<Bore> bores = part.get("features").stream().map(bore -> Bore.of((String) bore.get("id"),
                ((Number) bore.get("hoop")).doubleValue(), (boolean) bore.get("wet"))).toList();
        return small.judge(bores, Applicability.toAll(), List.of()).raised();
    }

    private RuleExamples examples() {
        return new RuleExamples(small.rules(), folder.resolve("examples"), this::raised);
    }

    @TestFactory
    Stream<DynamicTest> everyRuleOfTheSmallRulebookKeepsItsExamples() {
        return examples().tests();
    }

    private List<String> failing() {
        List<String> failures = new ArrayList<>();
        examples().tests().forEach(test -> {
            try {
                test.getExecutable().execute();
            } catch (Throwable failure) {
                failures.add(test.getDisplayName() + ": " + failure.getMessage());
            }
        });
        return failures;
    }

    private void write(String example, String text) throws IOException {
        Files.writeString(folder.resolve("examples").resolve(example), text);
    }

    private void assertFails(String start) {
        List<String> failures = failing();
        assertEquals(1, failures.size(), failures::toString);
        assertTrue(failures.get(0).startsWith(start), failures::toString);
    }

    @Test
    void aRuleWithoutAnExampleFails() throws IOException {
        Files.delete(folder.resolve("examples").resolve("WATER-01.quiet.yaml"));
        assertFails("WATER-01 is quiet on its near miss: no example ");
    }

    @Test
    void aTriggerThatDoesNotTriggerFails() throws IOException {
        write("WATER-01.trigger.yaml", "features: {LUG: {hoop: 1}}");
        assertFails("WATER-01 speaks of its trigger: WATER-01 is silent");
    }

    @Test
    void aTriggerThatTriggersSomethingElseTooFailsUnlessItSaysSo() throws IOException {
        String both = "features: {LUG: {wet: true}, PIN: {hoop: 500, wet: false}}";
        write("WATER-01.trigger.yaml", both);
        assertFails("WATER-01 speaks of its trigger: rules beside WATER-01");
        write("WATER-01.trigger.yaml", "# also: STRESS-01\n" + both);
        assertEquals(List.of(), failing());
    }

    @Test
    void aNearMissThatIsNoMissFails() throws IOException {
        write("WATER-01.quiet.yaml", "features: {LUG: {wet: true, hoop: 2}}");
        assertFails("WATER-01 is quiet on its near miss: WATER-01 speaks");
    }

    @Test
    void anExampleThatChangesNothingFails() throws IOException {
        write("WATER-01.quiet.yaml", "features: {LUG: {wet: false}}");
        assertFails("WATER-01 is quiet on its near miss: WATER-01.quiet.yaml changes nothing");
    }

    @Test
    void aFurtherNearMissIsHeldLikeTheFirst() throws IOException {
        write("WATER-01.quiet-2.yaml", "features: {LUG: {wet: false, hoop: 3}}");
        assertEquals(List.of(), failing());
        write("WATER-01.quiet-2.yaml", "features: {LUG: {wet: true, hoop: 3}}");
        assertFails("WATER-01 is quiet on WATER-01.quiet-2.yaml: WATER-01 speaks");
    }

    @Test
    void aNearMissMayStartFromTheTrigger() throws IOException {
        String trigger = Files.readString(folder.resolve("examples").resolve("WATER-01.trigger.yaml"));
        assertTrue(trigger.contains("wet: true"), trigger);
        write("WATER-01.quiet-2.yaml", "# from: trigger\nfeatures: {LUG: {hoop: 3}}");
        assertFails("WATER-01 is quiet on WATER-01.quiet-2.yaml: WATER-01 speaks");
        write("WATER-01.quiet-2.yaml", "# from: trigger\nfeatures: {LUG: {wet: false, hoop: 3}}");
        assertEquals(List.of(), failing());
    }

    @Test
    void aFurtherTriggerIsHeldLikeTheFirst() throws IOException {
        write("WATER-01.trigger-2.yaml", "features: {LUG: {wet: true, hoop: 4}}");
        assertEquals(List.of(), failing());
        write("WATER-01.trigger-2.yaml", "features: {LUG: {wet: false, hoop: 4}}");
        assertFails("WATER-01 speaks of WATER-01.trigger-2.yaml: WATER-01 is silent");
    }

    @Test
    void anExampleWithoutARuleFails() throws IOException {
        write("WATER-77.quiet.yaml", "features: {LUG: {wet: true}}");
        assertFails("every example belongs to a rule");
    }

    @Test
    void aRulebookWithoutABaseFails() throws IOException {
        Files.delete(folder.resolve("examples").resolve("base.yaml"));
        assertThrows(Throwable.class, () -> examples().tests().findFirst().orElseThrow().getExecutable().execute());
    }
}
