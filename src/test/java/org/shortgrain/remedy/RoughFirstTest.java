package org.shortgrain.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shortgrain.assessment.Knowledge;
import org.shortgrain.assessment.Reviewer;
import org.shortgrain.assessment.Trials;
import org.shortgrain.assessment.Wording;
import org.shortgrain.part.RouteStep;
import org.shortgrain.part.reader.EditableDescription;

/** Rough machining before the heat treatment: card, section at quench, allowance and bow. Lengths by own arithmetic. */
class RoughFirstTest {

    private static final Trials TRIALS = new Trials(new Reviewer(Knowledge.shipped(), Wording.shipped(), "test"));

    private static String keel() {
        return text("keel-step-fitting");
    }

    private static String text(String sample) {
        try {
            return Files.readString(Path.of("sample-reviews", sample + ".yaml"));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static String ofLength(String length) {
        return keel().replaceFirst("\nform:\n", "\nform:\n  length: " + length + "\n");
    }

    private static Subject subject(String text) {
        Trials.Trial trial = TRIALS.of(EditableDescription.of(text).orElseThrow()).orElseThrow();
        return new Subject(TRIALS, trial, TRIALS.material(trial));
    }

    private static Proposals proposals(String text) {
        return RoughFirst.of(subject(text));
    }

    private static Candidate candidate(String text) {
        return proposals(text).candidates().get(0);
    }

    private static Trials.Trial changed(String text) {
        EditableDescription part = EditableDescription.of(text).orElseThrow();
        return TRIALS.of(part.with(candidate(text).write().apply(part))).orElseThrow();
    }

    private static boolean says(List<String> notes, String... words) {
        return notes.stream().anyMatch(note -> List.of(words).stream().allMatch(note::contains));
    }

    /** 16 and 20 mm are cut after the quench; 34 mm go before it and 2 mm stay, and 40 mm finished are 44 mm at quench. */
    @Test
    void theRoughCutMovesBeforeTheSolutionTreatmentAndLeavesASkin() {
        Trials.Trial after = changed(keel());
        List<RouteStep> route = after.description().route().candidates().get(0);
        assertEquals(List.of("10", "30", "20", "21", "25", "40"), route.stream().limit(6).map(one -> one.op().single().orElseThrow())
                .toList());
        assertEquals(34e-3, route.get(1).removes().single().orElseThrow().highest(), 1e-9);
        assertEquals(2e-3, route.get(5).removes().single().orElseThrow().highest(), 1e-9);
        assertEquals(44e-3, after.description().form().single().orElseThrow().heatTreatThickness().single().orElseThrow().highest(), 1e-9);
        var groove = after.description().features().candidates().get(0).get(0);
        assertEquals(2e-3, groove.asQuenchedDepth().single().orElseThrow().highest(), 1e-9);
        assertEquals(44e-3, groove.sectionAsQuenched().single().orElseThrow().highest(), 1e-9);
        List<String> notes = candidate(keel()).notes();
        assertTrue(says(notes, "Card now: 10 saw, 20 solution heat treat"), notes.toString());
        assertTrue(says(notes, "Proposed card: 10 saw, 30 rough machine 34.0 mm (moved), 20 solution heat treat", "40 finish machine 2.0 mm"),
                notes.toString());
        assertTrue(says(notes, "Section at quench: 76.0 mm -> 44.0 mm"), notes.toString());
    }

    @Test
    void whereOneCutDoesAllItIsSplitAndTheRoughCutIsANewOperation() {
        List<RouteStep> route = changed(text("rudder-horn-bracket")).description().route().candidates().get(0);
        assertEquals("10A", route.get(0).op().single().orElseThrow());
        assertEquals(23e-3, route.get(0).removes().single().orElseThrow().highest(), 1e-9);
        assertEquals(2e-3, route.get(4).removes().single().orElseThrow().highest(), 1e-9);
    }

    /** Bow goes with the square of the length: what 2 mm clean up over 300 mm, they do not over 870 mm. Over 3 m nothing does. */
    @Test
    void theAllowanceGrowsInStepsUntilItCleansUpTheBow() {
        Allowance usual = allowance(ofLength("300 mm"));
        assertEquals(2e-3, usual.stock());
        assertEquals(Optional.of(true), usual.enough());
        Allowance more = allowance(ofLength("870 mm"));
        assertTrue(more.stock() > 2e-3 && more.enough().orElseThrow(), more.toString());
        assertTrue(says(more.notes(), "the usual 2.0 mm is not"), more.notes().toString());
        Subject subject = subject(ofLength("870 mm"));
        RoughBow bow = new RoughBow(subject, subject.route().get(2));
        for (double section : List.of(40e-3, 9e-3)) {
            assertTrue(((RoughBow.Answer.Estimated) bow.of(section, more.stock())).needed() <= more.stock());
        }
        assertTrue(List.of(40e-3, 9e-3).stream().anyMatch(section ->
                ((RoughBow.Answer.Estimated) bow.of(section, more.stock() - 0.5e-3)).needed() > more.stock() - 0.5e-3));
    }

    private static Allowance allowance(String text) {
        Subject subject = subject(text);
        return Allowance.of(List.of(40e-3, 9e-3), new RoughBow(subject, subject.route().get(2))).orElseThrow();
    }

    @Test
    void aPartThatNoAllowanceCleansUpIsToBeStraightened() {
        assertTrue(says(candidate(ofLength("3 m")).notes(), "the part must be straightened before ageing"));
    }

    @Test
    void theBowIsNotEstimatedWithoutTheLengthAndTheDatumIsNamed() {
        assertTrue(says(candidate(keel()).notes(), "cannot be estimated", "form/length"));
        assertTrue(says(candidate(ofLength("300 mm")).notes(), "Bow of the rough section of 44.0 mm over 300 mm"));
    }

    /** 2 mm on 6 mm finished are 2/10, not below a fifth; 1.5 mm are 1.5/9. */
    @Test
    void aThinSectionIsLeftLessAndOneOfAMillimetreNothing() {
        assertEquals(1.5e-3, allowance(keel(), 6e-3).orElseThrow().stock());
        assertTrue(says(allowance(keel(), 6e-3).orElseThrow().notes(), "so less is left"));
        assertEquals(Optional.empty(), allowance(keel(), 1e-3));
    }

    private static Optional<Allowance> allowance(String text, double section) {
        Subject subject = subject(text);
        return Allowance.of(List.of(section), new RoughBow(subject, subject.route().get(2)));
    }

    /** The thicker section of the weaker metal is what is quenched: 40 mm x r + 2 x 2 mm. */
    @Test
    void togetherWithAnotherMetalTheThickenedSectionIsQuenched() {
        Subject subject = subject(keel());
        EditableDescription part = EditableDescription.of(keel()).orElseThrow();
        Candidate metal = MetalChanges.of(subject).candidates().stream().filter(one -> one.words().startsWith("7075-T7351"))
                .findFirst().orElseThrow();
        EditableDescription thicker = part.with(metal.write().apply(part));
        EditableDescription both = thicker.with(candidate(keel()).write().apply(thicker));
        double ratio = metal.price().orElseThrow().ratio();
        assertEquals(40e-3 * ratio + 4e-3, TRIALS.read(both).orElseThrow().features().candidates().get(0).get(0).sectionAsQuenched()
                .single().orElseThrow().highest(), 2e-6);
    }
}
