package org.shortgrain.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shortgrain.assessment.Knowledge;
import org.shortgrain.assessment.Reviewer;
import org.shortgrain.assessment.Trials;
import org.shortgrain.assessment.Wording;
import org.shortgrain.part.reader.EditableDescription;
import org.shortgrain.part.reader.JsonPatch;
import org.shortgrain.part.reader.PartReader;
import org.shortgrain.part.reader.Problem;
import org.shortgrain.part.reader.Reading;
import org.shortgrain.reference.MaterialAnswer;
import org.shortgrain.reference.MaterialQuery;
import org.shortgrain.review.Factor;
import org.shortgrain.review.Grade;
import org.shortgrain.review.Remedies;
import org.shortgrain.review.Remedy;
import org.shortgrain.review.Review;
import org.shortgrain.review.Verdict;

/** Whether what is proposed does what it says, and is what an engineer would propose. */
class RemedyStudyTest {

    private static final Knowledge KNOWLEDGE = Knowledge.shipped();
    private static final Reviewer REVIEWER = new Reviewer(KNOWLEDGE, Wording.shipped(), "test");
    private static final PartReader READER = new PartReader(KNOWLEDGE.vocabularies());
    private static final Review.InputId INPUT = new Review.InputId("part.yaml", "");

    static Stream<Path> samples() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("sample-reviews"))) {
            return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList().stream();
        }
    }

    private static String sample(String name) {
        try {
            return Files.readString(Path.of("sample-reviews", name + ".yaml"));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static Remedies study(String text) {
        return new RemedyStudy(REVIEWER, tried -> { }).of(EditableDescription.of(text).orElseThrow(), INPUT);
    }

    private static Reading.Read read(byte[] bytes) {
        Reading reading = READER.read("part.yaml", bytes);
        if (reading instanceof Reading.Refused refused) {
            throw new AssertionError(Problem.text(refused.problems()) + "\n" + new String(bytes, StandardCharsets.UTF_8));
        }
        return (Reading.Read) reading;
    }

    private static Set<String> findings(Review review, Grade grade) {
        return review.findings().stream().filter(one -> one.grade() == grade).map(one -> grade.word() + " " + one.rule()
                + one.feature().map(id -> " at " + id).orElse("") + ": " + one.title()).collect(Collectors.toCollection(TreeSet::new));
    }

    /** The numbers are compared as computed, since both come from the same computation with the same inputs. */
    @ParameterizedTest
    @MethodSource("samples")
    void aChangeMadeAndReviewedGivesTheVerdictAndTheNumbersThatTheStudyStates(Path sample) throws IOException {
        String text = Files.readString(sample);
        EditableDescription part = EditableDescription.of(text).orElseThrow();
        Set<String> before = findings(REVIEWER.review(read(text.getBytes(StandardCharsets.UTF_8)), INPUT, "2026-01-15"),
                Grade.OBJECTION);
        for (Remedy one : study(text).remedies()) {
            byte[] changed = part.with(JsonPatch.parse(one.patch().json())).bytes();
            Review review = REVIEWER.review(read(changed), INPUT, "2026-01-15");
            assertEquals(one.verdict(), review.verdict(), one.changes().toString());
            assertEquals(one.objections(), List.copyOf(findings(review, Grade.OBJECTION)), one.changes().toString());
            assertEquals(one.conditions(), review.count(Grade.CONDITION), one.changes().toString());
            assertEquals(one.utilisation(), review.features().stream().flatMap(place -> place.directions().stream())
                    .flatMap(direction -> direction.utilisation().stream()).mapToDouble(used -> used.high()).max());
            Set<String> come = new HashSet<>(findings(review, Grade.OBJECTION));
            come.removeAll(before);
            assertTrue(one.raises().containsAll(come), "an objection that is not told: " + come);
        }
    }

    @Test
    void theStrutFittingIsClearedByAResistantTemperAndTheCoatingBeforeTheBush() {
        Remedies study = study(sample("strut-end-fitting"));
        assertEquals(Verdict.OBJECTION, study.verdict());
        assertTrue(study.cleared());
        Remedy best = study.remedies().get(0);
        assertTrue(best.clearsThePart() && best.pareto(), best.toString());
        assertTrue(best.removed().contains(Factor.MATERIAL), best.toString());
        assertTrue(study.remedies().stream().anyMatch(one -> one.clearsThePart()
                && one.changes().stream().anyMatch(change -> change.startsWith("7075-T7351 instead of 7075-T651"))),
                study.remedies().toString());
        assertFalse(study.remedies().stream().anyMatch(one -> one.changes().size() == 1 && one.clearsThePart()));
    }

    @Test
    void nothingIsProposedThicknessesAboveWhatTheTablesPrint() {
        String thick = sample("strut-end-fitting").replace("heat_treat_thickness: 63.5 mm", "heat_treat_thickness: 140 mm")
                .replace("as_quenched_depth: 30 mm", "as_quenched_depth: 60 mm");
        assertTrue(study(thick).remedies().stream().flatMap(one -> one.changes().stream())
                .noneMatch(change -> change.startsWith("7075-T7351") || change.startsWith("7475")));
        assertTrue(study(sample("strut-end-fitting")).remedies().stream().flatMap(one -> one.changes().stream())
                .anyMatch(change -> change.startsWith("7475")));
    }

    @Test
    void aPartThatNothingClearsSaysSoAndShowsTheClosest() {
        String stubborn = sample("sponson-bulkhead-tray").replace("alloy: \"7075\"", "alloy: \"2024\"")
                .replace("temper: \"T651\"", "temper: \"T351\"").replace("product: plate", "product: extrusion")
                .replace("zone: avionics_conditioned", "zone: subsea").replace("humidity: {value: 38 %, kind: measured, ref: \"bay record (invented)\"}", "humidity: moist")
                .replace("fluids: none", "fluids: [salt_water]").replace("salt: none_sealed", "salt: coastal");
        Remedies study = study(stubborn);
        assertEquals(Verdict.OBJECTION, study.verdict());
        assertFalse(study.cleared(), study.remedies().toString());
        assertTrue(org.shortgrain.report.text.RemedyText.of(study, false).contains(study.remedies().isEmpty()
                ? "None of them helps" : "None of them makes sign-off possible"));
    }

    /**
     * MIL-HDBK-5J (read through an open transcription), plate 1 to 1.5 in: 7075-T651 L Fty 69 ksi, T7351 L Fty 57 ksi, which is
     * the pair that falls most; the mass of a lug goes with it.
     */
    @Test
    void theSectionOfAnOverAgedPlateGrowsByTheStrengthThatFallsMost() {
        var part = read(sample("hatch-hinge-arm").getBytes(StandardCharsets.UTF_8)).description();
        Resized resized = Resized.of(part, plate("T651"), plate("T7351")).orElseThrow();
        assertEquals(69.0 / 57, resized.ratio(), 1e-3);
        assertEquals(resized.ratio(), resized.mass(), 1e-9);
        assertTrue(resized.governs().startsWith("Fty L"), resized.governs());
        assertEquals(0.35 * (69.0 / 57 - 1), resized.added(part).getAsDouble(), 1e-3);
    }

    @Test
    void aStrongerMetalIsNotCreditedWithAThinnerSection() {
        var part = read(sample("hatch-hinge-arm").getBytes(StandardCharsets.UTF_8)).description();
        Resized resized = Resized.of(part, plate("T7351"), plate("T651")).orElseThrow();
        assertEquals(1, resized.ratio());
        assertEquals(1, resized.mass(), 1e-9);
    }

    private static MaterialAnswer plate(String temper) {
        return KNOWLEDGE.tables().materials().lookUp(MaterialQuery.ofAlloy("7075").temper(temper).form("plate").thickness(0.0349));
    }

    @Test
    void theParetoSetHoldsTheFirstAndNoneThatAnotherBeatsInEverything() {
        Remedies study = study(sample("sponson-bulkhead-tray"));
        List<Remedy> best = study.remedies().stream().filter(Remedy::pareto).toList();
        assertTrue(best.contains(study.remedies().get(0)));
        for (Remedy one : best) {
            assertTrue(study.remedies().stream().noneMatch(other -> other.objections().size() < one.objections().size()
                    && other.conditions() < one.conditions() && other.mass() < one.mass()
                    && other.removed().size() > one.removed().size() && other.weakened().size() >= one.weakened().size()
                    && other.drawings() + other.processes() < one.drawings() + one.processes()
                    && other.firmness() > one.firmness() && (other.fits() || !one.fits())), one.toString());
        }
    }

    /** A lug of a form for which no other metal is listed, pulled by a press fit and by a gap, and nothing else. Invented. */
    private static String pulledTwice() {
        String strut = sample("strut-end-fitting").replace("product: plate", "product: bar_rolled")
                .replace("  - {op: \"40\", do: install_bushing, at: [LUG], method: press, ref: \"drawing note 7\"}\n", "")
                .replace("  - {op: \"70\", do: assemble}", "  - {op: \"65\", do: install_bushing, at: [LUG], method: press}\n"
                        + "  - {op: \"70\", do: assemble}")
                .replace("    restraint: held\n    loads:\n      - {source: one_g_ground, stress: 8 MPa, share_of_life: 0.95, report: \"stress"
                        + " note SN-31 rev A\"}", "    restraint: held\n    residual_stress: {value: -40 MPa, kind: measured,"
                        + " method: \"hole drilling\", depth: 0.5 mm}\n    loads: none")
                .replace("    clamp_up: none\n", "    clamp_up:\n      - {gap: {max: 0.20 mm}, span: 70 mm, thickness: 12 mm, width: 40 mm,"
                        + " held: cantilever, shim: none}\n");
        return strut.substring(0, strut.indexOf("  - id: SEAT")) + strut.substring(strut.indexOf("surface:\n  pretreatment"))
                .replace("[LUG, SEAT]", "[LUG]").replace("[\"LUG\", \"SEAT\"]", "[\"LUG\"]");
    }

    /** Neither the gap shimmed nor the bush with clearance clears the objection; both together do. */
    @Test
    void twoChangesThatClearOnlyTogetherAreFound() {
        EditableDescription part = EditableDescription.of(pulledTwice()).orElseThrow();
        Remedies study = study(pulledTwice());
        Remedy best = study.remedies().get(0);
        assertTrue(study.cleared() && best.changes().size() == 2, best.toString());
        assertEquals(1, study.objections().size());
        Trials trials = new Trials(REVIEWER);
        List<Candidate> members = Candidates.of(trials, trials.of(part).orElseThrow()).candidates().stream()
                .filter(one -> best.changes().contains(one.words())).toList();
        assertEquals(2, members.size());
        for (Candidate one : members) {
            Review alone = REVIEWER.review(read(part.with(one.write().apply(part)).bytes()), INPUT, "2026-01-15");
            assertEquals(study.objections(), List.copyOf(findings(alone, Grade.OBJECTION)), one.words());
        }
        byte[] both = part.with(best.patch()).bytes();
        assertEquals(best.verdict(), REVIEWER.review(read(both), INPUT, "2026-01-15").verdict());
    }

    @Test
    void aStudyThatLeavesPairsUntriedSaysHowMany() {
        Remedies bounded = new RemedyStudy(REVIEWER, tried -> { }, 1).of(EditableDescription.of(pulledTwice()).orElseThrow(), INPUT);
        assertTrue(bounded.missing().stream().anyMatch(said -> said.matches("A pair of changes .* among the 1 of \\d+ tried; .*")),
                bounded.missing().toString());
        assertTrue(study(pulledTwice()).missing().stream().noneMatch(said -> said.contains("pair")));
    }
}
