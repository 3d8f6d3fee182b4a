package org.shortgrain.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.part.Unit;
import org.shortgrain.part.reader.PartReader;
import org.shortgrain.part.reader.Problem;
import org.shortgrain.part.reader.Reading;
import org.shortgrain.review.FactorState;
import org.shortgrain.review.FeatureReview;
import org.shortgrain.review.Review;

/**
 * How wet a place is, through the whole review of one part with one hollow.
 *
 * <p>The bay is controlled, on record as dry and never cold, and no fluid comes, so that nothing but the hollow decides. The
 * numbered drainage values are own arithmetic for a pocket of 200 x 80 mm; what stands in the standard is named beside it.
 */
class WetnessTest {

    private static final String BASE = base();
    private static final Knowledge KNOWLEDGE = Knowledge.shipped();
    private static final Reviewer REVIEWER = new Reviewer(KNOWLEDGE, Wording.shipped(), "test");

    private static final String POCKET = "opening: up, depth: 25 mm, length: 200 mm, width: 80 mm";
    private static final String LEVEL = "attitude: {ground: {pitch: 0 deg, roll: 0 deg}, flight: {pitch: 0 deg, roll: 0 deg}}";
    private static final String NOSE_UP = attitude(3, 2);
    private static final String GOOD_HOLE = "drain_holes: [{diameter: 9.525 mm, at_lowest_point: true, path_continues: true}]";
    private static final String OPEN = "vented: true, filled_with: none";

    private static String base() {
        try {
            return Files.readString(Path.of("rules", "examples", "base.yaml")).replace("zone: wing_external", "zone: hangar_dry")
                    .replace("min: -55 degC, max: 60 degC", "min: 10 degC, max: 30 degC")
                    .replace("humidity: moist", "humidity: 35 %").replace("fluids: [rain]", "fluids: none");
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static String attitude(double ground, double flight) {
        return "attitude: {ground: {pitch: " + ground + " deg, roll: 0 deg}, flight: {pitch: " + flight + " deg, roll: 0 deg}}";
    }

    private static String part(String... drainage) {
        String own = "drainage: {" + String.join(", ", drainage) + "}";
        int rib = BASE.lastIndexOf("drainage: none");
        return BASE.substring(0, rib) + own + BASE.substring(rib + "drainage: none".length());
    }

    private static Review review(String text) {
        Reading reading = new PartReader(KNOWLEDGE.vocabularies()).read("part.yaml", text.getBytes(StandardCharsets.UTF_8));
        if (reading instanceof Reading.Refused refused) {
            throw new AssertionError(Problem.text(refused.problems()));
        }
        Reading.Read read = (Reading.Read) reading;
        return REVIEWER.review(read.description(), new Review.InputId("part.yaml", ""), read.paths(), "2026-01-15");
    }

    private static FeatureReview rib(Review review) {
        return review.features().stream().filter(one -> one.id().equals("RIB")).findFirst().orElseThrow();
    }

    private static Optional<Computed> computed(Review review, String id) {
        return review.computations().stream().filter(one -> one.feature().filter("RIB"::equals).isPresent())
                .map(one -> one.computed()).filter(one -> one.id().equals(id)).findFirst();
    }

    private static double high(Review review, String id) {
        return computed(review, id).orElseThrow().value().high();
    }

    private static Set<String> raised(Review review) {
        Set<String> raised = new TreeSet<>();
        review.findings().forEach(finding -> {
            raised.add(finding.rule());
            raised.addAll(finding.foldedIn());
        });
        review.questions().forEach(question -> question.rule().ifPresent(raised::add));
        return raised;
    }

    private static String wetness(Review review) {
        return rib(review).environment().reasons().get(0).replace("wetness: ", "");
    }

    private static String reasons(Review review) {
        return String.join("\n", rib(review).environment().reasons());
    }

    private static void assertWetness(String expected, FactorState factor, Review review) {
        assertEquals(expected, wetness(review), () -> reasons(review));
        assertEquals(factor, rib(review).environment().state(), () -> reasons(review));
    }

    private static String wet(String text) {
        return text.replace("zone: hangar_dry", "zone: wheel_well");
    }

    /** Drainage values 1 and 2: no drain, 400.00 / 316.15 / 141.78 mL. */
    @ParameterizedTest
    @CsvSource({"0, 400.00", "3, 316.15", "-3, 316.15", "10, 141.78", "-10, 141.78"})
    void anUndrainedPocketIsWetWithItsVolume(double pitch, double millilitres) {
        String text = part(POCKET, attitude(pitch, pitch), "drain_holes: none", OPEN);
        Review review = review(text);
        assertWetness("wet", FactorState.PRESENT, review);
        assertEquals(millilitres * 1e-6, high(review, "water.trapped-volume"), 5e-9);
        assertTrue(raised(review(wet(text))).contains("DRAINAGE-01"));
    }

    /** Drainage values 3 to 6: near edge of the hole from the low end on the ground; depth and volume behind it. */
    @ParameterizedTest
    @CsvSource({"100, 3, 3, 5.241, 20.963, wet", "15, 3, 3, 0.786, 0.472, dry", "15, 12, 12, 3.188, 1.913, wet"})
    void whatStaysBehindAHoleDecides(double near, double ground, double flight, double millimetres, double millilitres,
            String expected) {
        Review review = review(part(POCKET, attitude(ground, flight), "drain_holes: [{diameter: 9.525 mm, from_low_end: "
                + near + " mm, path_continues: true}]", OPEN));
        assertEquals(expected, wetness(review), () -> reasons(review));
        assertEquals(millimetres * 1e-3, high(review, "water.standing-depth"), 5e-7);
        assertEquals(millilitres * 1e-6, high(review, "water.standing-volume"), 5e-10);
        assertTrue(reasons(review).contains(String.format(java.util.Locale.ROOT, "%.1f mm deep", millimetres)),
                reasons(review));
        assertEquals(expected.equals("wet"), raised(review).contains("DRAINAGE-25"));
    }

    /** Drainage value 5: the other way up the same hole is at the high end. Its far edge counts there: 185 mm less 9.525. */
    @Test
    void aHoleThatLiesLowOnTheGroundAndHighInFlightLeavesThePlaceWet() {
        Review review = review(part(POCKET, attitude(3, -3),
                "drain_holes: [{diameter: 9.525 mm, from_low_end: 15 mm, path_continues: true}]", OPEN));
        assertWetness("wet", FactorState.PRESENT, review);
        assertEquals((185 - 9.525) * 1e-3 * Math.tan(Math.toRadians(3)), high(review, "water.standing-depth"), 1e-12);
        assertTrue(reasons(review).contains("in flight, pitch -3.0 deg"), reasons(review));
        assertTrue(raised(review).containsAll(Set.of("DRAINAGE-25", "DRAINAGE-09")), raised(review)::toString);
    }

    /** Drainage value 7, as a floor line: a boss of 6 mm round the drain keeps the floor wet. */
    @Test
    void aDrainOnABossLeavesTheFloorWet() {
        String boss = "profile: [{x: 0 mm, z: 25 mm}, {x: 0 mm, z: 0 mm}, {x: 90 mm, z: 0 mm}, {x: 90 mm, z: 6 mm},"
                + " {x: 110 mm, z: 6 mm}, {x: 110 mm, z: 0 mm}, {x: 200 mm, z: 0 mm}, {x: 200 mm, z: 25 mm}]";
        Review review = review(part("opening: up, depth: 25 mm, width: 80 mm", boss, LEVEL,
                "drain_holes: [{diameter: 9.525 mm, from_low_end: 95 mm, path_continues: true}]", OPEN));
        assertWetness("wet", FactorState.PRESENT, review);
        assertEquals(6e-3, high(review, "water.standing-depth"), 1e-12);
        assertEquals((200 - 20) * 80 * 6 * 1e-9, high(review, "water.standing-volume"), 1e-12);
    }

    /** Drainage value 9; MIL-STD-1568C, 5.2.2.3 (read): 9.525 mm. */
    @ParameterizedTest
    @CsvSource({"9.525, dry", "9.5, dry", "6.35, unknown"})
    void aHoleBelowTheLeastOfTheTradeIsNoProofOfDrainage(String diameter, String expected) {
        Review review = review(part(POCKET, NOSE_UP, "drain_holes: [{diameter: " + diameter
                + " mm, at_lowest_point: true, path_continues: true}]", OPEN));
        assertEquals(expected, wetness(review), () -> reasons(review));
        assertEquals(expected.equals("unknown"), raised(review).contains("DRAINAGE-05"));
    }

    /** Drainage value 10: the head held over 6.35 mm is 4.68 mm. */
    @Test
    void theHeadHeldOverASmallHoleIsNamed() {
        Review review = review(part(POCKET, NOSE_UP,
                "drain_holes: [{diameter: 6.35 mm, at_lowest_point: true, path_continues: true}]", OPEN));
        assertEquals(4.68e-3, high(review, "water.hold-up"), 5e-6);
        assertTrue(reasons(review).contains("holds up to 4.7 mm"), reasons(review));
    }

    /** Drainage value 11: offset 2 mm leaves 7.525 mm of two holes of 9.525 mm; a wider neighbour loses nothing. */
    @ParameterizedTest
    @CsvSource({"9.525, 2, 7.525, unknown", "12.7, 1, 9.525, dry"})
    void aNeighbourThatIsOffsetNarrowsTheDrain(String neighbour, String offset, double open, String expected) {
        Review review = review(part(POCKET, NOSE_UP, "drain_holes: [{diameter: 9.525 mm, at_lowest_point: true,"
                + " path_continues: true, neighbour_hole: {diameter: " + neighbour + " mm, offset: " + offset + " mm}}]", OPEN));
        assertEquals(open * 1e-3, high(review, "water.common-opening"), 1e-12);
        assertEquals(expected, wetness(review), () -> reasons(review));
    }

    /** Drainage value 12. */
    @Test
    void aDrainThatFacesABlankWebDrainsNothing() {
        Review review = review(part(POCKET, NOSE_UP,
                "drain_holes: [{diameter: 12.7 mm, at_lowest_point: true, path_continues: false}]", OPEN));
        assertWetness("wet", FactorState.PRESENT, review);
        assertTrue(raised(review).contains("DRAINAGE-12"));
        Review missed = review(part(POCKET, NOSE_UP, "drain_holes: [{diameter: 9.525 mm, at_lowest_point: true,"
                + " path_continues: true, neighbour_hole: {diameter: 9.525 mm, offset: 12 mm}}]", OPEN));
        assertWetness("wet", FactorState.PRESENT, missed);
    }

    /** Drainage value 13; widths after Extrand, Langmuir 33 (2017) 12903, abstract (read). */
    @Test
    void theOnlyOpeningOfAClosedHollowIsNoProofOfDrainage() {
        String closed = "opening: closed, depth: 25 mm, length: 200 mm, width: 80 mm, vented: false, filled_with: none";
        String hole = "{diameter: 9.525 mm, at_lowest_point: true, path_continues: true}";
        Review one = review(part(closed, NOSE_UP, "drain_holes: [" + hole + "]"));
        assertNotEquals(FactorState.ABSENT, rib(one).environment().state(), () -> reasons(one));
        assertTrue(reasons(one).contains("one opening only, 9.53 mm wide: up to 15 mm"), reasons(one));
        assertTrue(raised(one).contains("DRAINAGE-10"));
        Review two = review(part(closed, NOSE_UP, "drain_holes: [" + hole + ", " + hole + "]"));
        assertFalse(reasons(two).contains("one opening only"), reasons(two));
        assertFalse(raised(two).contains("DRAINAGE-10"));
    }

    /** Drainage value 14: open top, one low hole of 9.525 mm, way out open. */
    @Test
    void aPocketDrainedAtItsLowestPointIsDryInADryBay() {
        Review review = review(part(POCKET, NOSE_UP, GOOD_HOLE, OPEN));
        assertWetness("dry", FactorState.ABSENT, review);
        assertTrue(reasons(review).contains("drains: 0 mm deep"), reasons(review));
        for (String rule : List.of("DRAINAGE-01", "DRAINAGE-05", "DRAINAGE-07", "DRAINAGE-10", "DRAINAGE-12")) {
            assertFalse(raised(review).contains(rule), rule);
        }
    }

    /** Drainage value 15, as far as the state goes. */
    @Test
    void aFillingDisplacesWaterOnlyWhereItIsTightAndBonded() {
        String cup = POCKET + ", drain_holes: none, " + NOSE_UP;
        Review sponge = review(part(cup, "filled_with: open_cell_foam, filling_bonded: true"));
        assertWetness("wet", FactorState.PRESENT, sponge);
        Review loose = review(part(cup, "filled_with: closed_cell_foam, filling_bonded: false"));
        assertWetness("unknown", FactorState.UNKNOWN, loose);
        assertWetness("unknown", FactorState.UNKNOWN, review(part(cup, "filled_with: closed_cell_foam")));
        Review bonded = review(part(cup, "filled_with: sealant, filling_bonded: true"));
        assertWetness("dry", FactorState.ABSENT, bonded);
        assertEquals(0, high(bonded, "water.beside-filling"), 0);
        assertEquals(high(loose, "water.trapped-volume"), high(loose, "water.beside-filling"), 0);
    }

    /** Drainage value 16. */
    @Test
    void aDrainThatSealantMayPlugCountsAsNone() {
        String text = part(POCKET, NOSE_UP, GOOD_HOLE, OPEN).replace("  - {op: \"90\", do: assemble}\n",
                "  - {op: \"90\", do: assemble}\n  - {op: \"95\", do: seal, at: [RIB]}\n");
        Review review = review(text);
        assertWetness("unknown", FactorState.UNKNOWN, review);
        assertTrue(raised(review).contains("DRAINAGE-13"));
        double brimful = (25 * 200 - 200 * 200 * Math.tan(Math.toRadians(2)) / 2) * 80 * 1e-9;
        assertEquals(brimful, high(review, "water.trapped-volume"), 1e-12, "at 2 degrees in flight");
        assertTrue(computed(review, "water.standing-volume").isEmpty(), "nothing is counted as drained");
    }

    /** Drainage value 17; MIL-STD-1568C, 5.2.2.3 (read), asks for the attitude of the aircraft. */
    @ParameterizedTest
    @ValueSource(strings = {"attitude: unknown", "attitude: {ground: {pitch: 3 deg, roll: 0 deg}}",
        "attitude: {ground: {roll: 0 deg}, flight: {pitch: 2 deg, roll: 0 deg}}"})
    void withoutADeclaredAttitudeNothingDrains(String attitude) {
        Review review = review(part(POCKET, attitude, GOOD_HOLE, OPEN));
        assertWetness("unknown", FactorState.UNKNOWN, review);
        assertFalse(reasons(review).contains("drains"), reasons(review));
        assertTrue(reasons(review).contains("the worst, since no attitude is declared"), reasons(review));
        assertEquals(400e-6, high(review, "water.trapped-volume"), 1e-12);
        assertTrue(raised(review).contains("DRAINAGE-03")
                || review.questions().stream().anyMatch(one -> one.text().startsWith("How is the part pitched")));
        assertWetness("wet", FactorState.PRESENT, review(part(POCKET, attitude, "drain_holes: none", OPEN)));
    }

    /** Drainage value 18: 2 g of volatile inhibitor in a cubic foot are 70.63 g in a cubic metre (MIL-STD-186F, 4.13.4,
     * read). */
    @Test
    void gramsInACubicFoot() {
        double cubicFoot = 1728 * Unit.CUBIC_INCH.toSi(java.math.BigDecimal.ONE);
        assertEquals(70.63, 2 / cubicFoot, 5e-3);
    }

    /** The same pocket, which drains level across: 80 mm wide, at 5 degrees 7.0 mm of water stand along one side. */
    @Test
    void aRollThatIsNotStatedIsTakenAtItsWorstAndAskedFor() {
        Review review = review(part(POCKET, NOSE_UP.replace(", roll: 0 deg", ""), GOOD_HOLE, OPEN));
        assertWetness("unknown", FactorState.UNKNOWN, review);
        assertEquals(80e-3 * Math.tan(Math.toRadians(5)), high(review, "water.standing-depth"), 0.3e-3);
        assertTrue(review.questions().stream().anyMatch(one -> one.text().contains("roll to either side")),
                () -> "" + review.questions());
        assertTrue(review.assumptions().stream().anyMatch(one -> one.text().contains("up to 5 degrees to either side")),
                () -> "" + review.assumptions());
        assertFalse(raised(review).contains("DRAINAGE-25"), "what is taken for granted is no finding");
    }

    @Test
    void aRollThatIsStatedAsNoneIsLevel() {
        assertWetness("dry", FactorState.ABSENT,
                review(part(POCKET, NOSE_UP.replace("roll: 0 deg", "roll: none"), GOOD_HOLE, OPEN)));
    }

    @Test
    void nothingDeclaredNeverDrainsAndIsNeverDry() {
        for (String drainage : List.of("drainage: unknown", "drainage: {holds_water: unknown}", "drainage: {opening: unknown}",
                "drainage: {opening: up}", "drainage: {depth: 25 mm}", "drainage: {vented: true}")) {
            String text = part("X").replace("drainage: {X}", drainage);
            assertNotDrained(review(text), drainage);
        }
        assertNotDrained(review(part("X").replace("    drainage: {X}\n", "")), "left out");
    }

    @Test
    void whateverIsLeftOutOfADrainedPocketItIsNoLongerDry() {
        List<String> keys = List.of("opening: up", "depth: 25 mm", "length: 200 mm", "width: 80 mm", NOSE_UP, GOOD_HOLE);
        assertWetness("dry", FactorState.ABSENT, review(part(String.join(", ", keys))));
        for (String key : keys) {
            List<String> rest = new ArrayList<>(keys);
            rest.remove(key);
            assertNotDrained(review(part(String.join(", ", rest))), "without " + key);
        }
        for (String field : List.of("diameter: 9.525 mm, ", "at_lowest_point: true, ", ", path_continues: true")) {
            assertNotDrained(review(part(String.join(", ", keys).replace(field, ""))), "without " + field);
        }
    }

    private static void assertNotDrained(Review review, String what) {
        assertNotEquals(FactorState.ABSENT, rib(review).environment().state(), () -> what + ": " + reasons(review));
        assertFalse(reasons(review).contains("drains"), () -> what + ": " + reasons(review));
    }

    @Test
    void withoutAZoneThePlaceIsNeitherWetNorDry() {
        for (String drainage : List.of(GOOD_HOLE, "drain_holes: none")) {
            String text = part(POCKET, NOSE_UP, drainage, OPEN).replace("  zone: hangar_dry\n", "");
            assertWetness("unknown", FactorState.UNKNOWN, review(text));
        }
    }

    @Test
    void aDrainedPocketInAMoistZoneIsIntermittentlyWetAndInAPooledOneWet() {
        String text = part(POCKET, NOSE_UP, GOOD_HOLE, OPEN);
        Review moist = review(text.replace("zone: hangar_dry", "zone: wing_dry_bay"));
        assertWetness("intermittently wet", FactorState.PRESENT, moist);
        assertTrue(reasons(moist).contains("drains: 0 mm"), reasons(moist));
        assertWetness("wet", FactorState.PRESENT, review(wet(text)));
    }

    @Test
    void aPocketThatOpensDownKeepsNothing() {
        Review review = review(part("opening: down, depth: 25 mm, length: 200 mm, width: 80 mm", NOSE_UP, "drain_holes: none",
                OPEN));
        assertWetness("dry", FactorState.ABSENT, review);
        assertEquals(0, high(review, "water.trapped-depth"), 0);
        assertWetness("wet", FactorState.PRESENT, review(part("opening: down, depth: 25 mm, length: 200 mm, width: 80 mm",
                NOSE_UP.replace("attitude: {", "attitude: {parked: {pitch: 0 deg, roll: 180 deg}, "), "drain_holes: none",
                OPEN)));
    }

    @Test
    void aPocketThatOpensSidewaysMayKeepAWedge() {
        String side = "opening: side, depth: 25 mm, length: 200 mm, width: 80 mm, drain_holes: none, " + OPEN;
        assertWetness("dry", FactorState.ABSENT, review(part(side, attitude(3, 3))));
        assertWetness("unknown", FactorState.UNKNOWN, review(part(side, attitude(12, 3))));
    }

    @Test
    void aStatementThatAPlaceStaysEmptyYieldsToAShapeThatKeepsWater() {
        assertWetness("unknown", FactorState.UNKNOWN,
                review(part("holds_water: false", POCKET, NOSE_UP, "drain_holes: none", OPEN)));
        assertWetness("dry", FactorState.ABSENT, review(part("holds_water: false")));
        assertWetness("wet", FactorState.PRESENT, review(part("holds_water: true")));
    }

    @Test
    void anUnsealedGapDrawsWaterInWhereThereIsAny() {
        String gap = "drainage: {gap: 0.1 mm}";
        String unsealed = part("X").replace("drainage: {X}", gap).replace("faying: \"AMS3276 class B\"", "faying: none");
        Review moist = review(unsealed.replace("zone: hangar_dry", "zone: wing_dry_bay"));
        assertWetness("wet", FactorState.PRESENT, moist);
        assertEquals(0.148738, high(moist, "water.capillary-rise"), 5e-7);
        assertTrue(reasons(moist).contains("draws water 149 mm high"), reasons(moist));
        assertWetness("dry", FactorState.ABSENT, review(unsealed));
        Review sealed = review(part("X").replace("drainage: {X}", gap).replace("zone: hangar_dry", "zone: wing_dry_bay"));
        assertWetness("intermittently wet", FactorState.PRESENT, sealed);
    }

    /** 10 L of air at 25 degC and 80 %, cooled to 5 degC, give off 0.1158 g; in a year of daily changes 42.27 g. */
    @Test
    void aClosedHollowThatBreathesKeepsWhatCondenses() {
        String text = part("opening: closed, volume: 10 l, vented: true, drain_holes: none, filled_with: none")
                .replace("min: 10 degC", "min: 5 degC").replace("humidity: 35 %", "humidity: 80 %");
        Review review = review(text);
        assertWetness("wet", FactorState.PRESENT, review);
        assertEquals(0.115816e-3, computed(review, "condensation.per-cycle").orElseThrow().value().value(), 5e-10);
        assertEquals(42.27e-3, computed(review, "condensation.per-year").orElseThrow().value().value(), 5e-6);
        assertTrue(reasons(review).contains("0.12 g condense in one cooling to 5 degC"), reasons(review));
        Review sealed = review(text.replace("vented: true", "vented: false"));
        assertWetness("intermittently wet", FactorState.PRESENT, sealed);
        assertTrue(computed(sealed, "condensation.per-year").isEmpty());
        Review unsaid = review(part("opening: closed, volume: 10 l, drain_holes: none, filled_with: none"));
        assertWetness("unknown", FactorState.UNKNOWN, unsaid);
    }

    /** Dew point of air at 20 degC and 35 %: 4.1 degC by the Magnus form. */
    @ParameterizedTest
    @CsvSource({"5, dry", "4, unknown", "-30, unknown"})
    void metalColderThanTheDewPointIsNotDryByEvidence(String coldest, String expected) {
        Review review = review(part(POCKET, NOSE_UP, GOOD_HOLE, OPEN).replace("min: 10 degC", "min: " + coldest + " degC"));
        assertEquals(expected, wetness(review), () -> reasons(review));
        assertEquals(4.1, high(review, "condensation.dew-point"), 0.05);
    }

    @Test
    void aDryBayWithoutHumidityOnRecordIsNotDry() {
        String text = part(POCKET, NOSE_UP, GOOD_HOLE, OPEN);
        assertWetness("unknown", FactorState.UNKNOWN, review(text.replace("  humidity: 35 %\n", "")));
        assertWetness("intermittently wet", FactorState.PRESENT, review(text.replace("humidity: 35 %", "humidity: 55 %")));
        assertWetness("dry", FactorState.ABSENT, review(text.replace("humidity: 35 %", "humidity: dry")));
    }

    @Test
    void everyNumberOfAReasonStandsAmongTheCalculations() {
        Review review = review(part(POCKET, attitude(3, -2),
                "drain_holes: [{diameter: 6.35 mm, from_low_end: 40 mm, path_continues: true}]", OPEN));
        java.util.regex.Matcher cited = java.util.regex.Pattern.compile("C-\\d+").matcher(reasons(review));
        int count = 0;
        while (cited.find()) {
            count++;
            assertTrue(review.calculation(cited.group()).isPresent(), cited.group());
        }
        assertTrue(count >= 3, reasons(review));
    }
}
