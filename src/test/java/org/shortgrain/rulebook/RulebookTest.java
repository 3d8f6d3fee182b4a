package org.shortgrain.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.shortgrain.part.Location;
import org.shortgrain.review.Factor;
import org.shortgrain.review.Finding;
import org.shortgrain.review.Grade;
import org.shortgrain.review.RuleUse;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.SourceStatus;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RulebookTest {

    private static final List<String> FEATURES = List.of("LUG-B", "LUG-A");

    private Rulebook small;

    @BeforeAll
    void compile(@TempDir Path cache) throws RulebookException {
        small = Rulebook.from(RulebookFixture.folder("small"), new RuleCache(cache.resolve("rulebooks")));
    }

    private Outcome judge(Object... facts) {
        return small.judge(List.of(facts), Applicability.toAll(), FEATURES);
    }

    @Test
    void rulesComeWithAllThatStandsOnThemSortedBySubjectAndNumber() {
        assertEquals(List.of("STRESS-01", "STRESS-02", "WATER-01", "WATER-02", "WATER-03"),
                small.rules().stream().map(RuleInfo::id).toList());
        assertEquals(new RuleInfo("STRESS-01", "Bore under lasting tension", Factor.STRESS, Grade.CONDITION,
                List.of("forging"), List.of(new Citation("handbook", "1.2", SourceStatus.READ),
                        new Citation("note", "", SourceStatus.MEMORY)),
                "Tension that lasts opens a crack; \"lasting\" means for weeks.",
                List.of("Reduce the interference", "Shrink the bush in"), List.of(), "stress.drl"),
                small.rule("STRESS-01").orElseThrow());
        assertEquals("water-traps.drl", small.rule("WATER-01").orElseThrow().file());
        assertEquals("test 1", small.edition());
    }

    @Test
    void aFindingCarriesTheRuleTheStatementTheEvidenceAndThePlace() {
        Finding finding = judge(Bore.of("LUG-A", 150, false)).findings().get(0);
        RuleInfo rule = small.rule("STRESS-01").orElseThrow();
        assertEquals(new Finding("F-01", "STRESS-01", Grade.CONDITION, Factor.STRESS, Optional.of("LUG-A"),
                rule.title(), "The bore carries 150.0 MPa.", List.of("hoop tension 150.0 MPa"), rule.why(),
                rule.remedies(), rule.sources(), List.of(new Location("/features/LUG-A", 10, 3)), List.of(), false),
                finding);
    }

    @Test
    void oneCauseGivesOneFindingWithTheOthersFoldedIn() {
        Outcome outcome = judge(Bore.of("LUG-A", 150, true));
        assertEquals(1, outcome.findings().size());
        Finding finding = outcome.findings().get(0);
        assertEquals("STRESS-02", finding.rule());
        assertEquals(List.of("STRESS-01", "WATER-01"), finding.foldedIn());
        assertEquals(Set.of("hoop tension 150.0 MPa", "not drained"), Set.copyOf(finding.evidence()));
        assertEquals(Set.of("STRESS-01", "STRESS-02", "WATER-01"), outcome.raised());
    }

    @Test
    void whatIsRaisedAtAnotherPlaceIsNotFoldedIn() {
        List<Finding> findings = judge(Bore.of("LUG-A", 150, true), Bore.of("LUG-B", 150, false)).findings();
        assertEquals(List.of("STRESS-02 LUG-A", "STRESS-01 LUG-B"),
                findings.stream().map(one -> one.rule() + " " + one.feature().orElse("")).toList());
    }

    @Test
    void whatARuleSaysOfSeveralPlacesBecauseOfTheSameLineIsSaidOnceWithAllPlaces() {
        Location shared = new Location("/inspection", 4, 1);
        List<Finding> findings = judge(new Bore("LUG-A", 150, false, shared), new Bore("LUG-B", 150, false, shared))
                .findings();
        assertEquals(1, findings.size(), () -> "" + findings);
        assertEquals(Optional.empty(), findings.get(0).feature());
        assertEquals(List.of("at LUG-B, LUG-A", "hoop tension 150.0 MPa"), findings.get(0).evidence());
        assertEquals(List.of(shared), findings.get(0).at());
    }

    @Test
    void whatARuleSaysOfSeveralPlacesBecauseOfALineOfEachStaysApart() {
        assertEquals(2, judge(Bore.of("LUG-A", 150, false), Bore.of("LUG-B", 150, false)).findings().size());
    }

    @Test
    void findingsAreSortedByGradeRuleAndPlaceWhateverTheOrderOfFacts() {
        List<Bore> bores = new ArrayList<>(List.of(Bore.of("LUG-A", 150, false), Bore.of("LUG-B", 150, false),
                Bore.of("LUG-C", 20, true), Bore.of("LUG-D", 120, true)));
        List<Finding> first = small.judge(bores, Applicability.toAll(), FEATURES).findings();
        assertEquals(List.of("F-01 STRESS-02 LUG-D", "F-02 STRESS-01 LUG-B", "F-03 STRESS-01 LUG-A",
                "F-04 WATER-01 LUG-C"),
                first.stream().map(one -> one.id() + " " + one.rule() + " " + one.feature().orElse("")).toList());
        Collections.reverse(bores);
        assertEquals(first, small.judge(bores, Applicability.toAll(), FEATURES).findings());
    }

    @Test
    void aRuleThatNobodyHasReadASourceForCannotObject() {
        Finding finding = judge(Bore.of("LUG-A", 950, true)).findings().stream()
                .filter(one -> one.rule().equals("WATER-02")).findFirst().orElseThrow();
        assertEquals(Grade.CONDITION, finding.grade());
        assertTrue(finding.needsConfirmation());
        assertTrue(finding.statement().contains("confirm against the source"), finding.statement());
        assertEquals(Grade.OBJECTION, small.rule("WATER-02").orElseThrow().grade());
    }

    @Test
    void whatAsksIsKeptApartFromWhatFinds() {
        Outcome outcome = judge();
        assertEquals(List.of(), outcome.findings());
        assertEquals(List.of("WATER-03"), outcome.questions().stream().map(Finding::rule).toList());
        assertEquals(Optional.empty(), outcome.questions().get(0).feature());
    }

    @Test
    void everyRuleIsRaisedAppliedOrNotApplicableWithTheReason() {
        Outcome outcome = small.judge(List.of(Bore.of("LUG-A", 10, true)), tag -> tag.equals("forging")
                ? Optional.of("the part is not a forging") : Optional.empty(), FEATURES);
        assertEquals(Set.of("WATER-01"), outcome.raised());
        assertEquals(List.of(new RuleUse("STRESS-01", "Bore under lasting tension",
                "Not asked: the part is not a forging.")), outcome.notApplicable());
        assertEquals(List.of("STRESS-02", "WATER-02", "WATER-03"),
                outcome.applied().stream().map(RuleUse::rule).toList());
    }

    @Test
    void aRuleThatSpokeIsNeverCalledNotApplicable() {
        Outcome outcome = small.judge(List.of(Bore.of("LUG-A", 150, false)),
                tag -> Optional.of("nothing applies"), FEATURES);
        assertEquals(Set.of("STRESS-01"), outcome.raised());
        assertFalse(outcome.notApplicable().stream().anyMatch(one -> one.rule().equals("STRESS-01")));
    }

    @Test
    void manyThreadsMayUseOneRulebook() throws Exception {
        Outcome expected = judge(Bore.of("LUG-A", 150, true), Bore.of("LUG-B", 150, false));
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            Callable<Outcome> job = () -> judge(Bore.of("LUG-A", 150, true), Bore.of("LUG-B", 150, false));
            for (Future<Outcome> outcome : threads.invokeAll(Collections.nCopies(200, job))) {
                assertEquals(expected, outcome.get());
            }
        } finally {
            threads.shutdownNow();
        }
    }

    @Test
    void aFactThatARuleFailsOnIsAFaultOfTheRulebook() {
        RuleFailedException failure = assertThrows(RuleFailedException.class,
                () -> judge(new Bore("LUG-A", 150, true, null)));
        assertTrue(failure.getMessage().startsWith("the rulebook fails on this part"), failure.getMessage());
    }

    @Test
    void theShippedRulebookLoadsFromClassesMadeByTheBuild() {
        Rulebook shipped = Rulebook.shipped();
        assertEquals(shipped.files().sha256(), shipped.sha256());
        assertTrue(shipped.sha256().matches("[0-9a-f]{64}"));
        assertFalse(shipped.edition().isBlank());
    }

    @Test
    void theManifestOfTheShippedRulebookIsThatOfTheFolderItWasBuiltFrom() throws RulebookException {
        assertEquals(RulebookFiles.in(Path.of("rules")).manifest(), RulebookFiles.shipped().manifest());
    }
}
