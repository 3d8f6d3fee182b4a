package org.shortgrain.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.shortgrain.review.Finding;
import org.shortgrain.review.Grade;
import org.shortgrain.review.Review;
import org.shortgrain.review.Verdict;

/**
 * Whole reports: what must be said of a bad part, and that little is said of a good one. What is expected was written
 * down before the rules were run on it.
 */
class RuleInterplayTest {

    private static final Path BASE = Path.of("rules", "examples", "base.yaml");
    private static final String ATTITUDE = "attitude: {ground: {pitch: 3 deg, roll: 2 deg}, flight: {pitch: 2 deg,"
            + " roll: 0 deg}}";
    private static final String LOADS = "loads: [{source: one_g_ground, stress: 20 MPa, share_of_life: 1,"
            + " report: \"stress note 1\"}]";

    private static ShippedReview reviewer;

    @BeforeAll
    static void load() {
        reviewer = ShippedReview.ofShipped();
    }

    private static Review review(String patch) throws IOException {
        return reviewer.review(ExamplePatch.merged(Files.readString(BASE), patch));
    }

    private static List<String> grave(Review review) {
        return review.findings().stream().filter(finding -> finding.grade() != Grade.ADVICE)
                .map(finding -> finding.rule() + ": " + finding.statement()).toList();
    }

    private static String lug(String temper, String fit, String drainage) {
        return "material: {temper: \"" + temper + "\"}\n"
                + "environment: {zone: wheel_well, fluids: [rain, runway_deicer]}\n"
                + "features: {BORE: {stress_direction: ST, " + LOADS + ", fit: {kind: press_bushing,"
                + " hole: {min: 20.000 mm, max: 20.010 mm}, bush: {min: 20.002 mm, max: 20.012 mm}, bush_bore: 16 mm,"
                + " outer_width: 50 mm, bush_material: \"4130\", " + fit + "}, drainage: {opening: up, depth: 20 mm, "
                + drainage + ", " + ATTITUDE + "}}}\n";
    }

    /** A 7075-T6 lug pulled across its grain in the wheel well: dry steel bush, one small drain that sealant may plug. */
    @Test
    void aBadLugIsStoppedAndItsCausesAreEachNamedOnce() throws IOException {
        Review review = review(lug("T651", "bush_coating: none, installed_wet: false",
                "drain_holes: [{diameter: 6.35 mm, at_lowest_point: true, path_continues: true}]")
                + "route: {\"95\": {do: seal, at: [BORE], product: \"AMS-S-8802 B-2\"}}\n");
        assertEquals(Verdict.OBJECTION, review.verdict());
        Set<String> raised = ShippedReview.raised(review);
        assertTrue(raised.containsAll(Set.of("COMBINED-01", "SEALING-21", "DRAINAGE-05", "DRAINAGE-13")),
                () -> "raised " + raised);
        int findings = review.findings().size();
        assertTrue(findings >= 5 && findings <= 15, () -> findings + " findings: " + grave(review));
        Set<String> alone = new TreeSet<>(review.findings().stream().map(finding -> finding.rule()).toList());
        assertFalse(alone.contains("SEALING-21"), "the dry bush is one cause with its couple");
    }

    /** The fit pulls, so that the three factors meet: one cause, and what helps against the fit is said there. */
    @Test
    void aPressedBushThatBringsTheThreeFactorsTogetherIsOneFinding() throws IOException {
        Review review = review(lug("T651", "bush_coating: \"cadmium\", installed_wet: true, sealed_ends: true",
                "drain_holes: [{diameter: 9.525 mm, at_lowest_point: true, path_continues: true}]"));
        List<Finding> objections = review.findings().stream().filter(one -> one.grade() == Grade.OBJECTION).toList();
        assertEquals(List.of("COMBINED-01"), objections.stream().map(Finding::rule).toList());
        Finding lug = objections.get(0);
        assertTrue(lug.foldedIn().containsAll(List.of("FIT-01", "MATERIAL-01")), () -> "" + lug.foldedIn());
        assertTrue(lug.remedies().stream().anyMatch(one -> one.contains("flanged floating bush")
                || one.contains("flanged") && one.contains("bush")), () -> "" + lug.remedies());
    }

    /** Order of the card and state of the surface say the same of one bore. */
    @Test
    void aBareBoreUnderABushIsOneFinding() throws IOException {
        Review review = review(lug("T7351", "bush_coating: \"cadmium\", installed_wet: true, sealed_ends: true",
                "drain_holes: [{diameter: 9.525 mm, at_lowest_point: true, path_continues: true}]")
                .replace("fit: {", "surface: {bore_coated_before_bush: false}, fit: {")
                + "route: {\"52\": {do: install_bushing, at: [BORE], method: press}, \"60\": null,"
                + " \"70\": null, \"80\": null}\n");
        List<Finding> bare = review.findings().stream().filter(one -> one.rule().equals("ORDER-03")
                || one.rule().equals("SEALING-23")).toList();
        assertEquals(1, bare.size(), () -> "" + bare);
        assertEquals("ORDER-03", bare.get(0).rule());
        assertTrue(bare.get(0).foldedIn().contains("SEALING-23"), () -> "" + bare.get(0).foldedIn());
    }

    /** Both places are susceptible, and one plan of inspection leaves them out. */
    @Test
    void whatARuleSaysInTheSameWordsOfTwoPlacesIsSaidOnceWithBoth() throws IOException {
        Review review = review("material: {temper: T651}\ninspection: {access: none_without_disassembly}\n"
                + "features: {BORE: {stress_direction: ST}, RIB: {stress_direction: ST}}\n");
        List<Finding> hidden = review.findings().stream().filter(one -> one.rule().equals("INSPECTION-01")).toList();
        assertEquals(1, hidden.size(), () -> "" + hidden);
        assertEquals(Optional.empty(), hidden.get(0).feature());
        assertEquals(2, hidden.get(0).evidence().size(), () -> "" + hidden.get(0).evidence());
    }

    /** The same lug in T7351: wet cadmium-plated bush, two drains of the standard's size, full finish with inhibitor. */
    @Test
    void aGoodLugInTheSamePlaceIsLeftAlone() throws IOException {
        Review review = review(lug("T7351", "bush_coating: \"cadmium\", installed_wet: true, sealed_ends: true",
                "drain_holes: [{diameter: 9.525 mm, at_lowest_point: true, path_continues: true},"
                        + " {diameter: 9.525 mm, at_lowest_point: true, path_continues: true}]")
                + "surface: {cpc: \"MIL-PRF-81309 type II\"}\n");
        assertEquals(List.of(), grave(review));
        assertEquals(Verdict.NO_OBJECTION, review.verdict());
    }

    /** Good oxidiser in service does not make good a leak test with methanol. */
    @Test
    void aTitaniumTankTestedWithMethanolIsStopped() throws IOException {
        Review review = review("material: {alloy: \"Ti-6Al-4V\", temper: \"annealed\", procurement_spec: \"AMS 4911\"}\n"
                + "environment: {zone: tank_N2O4, fluids: [{name: nitrogen_tetroxide, composition: \"MON-3\"}]}\n"
                + "route: {\"55\": {do: leak_test, medium: \"methanol\"}}\n");
        assertEquals(Verdict.OBJECTION, review.verdict());
        assertFalse(ShippedReview.raised(review).contains("EXPOSURE-13"));
        assertFalse(ShippedReview.raised(review).contains("EXPOSURE-14"));
    }

    @Test
    void aHollowWithoutAttitudeIsAskedForAndNeverSaidToDrain() throws IOException {
        Review review = review("features: {RIB: {drainage: {opening: up, depth: 25 mm, drain_holes: [{diameter: 12.7 mm,"
                + " at_lowest_point: true, path_continues: true}]}}}\n");
        assertTrue(ShippedReview.raised(review).contains("DRAINAGE-03"));
        assertEquals(Verdict.CANNOT_BE_JUDGED, review.verdict());
    }

    /** Open at the top, one low hole of the standard's size, the way out goes on: nothing to say. */
    @Test
    void anOpenPocketWithOneGoodDrainIsLeftAlone() throws IOException {
        Review review = review("features: {RIB: {drainage: {opening: up, depth: 25 mm, drain_holes: [{diameter: 9.525 mm,"
                + " at_lowest_point: true, path_continues: true}], " + ATTITUDE + "}}}\n");
        assertEquals(List.of(), review.findings().stream().map(finding -> finding.rule()).toList());
    }

    @Test
    void aBushThatIsNamedTwiceMakesOneFindingOnTheCouple() throws IOException {
        Review review = review(lug("T7351", "bush_coating: none, installed_wet: false, sealed_ends: true",
                "drain_holes: [{diameter: 9.525 mm, at_lowest_point: true, path_continues: true}]")
                + "surface: {cpc: \"MIL-PRF-81309 type II\"}\n"
                + "neighbours: [{what: bush, material: \"4130\", coating: none, insulated: false}]\n");
        assertEquals(List.of("GALVANIC-09"), review.findings().stream().map(finding -> finding.rule()).toList());
    }
}
