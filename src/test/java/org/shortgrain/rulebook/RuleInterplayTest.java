package org.shortgrain.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
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
