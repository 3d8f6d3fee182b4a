package org.shortgrain.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Temper designations by the forms of ANSI H35.1, as MIL-HDBK-5J Table 3.1.2 repeats them (open transcription). */
class TemperTest {
    private static ReferenceTables tables;

    @BeforeAll
    static void load() {
        tables = ReferenceTables.builtIn();
    }

    private static Temper read(String text, String family) {
        return tables.tempers().read(Optional.of(text), Optional.of(family));
    }

    private static List<TemperRemark.Kind> remarks(String alloy, String temper, String form) {
        return tables.temperRules().check(tables.materials().lookUp(MaterialQuery.ofAlloy(alloy).temper(temper)
                .form(form))).stream().map(TemperRemark::kind).toList();
    }

    @ParameterizedTest(name = "{0} is base {1}, digits {2}, relief {3}, {4}")
    @CsvSource({"T3, 3, '', '', NATURAL", "T351, 3, '', 51, NATURAL", "T3511, 3, '', 511, NATURAL",
        "T361, 3, 61, '', NATURAL", "T42, 4, 2, '', NATURAL", "T4511, 4, '', 511, NATURAL", "T6, 6, '', '', PEAK",
        "T62, 6, 2, '', PEAK", "T651, 6, '', 51, PEAK", "T6511, 6, '', 511, PEAK", "T652, 6, '', 52, PEAK",
        "T6151, 6, 1, 51, PEAK", "T61511, 6, 1, 511, PEAK", "T73, 7, 3, '', OVERAGED", "T7351, 7, 3, 51, OVERAGED",
        "T73511, 7, 3, 511, OVERAGED", "T7352, 7, 3, 52, OVERAGED", "T7354, 7, 3, 54, OVERAGED",
        "T74, 7, 4, '', OVERAGED", "T7451, 7, 4, 51, OVERAGED", "T7452, 7, 4, 52, OVERAGED",
        "T7454, 7, 4, 54, OVERAGED", "T7651, 7, 6, 51, OVERAGED", "T76511, 7, 6, 511, OVERAGED",
        "T7751, 7, 7, 51, OVERAGED", "T77511, 7, 7, 511, OVERAGED", "T79511, 7, 9, 511, OVERAGED",
        "T851, 8, '', 51, PEAK", "T8511, 8, '', 511, PEAK", "T852, 8, '', 52, PEAK", "T861, 8, 61, '', PEAK",
        "T87, 8, 7, '', PEAK"})
    void aTemperIsTakenApart(String text, String base, String digits, String relief, Temper.State state) {
        Temper.HeatTreated temper = assertInstanceOf(Temper.HeatTreated.class, read(text, "aluminium_7xxx"));
        assertEquals(List.of(base, digits, relief), List.of(temper.base(), temper.digits(), temper.relief()));
        assertEquals(state, temper.state());
    }

    @ParameterizedTest
    @ValueSource(strings = {"T0", "T6512", "T6521", "T7353", "T73515", "T6S", "X6", "T", "T551", "T151", "T6/T73",
        "over-aged"})
    void aTextThatIsNoTemperIsToldApart(String text) {
        assertInstanceOf(Temper.Unreadable.class, read(text, "aluminium_7xxx"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"T11", "T65", "T735", "T75", "T755", "T5151"})
    void digitsThatTheListDoesNotHoldAreToldApart(String text) {
        assertEquals(Temper.State.UNLISTED,
                assertInstanceOf(Temper.HeatTreated.class, read(text, "aluminium_7xxx")).state());
    }

    @Test
    void theOldNameOfT74IsReplaced() {
        Temper.HeatTreated temper = (Temper.HeatTreated) read("T73651", "aluminium_7xxx");
        assertEquals("T7451", temper.normal());
        assertEquals(Optional.of("T73651"), temper.formerName());
    }

    @ParameterizedTest(name = "{0}: {1} open")
    @CsvSource({"T7, SECOND", "T7x, SECOND", "T7_51, SECOND", "T73xx, RELIEF", "T73xxx, RELIEF", "T6xx, RELIEF",
        "T7351, NONE"})
    void openDigitsAreToldApart(String text, Temper.OpenDigits open) {
        assertEquals(open, ((Temper.HeatTreated) read(text, "aluminium_7xxx")).open());
    }

    @Test
    void conditionsOfSteelAndStrainHardenedTempersAreToldApartByFamily() {
        assertInstanceOf(Temper.StrainHardened.class, read("H116", "aluminium_5xxx"));
        assertEquals(1025, assertInstanceOf(Temper.AgedCondition.class, read("H1025", "ph_steel")).fahrenheit());
        assertEquals(180, assertInstanceOf(Temper.HardenedTo.class, read("HT-180", "low_alloy_steel")).ksi());
        assertEquals("annealed", read("mill annealed", "titanium").normal());
        assertEquals(37, assertInstanceOf(Temper.ColdWorked.class, read("37 %", "copper_alloy")).percent());
    }

    @ParameterizedTest(name = "{0} on {1} tells no temper")
    @CsvSource({"heat treated, aluminium_7xxx", "STA, aluminium_7xxx", "hardened, ph_steel", "as usual, aluminium_2xxx",
        "HT, low_alloy_steel"})
    void aWordThatTellsNoTemperIsReadAsNone(String text, String family) {
        assertInstanceOf(Temper.NotStated.class, read(text, family));
    }

    @ParameterizedTest(name = "{0}-{1} {2}: {3}")
    @CsvSource({"2024, T73, plate, NO_SUCH_PAIR", "7075, T851, plate, NO_SUCH_PAIR",
        "7075, T73511, plate, FORM_CONTRADICTS_DIGITS", "7050, T7454, hand_forging, FORM_CONTRADICTS_DIGITS",
        "7050, T7452, plate, DIGITS_TO_QUERY", "7075, T651, hand_forging, DIGITS_TO_QUERY",
        "7075, T651, die_forging, DIGITS_TO_QUERY", "7075, T73, die_forging, UNRELIEVED", "7075, T62, plate, USER_TREATED",
        "7075, T6, plate, DIGITS_OPEN", "7075, T736, die_forging, OLD_NAME", "7050, T76, die_forging, NOT_ON_FORGING_LIST",
        "7075, T65, plate, UNLISTED", "7075, T6S, plate, UNREADABLE"})
    void aContradictionBetweenAlloyTemperAndFormIsRemarked(String alloy, String temper, String form,
            TemperRemark.Kind kind) {
        assertTrue(remarks(alloy, temper, form).contains(kind), remarks(alloy, temper, form).toString());
    }

    @ParameterizedTest
    @CsvSource({"7075, T7351, plate", "7050, T7451, plate", "7075, T73511, extrusion", "7075, T7352, hand_forging",
        "7050, T7452, die_forging", "2024, T351, plate", "2219, T87, plate", "7075, T6, sheet"})
    void whatGoesTogetherIsNotRemarked(String alloy, String temper, String form) {
        assertEquals(List.of(), remarks(alloy, temper, form).stream()
                .filter(k -> k.contradiction() || k == TemperRemark.Kind.DIGITS_TO_QUERY
                        || k == TemperRemark.Kind.DIGITS_OPEN).toList());
    }

    /** Two-step cycles of 7075-T73: producers' sheets, as reproduced; MIL-H-6088 family, from memory. */
    @Test
    void oneAgeingStepDoesNotLeadToAnOverAgedTemper() {
        MaterialAnswer t73 = tables.materials().lookUp(MaterialQuery.ofAlloy("7075").temper("T73").form("die_forging"));
        assertEquals(TemperRemark.Kind.AGEING_CONTRADICTS,
                tables.ageing().check(t73, 1).orElseThrow().kind());
        assertTrue(tables.ageing().check(t73, 2).isEmpty());
        MaterialAnswer t6 = tables.materials().lookUp(MaterialQuery.ofAlloy("7075").temper("T6").form("die_forging"));
        assertTrue(tables.ageing().check(t6, 1).isEmpty());
    }

    @Test
    void theSecondStepOfOverAgeingIsTheHotterOne() {
        MaterialAnswer answer = tables.materials().lookUp(MaterialQuery.ofAlloy("7050").temper("T7452")
                .form("hand_forging"));
        List<Ageing.Cycle> cycles = tables.ageing().cycles(answer);
        assertFalse(cycles.isEmpty());
        for (Ageing.Cycle cycle : cycles) {
            assertTrue(cycle.steps().get(1).minCelsius() > cycle.steps().get(0).maxCelsius());
        }
    }

    /** A user heat treatment may raise a concern by the mill's row but is not cleared by it. */
    @Test
    void aUserHeatTreatmentIsNotClearedByTheMillsRating() {
        LevelAnswer level = tables.materials().lookUp(MaterialQuery.ofAlloy("7075").temper("T732").form("plate")
                .thickness(0.030)).in(org.shortgrain.terms.GrainDirection.ST).level();
        assertTrue(level.open().contains(OpenDatum.TEMPER_PROOF));
        assertEquals(Susceptibility.UNKNOWN, level.susceptibility());
    }

    /** DSTO-TR-2104 (2008), summary: damage of 7050-T7451 above 205 degC; the limits of T6 and T7 from memory. */
    @Test
    void heatAfterAgeingThatHarmsIsListedByAlloyAndTemper() {
        MaterialAnswer plate = tables.materials().lookUp(MaterialQuery.ofAlloy("7050").temper("T7451").form("plate"));
        assertTrue(tables.ageing().heatLimits(plate).stream().anyMatch(l -> l.aboveCelsius() == 205));
        MaterialAnswer titanium = tables.materials().lookUp(MaterialQuery.ofAlloy("Ti-6Al-4V").temper("annealed"));
        assertEquals(List.of(), tables.ageing().heatLimits(titanium));
    }
}
