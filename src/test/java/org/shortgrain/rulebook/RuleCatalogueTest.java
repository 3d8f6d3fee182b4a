package org.shortgrain.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RuleCatalogueTest {

    private Rulebook small;
    private RuleCatalogue catalogue;

    @BeforeAll
    void compile() throws RulebookException {
        small = Rulebook.from(RulebookFixture.folder("small"),
                new RuleCache(Path.of("target", "test-cache", "rulebooks").toAbsolutePath()));
        catalogue = new RuleCatalogue(small, id -> id.equals("handbook")
                ? Optional.of("H-1, A handbook that was invented for the tests of the rule catalogue, edition 3, 1998")
                : Optional.empty());
    }

    @Test
    void theListHasOneLineForEachRule() {
        assertEquals("""
                Rulebook test 1, 5 rules
                SHA-256 %s

                stress.drl
                  STRESS-01     condition  Bore under lasting tension
                  STRESS-02     objection  Stressed bore holds water

                water-traps.drl
                  WATER-01      advice     Water stands in a bore
                  WATER-02      condition  Very high tension in water
                  WATER-03      question   No bore described
                """.formatted(small.sha256()), catalogue.list());
    }

    @Test
    void thePageOfARuleShowsAllThatStandsOnItAndItsExamples() {
        assertEquals("""
                STRESS-01  Bore under lasting tension
                condition, stress, stress.drl
                Asked of: forging

                Why
                  Tension that lasts opens a crack; "lasting" means for weeks.

                What would mend it, the best first
                  - Reduce the interference
                  - Shrink the bush in

                Sources
                  handbook, 1.2 (read)
                    H-1, A handbook that was invented for the tests of the rule catalogue,
                    edition 3, 1998
                  note (memory; confirm before anything rests on it)

                An example that it speaks of (a change of examples/base.yaml)
                    features: {LUG: {hoop: 101}}

                A near miss that it is quiet on (a change of examples/base.yaml)
                    features: {LUG: {hoop: 100}}
                """, catalogue.page("stress-01").orElseThrow());
    }

    @Test
    void thePageSaysWhenAnObjectionIsLoweredAndWhatARuleStandsFor() {
        assertTrue(catalogue.page("WATER-02").orElseThrow().contains(
                "objection, lowered to condition until somebody has read a source for it"));
        assertTrue(catalogue.page("STRESS-02").orElseThrow().contains("Stands for: STRESS-01, WATER-01"));
        assertEquals(Optional.empty(), catalogue.page("STRESS-99"));
    }

    @Test
    void noLineOfAPageIsWiderThanEightyColumns() {
        small.rules().forEach(rule -> catalogue.page(rule.id()).orElseThrow().lines()
                .filter(line -> !line.startsWith("    ")).forEach(line -> assertTrue(line.length() <= 80, line)));
    }
}
