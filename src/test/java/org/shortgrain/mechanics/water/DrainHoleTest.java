package org.shortgrain.mechanics.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shortgrain.mechanics.water.Hollows.ML;
import static org.shortgrain.mechanics.water.Hollows.MM;
import static org.shortgrain.mechanics.water.Hollows.given;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Given;
import org.shortgrain.terms.SourceStatus;

/** Drain holes, surface tension, drain time. Where nothing else is said the values are own arithmetic, met to half of their
 * last digit. */
class DrainHoleTest {

    private static final Capillarity WATER = new Capillarity(0.0728, 998.2, 9.80665);

    private static DrainHole hole(double millimetres) {
        return new DrainHole(given(millimetres), Liquid.WATER);
    }

    @Test
    void capillaryLengthOfWater() {
        assertEquals(2.72707, WATER.length() / MM, 5e-6);
    }

    /** The documentation of the open fluids library prints 665187.2339558573 for this Bond number (secondary). */
    @Test
    void bondNumberAsAnOpenLibraryPrintsIt() {
        assertEquals(665187.2339558573, new Capillarity(0.0589, 1000 - 1.2, 9.80665).bond(2), 1e-6);
    }

    /** Drainage value 10, to 0.01 mm. */
    @ParameterizedTest
    @CsvSource({"3, 9.92", "4.76, 6.25", "6.35, 4.68", "8, 3.72", "9.525, 3.12", "12.7, 2.34"})
    void headThatSurfaceTensionHoldsOverAHole(double diameter, double millimetres) {
        assertEquals(millimetres, hole(diameter).holdUp().value().value() / MM, 5e-3);
    }

    /** Drainage value 8, to 0.01 mm2. */
    @ParameterizedTest
    @CsvSource({"9.525, 71.26", "9.5, 70.88", "6.35, 31.67", "3, 7.07"})
    void areaOfAHole(double diameter, double squareMillimetres) {
        assertEquals(squareMillimetres, hole(diameter).area().value() / (MM * MM), 5e-3);
    }

    /** Drainage value 9: MIL-STD-1568C, 5.2.2.3 (read), asks for 9.525 mm; the allowance of 0.05 mm is our own. */
    @Test
    void theLeastHoleOfTheTradeAndTheMetricDrillBelowItAreWideEnough() {
        assertTrue(hole(9.525).isWideEnough());
        assertTrue(hole(9.5).isWideEnough());
        assertFalse(hole(9.47).isWideEnough());
        assertFalse(hole(6.35).isWideEnough());
        assertFalse(new DrainHole(Given.limits(9.3 * MM, 9.8 * MM, "test"), Liquid.WATER).isWideEnough(), "at its smallest");
    }

    /** Cavity 200 x 100 mm, 30 mm deep, Cd 0.6, hole of each size: seconds to the last drop, head held, millilitres left,
     * Bond number. */
    @ParameterizedTest
    @CsvSource({"3.2, 324.193, 9.2962, 185.92, 1.377", "4.76, 146.518, 6.2495, 124.99, 3.047",
        "6.35, 82.330, 4.6847, 93.69, 5.422", "9.525, 36.591, 3.1231, 62.46, 12.199"})
    void aCavityEmptiesThroughAHole(double diameter, double seconds, double head, double left, double bond) {
        DrainHole hole = hole(diameter);
        Given plan = Given.exact(0.02, "test");
        DrainTime time = new DrainTime(plan, Given.exact(hole.area().value(), "test"), given(30),
                Given.exact(hole.head().value(), "test"));
        assertEquals(seconds, time.computed().steps().get(0).value().value(), 5e-4);
        assertEquals(head, hole.head().value() / MM, 5e-5);
        assertEquals(left, hole.residue(plan, Given.exact(0.02 * 30 * MM, "test")).value().value() / ML, 5e-3);
        assertEquals(bond, WATER.bond(diameter * MM), 5e-4);
        assertTrue(time.computed().value().value() < seconds, "it stops before the last drop");
    }

    @Test
    void surfaceTensionHoldsNoMoreThanTheHollow() {
        Computed left = hole(3).residue(Given.exact(0.02, "test"), Given.exact(10 * ML, "test"));
        assertEquals(10, left.value().value() / ML, 1e-12);
    }

    /** A practice problem of the FE examination: tank of 4 ft, outlet of 5 in2, from 6 to 2 ft, no losses, g = 32.2 ft/s2. It
     * prints 93.9 s with rounded square roots; exact arithmetic gives 93.3782 s, and with Cd = 0.6 155.6304 s. */
    @Test
    void tankOfAnExaminationProblem() {
        double plan = Math.PI * 4 * 4 / 4;
        double outlet = 5.0 / 144;
        assertEquals(93.3782, DrainTime.seconds(plan, outlet, 1, 32.2, 6, 2), 5e-5);
        assertEquals(93.9, DrainTime.seconds(plan, outlet, 1, 32.2, 6, 2), 0.006 * 93.9);
        assertEquals(155.6304, DrainTime.seconds(plan, outlet, 0.6, 32.2, 6, 2), 5e-5);
    }

    /** A published question: tank of 5 m, hole of 0.25 m, Cd 0.62, from 3.65 to 1.825 m, g = 9.81 m/s2. */
    @Test
    void tankOfATextbookQuestion() {
        double plan = Math.PI * 5 * 5 / 4;
        double hole = Math.PI * 0.25 * 0.25 / 4;
        assertEquals(163.0064, DrainTime.seconds(plan, hole, 0.62, 9.81, 3.65, 1.825), 5e-5);
    }

    @Test
    void nothingFlowsWhenTheHeadIsHeldFromTheStart() {
        assertEquals(0, DrainTime.seconds(1, 0.01, 0.6, 9.81, 0.003, 0.004), 0);
    }

    @Test
    void outsideItsRangeTheDrainTimeSaysSo() {
        DrainTime shallow = new DrainTime(Given.exact(0.02, "test"), Given.exact(hole(9.525).area().value(), "test"),
                given(10), given(3));
        assertFalse(shallow.computed().validity().inside());
        DrainTime deep = new DrainTime(Given.exact(0.02, "test"), Given.exact(hole(9.525).area().value(), "test"),
                given(100), given(3));
        assertTrue(deep.computed().validity().inside(), deep.computed().validity()::statement);
    }

    /** Height of capillary rise for gamma 0.0728, theta 20 deg, rho 1000, g 9.8; published as 0.014, 1.4 and 140 mm, from an
     * encyclopaedia (secondary). */
    @ParameterizedTest
    @CsvSource({"1000, 0.0139611", "10, 1.396115", "0.1, 139.6115"})
    void waterRisesInATube(double radius, double millimetres) {
        double rise = new Capillarity(0.0728, 1000, 9.8).riseInTube(radius * MM, Math.toRadians(20)) / MM;
        assertEquals(millimetres, rise, 5e-7 * Math.max(1, 100 * millimetres / 140));
    }

    /** Jurin: a gap of 0.1 mm between faces that wet fully. */
    @Test
    void waterRisesInAFayingGap() {
        Computed rise = new FayingGap(given(0.1), Liquid.WATER).rise();
        assertEquals(148.738, rise.value().value() / MM, 5e-4);
        assertTrue(rise.validity().inside());
        assertFalse(new FayingGap(given(5), Liquid.WATER).rise().validity().inside(), "5 mm is no capillary gap");
    }

    /** Drainage value 11: common width of two holes, mm. */
    @ParameterizedTest
    @CsvSource({"9.525, 12.7, 1.0, 9.525", "9.525, 12.7, 1.5875, 9.525", "9.525, 12.7, 1.6, 9.5125",
        "9.525, 9.525, 2, 7.525", "9.525, 9.525, 4, 5.525", "9.525, 9.525, 12, 0"})
    void anOffsetNeighbourNarrowsADrain(double hole, double neighbour, double offset, double width) {
        CommonOpening opening = new CommonOpening(given(hole), given(neighbour), given(offset));
        assertEquals(width, opening.computed().value().value() / MM, 1e-9);
    }

    /** Extrand, Langmuir 33 (2017) 12903, abstract (read): water stayed in closed-top tubes up to 10 to 15 mm, 3.69 to 5.53
     * capillary lengths with 72 mN/m and 998 kg/m3; theory 2 x 1.8412 capillary lengths, 10.04 mm. */
    @Test
    void theOnlyOpeningOfAClosedHollowKeepsItsWater() {
        Computed limit = new UnventedHole(given(9.525)).limit();
        assertEquals(10, limit.value().low() / MM, 0);
        assertEquals(15, limit.value().high() / MM, 0);
        assertEquals(10.04, limit.steps().get(0).value().value() / MM, 5e-3);
        double length = new Capillarity(0.072, 998, 9.80665).length();
        assertEquals(3.69, limit.value().low() / length, 5e-3);
        assertEquals(5.53, limit.value().high() / length, 5e-3);
        assertTrue(new UnventedHole(given(9.525)).mayHold());
        assertTrue(new UnventedHole(given(14)).mayHold());
        assertFalse(new UnventedHole(given(16)).mayHold());
    }

    @Test
    void aTightAndBondedFillTakesTheRoomOfTheWater() {
        Given trapped = Given.limits(90 * ML, 100 * ML, "test");
        assertEquals(0, Filling.TIGHT_AND_BONDED.left(trapped).value().high(), 0);
        assertEquals(100, Filling.TIGHT_AND_LOOSE.left(trapped).value().high() / ML, 1e-9);
        assertEquals(0, Filling.TIGHT_AND_LOOSE.left(trapped).value().low(), 0);
        assertEquals(90, Filling.SPONGE.left(trapped).value().low() / ML, 1e-9);
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> hole(0));
        assertThrows(IllegalArgumentException.class, () -> new FayingGap(given(0), Liquid.WATER));
        assertThrows(IllegalArgumentException.class,
                () -> new DrainTime(given(0), given(1), given(1), given(1)));
    }

    @Test
    void whatIsFromMemorySaysSo() {
        assertTrue(hole(9.525).holdUp().inputs().stream().flatMap(input -> input.source().stream())
                .anyMatch(source -> source.status() == SourceStatus.MEMORY));
    }
}
