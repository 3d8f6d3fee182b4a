package org.shortgrain.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shortgrain.assessment.HollowReading;
import org.shortgrain.assessment.Knowledge;
import org.shortgrain.assessment.Reviewer;
import org.shortgrain.assessment.Trials;
import org.shortgrain.assessment.Wording;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.water.DrainHole;
import org.shortgrain.part.Drainage;
import org.shortgrain.part.Feature;
import org.shortgrain.part.reader.DescriptionValue;
import org.shortgrain.part.reader.EditableDescription;
import org.shortgrain.part.reader.PartReader;
import org.shortgrain.part.reader.Reading;
import org.shortgrain.review.Review;

/**
 * What is proposed for a hollow, on the tray of a sample whose drainage is written anew. Depths behind a hole are a tan(t) and
 * volumes W a^2 tan(t)/2, own algebra as in the tests of the computation.
 */
class WaterChangesTest {

    private static final Knowledge KNOWLEDGE = Knowledge.shipped();
    private static final Reviewer REVIEWER = new Reviewer(KNOWLEDGE, Wording.shipped(), "test");
    private static final String LEVELLED = "drain_holes: none, vented: true, filled_with: none";
    private static final String BOX = "opening: up, depth: 25 mm, length: 220 mm, width: 90 mm, " + LEVELLED;

    private static String attitudes(double ground, double flight, String roll) {
        return ", attitude: {ground: {pitch: " + ground + " deg, roll: " + roll + "}, flight: {pitch: " + flight + " deg, roll: "
                + roll + "}}";
    }

    private static EditableDescription tray(String drainage) {
        return tray(drainage, "pocket");
    }

    private static EditableDescription tray(String drainage, String what) {
        try {
            EditableDescription part = EditableDescription.of(Files.readString(Path.of("sample-reviews",
                    "sponson-bulkhead-tray.yaml"))).orElseThrow();
            EditableDescription drained = part.with(part.setting("/features/0/drainage", DescriptionValue.of("{" + drainage + "}")));
            return drained.with(drained.setting("/features/0/what", DescriptionValue.of(what)));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static Proposals proposals(EditableDescription part) {
        Trials trials = new Trials(REVIEWER);
        Trials.Trial trial = trials.of(part).orElseThrow();
        Subject subject = new Subject(trials, trial, trials.material(trial));
        return WaterChanges.of(subject, "/features/0", subject.features().get(0));
    }

    private static Optional<Candidate> of(Proposals proposals, String kind) {
        return proposals.candidates().stream().filter(one -> one.kind().key().equals(kind)).findFirst();
    }

    private static Review review(EditableDescription part) {
        Reading reading = new PartReader(KNOWLEDGE.vocabularies()).read("part.yaml", part.bytes());
        return REVIEWER.review((Reading.Read) reading, new Review.InputId("part.yaml", ""), "2026-01-15");
    }

    private static Computed number(Review review, String key) {
        return review.computations().stream().map(one -> one.computed()).filter(one -> one.id().equals(key)).findFirst()
                .orElseThrow();
    }

    private static DrainSearch search(EditableDescription part, double diameter) {
        Reading.Read read = (Reading.Read) new PartReader(KNOWLEDGE.vocabularies()).read("part.yaml", part.bytes());
        Feature feature = read.description().features().candidates().get(0).get(0);
        Drainage drainage = feature.drainage().single().orElseThrow();
        return new DrainSearch(HollowReading.of(drainage, KNOWLEDGE.tables().standIns()), List.of(), diameter, 1e-3);
    }

    /** 20 mm, two diameters, from the low end: 20 tan(3 deg) = 1.048 mm, 90 x 20^2 tan(3 deg)/2 = 0.943 mL. */
    @Test
    void aHoleIsPutTwoDiametersFromTheWallsWhereThatDrainsInEveryAttitude() {
        EditableDescription part = tray(BOX + attitudes(3, 2, "0 deg"));
        Candidate drain = of(proposals(part), "drain").orElseThrow();
        assertEquals("drain hole of 10 mm in FLOOR, near edge 20 mm from its rear end, with the way out going on: 1.05 mm,"
                + " 0.943 mL at most stay", drain.words());
        Review changed = review(part.with(drain.write().apply(part)));
        assertEquals(20 * Math.tan(Math.toRadians(3)), number(changed, "water.standing-depth").value().high() * 1e3, 1e-9);
        assertTrue(drain.notes().toString().contains("on the ground 1.05 mm, 0.943 mL; in flight 0.698 mm, 0.629 mL"),
                drain.notes().toString());
    }

    /** No more than a film, 4 gamma/(rho g 9.475 mm) = 3.1396 mm: up to 3.1396/tan(3 deg) = 59.9 mm from the end. */
    @Test
    void howFarFromTheEndTheHoleMayLieIsTold() {
        Candidate drain = of(proposals(tray(BOX + attitudes(3, 2, "0 deg"))), "drain").orElseThrow();
        assertEquals(3.1396, DrainHole.film() * 1e3, 5e-5);
        assertTrue(drain.notes().contains("From 0 mm to 59 mm from that end no more than a film stays."), drain.notes().toString());
    }

    /** The two depths are equal where a tan(g) = (L - d - a) tan(f): the least that one hole leaves; a step of 1 mm is off by
     * at most the steeper tangent. */
    @ParameterizedTest
    @CsvSource({"3, 2", "5, 1", "2, 6"})
    void oneHoleBetweenTwoLowEndsLeavesWhatTheBalanceOfBothLeaves(double ground, double flight) {
        double g = Math.tan(Math.toRadians(ground));
        double f = Math.tan(Math.toRadians(flight));
        DrainSearch.Found one = search(tray(BOX + attitudes(ground, -flight, "0 deg")), 10e-3).one();
        assertEquals(210 * g * f / (g + f), one.depth() * 1e3, Math.max(g, f));
    }

    /** Balanced at 105 mm: 105 tan(1 deg) = 1.83 mm either way. */
    @Test
    void aShallowTipOverIsDrainedByOneHoleInTheMiddle() {
        Candidate drain = of(proposals(tray(BOX + attitudes(1, -1, "0 deg"))), "drain").orElseThrow();
        assertTrue(drain.words().startsWith("drain hole of 10 mm in FLOOR, near edge 105 mm from its rear end"), drain.words());
        assertTrue(drain.words().endsWith(": 1.83 mm, 1.65 mL at most stay") || drain.words().contains("1.83 mm"), drain.words());
    }

    @Test
    void whereOneHoleCannotDrainBothEndsTwoAreTried() {
        EditableDescription part = tray(BOX + attitudes(3, -2, "0 deg"));
        Candidate drain = of(proposals(part), "drain").orElseThrow();
        assertTrue(drain.words().startsWith("2 drain holes of 10 mm in FLOOR, near edges 20 mm and 190 mm from its rear end"),
                drain.words());
        Review changed = review(part.with(drain.write().apply(part)));
        assertEquals(20 * Math.tan(Math.toRadians(3)), number(changed, "water.standing-depth").value().high() * 1e3, 1e-9);
    }

    /** One hole in the middle leaves 40 tan(5 deg) = 3.5 mm at a roll to either side; one at each side 20 tan(5 deg). */
    @Test
    void aWideFloorThatRollsIsDrainedAtBothSides() {
        EditableDescription part = tray(BOX + attitudes(0, 0, "{min: -5 deg, max: 5 deg}"));
        Candidate drain = of(proposals(part), "drain").orElseThrow();
        assertTrue(drain.words().startsWith("2 drain holes of 10 mm"), drain.words());
        Review changed = review(part.with(drain.write().apply(part)));
        double left = number(changed, "water.standing-depth").value().high();
        assertTrue(left <= DrainHole.film());
        assertEquals(20 * Math.tan(Math.toRadians(5)), left * 1e3, 1e-9);
    }

    @Test
    void whereNoHolesDrainAllAttitudesThatIsToldWithWhatIsLeft() {
        Proposals none = proposals(tray(BOX + attitudes(15, -15, "{min: -15 deg, max: 15 deg}")));
        assertTrue(of(none, "drain").isEmpty());
        assertEquals(1, none.missing().size());
        assertTrue(none.missing().get(0).startsWith("Drain at FLOOR: neither one hole nor two of 10 mm leave no more than a film"),
                none.missing().toString());
        assertTrue(none.missing().get(0).matches(".*on the ground \\d+(\\.\\d+)? mm, \\d+(\\.\\d+)? mL; in flight .*"),
                none.missing().toString());
    }

    @Test
    void aFloorNarrowerThanTheLeastDrillGetsNoHole() {
        Proposals none = proposals(tray((BOX + attitudes(3, 2, "0 deg")).replace("width: 90 mm", "width: 8 mm")));
        assertTrue(of(none, "drain").isEmpty());
        assertTrue(none.missing().get(0).contains("no room for a hole of 10 mm"), none.missing().toString());
    }

    @Test
    void aHollowDimensionedInInchesIsDrilledInInches() {
        String inches = (BOX + attitudes(3, 2, "0 deg")).replace("25 mm", "1 in").replace("220 mm", "8 in").replace("90 mm", "3 in");
        Candidate drain = of(proposals(tray(inches)), "drain").orElseThrow();
        assertTrue(drain.words().startsWith("drain hole of 0.375 in in FLOOR, near edge 0.75 in from its rear end"), drain.words());
    }

    @Test
    void whatIsNotDescribedIsDrilledToTheLeastOfTheStandardAndItIsSaidWhatIsNotKnown() {
        Candidate drain = of(proposals(tray("opening: up, depth: 25 mm, " + LEVELLED)), "drain").orElseThrow();
        assertTrue(drain.words().startsWith("drain hole of 9.525 mm at the lowest point of FLOOR"), drain.words());
        assertTrue(drain.notes().toString().contains("not known until length, width and depth, or width and the points of the"
                + " floor, and the attitudes on the ground and in flight are stated"), drain.notes().toString());
        Candidate sized = of(proposals(tray(BOX)), "drain").orElseThrow();
        assertTrue(sized.notes().toString().contains("not known until the attitudes on the ground"), sized.notes().toString());
    }

    @Test
    void aHoleThatDrainsStaysAndOneThatIsTooSmallGivesWay() {
        String good = BOX.replace("drain_holes: none", "drain_holes: [{diameter: 10 mm, from_low_end: 20 mm, path_continues: true}]");
        Candidate second = of(proposals(tray(good + attitudes(3, -2, "0 deg"))), "drain").orElseThrow();
        assertTrue(second.words().startsWith("drain hole of 10 mm in FLOOR"), second.words());
        assertFalse(second.words().contains("instead"), second.words());
        EditableDescription part = tray(good + attitudes(3, -2, "0 deg"));
        EditableDescription changed = part.with(second.write().apply(part));
        assertEquals(2, changed.at("/features/0/drainage/drain_holes").orElseThrow().items().size());
        String small = BOX.replace("drain_holes: none", "drain_holes: [{diameter: 6 mm, at_lowest_point: true, path_continues: true}]");
        Candidate instead = of(proposals(tray(small + attitudes(3, 2, "0 deg"))), "drain").orElseThrow();
        assertTrue(instead.words().contains("instead of the hole not shown to drain"), instead.words());
    }

    @Test
    void aHollowThatDrainsAlreadyGetsNoProposal() {
        String drained = BOX.replace("drain_holes: none", "drain_holes: [{diameter: 10 mm, from_low_end: 20 mm, path_continues: true}]");
        Proposals none = proposals(tray(drained + attitudes(3, 2, "0 deg")));
        assertTrue(none.candidates().isEmpty() && none.missing().isEmpty(), none.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"lug_bore", "bolt_hole", "bore", "threaded_hole", "ear", "bolt_shank", "external_thread"})
    void noBoreIsDrainedByAnotherHole(String what) {
        Proposals proposals = proposals(tray(BOX + attitudes(3, 2, "0 deg"), what));
        assertTrue(of(proposals, "drain").isEmpty());
        assertTrue(of(proposals, "fill").isPresent());
        assertTrue(proposals.missing().isEmpty());
    }

    /** TO 35-1-3, 3.12 (read): no drain holes in weld seams or beads. */
    @Test
    void noWeldIsDrilled() {
        Proposals proposals = proposals(tray(BOX + attitudes(3, 2, "0 deg"), "weld"));
        assertTrue(of(proposals, "drain").isEmpty());
        assertTrue(proposals.missing().get(0).contains("weld"), proposals.missing().toString());
    }

    @Test
    void nothingIsDrilledOrTurnedForAGapThatDrawsWaterIn() {
        assertTrue(proposals(tray("gap: 0.1 mm, " + BOX + attitudes(3, 2, "0 deg"))).candidates().isEmpty());
    }

    /** Sideways, the back of the box is 25 mm from the opening: 25 tan(3 deg) = 1.31 mm stay there; down nothing does. */
    @Test
    void theWaysToTurnItAreComparedByWhatStays() {
        List<Candidate> turns = proposals(tray(BOX + attitudes(3, 2, "0 deg"))).candidates().stream()
                .filter(one -> one.kind().key().equals("turn")).toList();
        assertEquals(List.of("FLOOR turned so that it opens down", "FLOOR turned so that it opens sideways"),
                turns.stream().map(Candidate::words).toList());
        assertTrue(turns.get(0).notes().toString().contains("Opening down, 0 mm, 0 mL at most stay; opening sideways, 1.31 mm"),
                turns.get(0).notes().toString());
    }

    @Test
    void aClosedHollowIsNotTurnedAndItsDrainIsVentedAndWhatCondensesIsTold() {
        String closed = BOX.replace("opening: up", "opening: closed").replace("vented: true", "vented: false")
                + attitudes(3, 2, "0 deg");
        Proposals proposals = proposals(tray(closed));
        assertTrue(of(proposals, "turn").isEmpty());
        Candidate drain = of(proposals, "drain").orElseThrow();
        assertTrue(drain.words().contains("vented high up at the far end"), drain.words());
        assertTrue(drain.notes().stream().anyMatch(note -> note.startsWith("Water still condenses inside: up to ")),
                drain.notes().toString());
        assertTrue(of(proposals, "vent").isEmpty(), "there is no hole yet");
        Candidate vent = of(proposals(tray(closed.replace("drain_holes: none",
                "drain_holes: [{diameter: 10 mm, from_low_end: 20 mm, path_continues: true}]"))), "vent").orElseThrow();
        assertTrue(vent.notes().toString().contains("in a year"), vent.notes().toString());
    }

    /** 220 x 90 x 25 mm. */
    @Test
    void aFillingIsToldWithItsVolumeAndWithoutAMassThatNoTableHolds() {
        Candidate fill = of(proposals(tray(BOX + attitudes(3, 2, "0 deg"))), "fill").orElseThrow();
        assertEquals("FLOOR filled with 495 mL of sealant bonded to a primed wall", fill.words());
        assertTrue(fill.notes().contains("Water left beside the filling: 0 mL while the bond holds."), fill.notes().toString());
    }

    @Test
    void aThickFluidIsGivenAWiderHole() throws IOException {
        EditableDescription part = tray(BOX + attitudes(3, 2, "0 deg"));
        EditableDescription iced = part.with(part.setting("/environment/fluids", DescriptionValue.of("[rain, deicing]")));
        assertTrue(of(proposals(iced), "drain").orElseThrow().words().startsWith("drain hole of 13 mm"));
    }
}
