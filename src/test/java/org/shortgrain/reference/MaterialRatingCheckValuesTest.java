package org.shortgrain.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shortgrain.terms.GrainDirection;

/**
 * Published ratings, thresholds and test stresses, looked up as a user would ask. The source of each set stands above
 * its test.
 */
class MaterialRatingCheckValuesTest {
    private static final double MPA = 1e6;
    /** The tables print whole MPa, so a value is met to the last digit. */
    private static final double PRINTED = 0.5;

    private static MaterialTable materials;

    @BeforeAll
    static void load() {
        materials = ReferenceTables.builtIn().materials();
    }

    private static DirectionAnswer ask(String alloy, String temper, String form, Double millimetres,
            GrainDirection direction) {
        MaterialQuery query = MaterialQuery.ofAlloy(alloy).form(form);
        query = temper == null ? query : query.temper(temper);
        query = millimetres == null ? query : query.thickness(millimetres * 1e-3);
        return materials.lookUp(query).in(direction);
    }

    private static List<String> words(DirectionAnswer answer, String scheme) {
        return answer.level().hits().stream()
                .filter(h -> h.scheme().equals(scheme) && h.reading() != RatingHit.Reading.MAY_APPLY)
                .map(RatingHit::word).distinct().collect(Collectors.toList());
    }

    private static List<Long> stresses(DirectionAnswer answer, SccStress.Kind kind) {
        return answer.stress().hits().stream().filter(s -> s.kind() == kind && !s.mayApply())
                .map(s -> Math.round(s.low().orElseThrow() / MPA)).collect(Collectors.toList());
    }

    /** MIL-HDBK-5J (2003) Table 3.1.2.3.1(a) with footnotes d and e, in an open transcription. */
    @ParameterizedTest(name = "{0}-{1} {2} {3} mm {4}: letter {5}")
    @CsvSource({"7075, T651, plate, 12, ST, D", "7075, T651, plate, 60, ST, D", "7075, T651, plate, 100, ST, D",
        "7075, T6, plate, 38.0, LT, B", "7075, T6, plate, 38.1, LT, C", "7075, T6, extrusion, 25.3, LT, B",
        "7075, T6, extrusion, 25.4, LT, C", "7075, T6, bar_rolled, 30, LT, D",
        "7075, T6, bar_cold_finished, 30, LT, D", "7075, T7351, plate, 60, ST, A",
        "7050, T7451, plate, 150, ST, B", "7050, T7451, plate, 160, ST, B", "7050, T76510, extrusion, 40, ST, C",
        "7050, T76511, extrusion, 40, ST, C", "7050, T76, bar_rolled, 40, ST, B", "2024, T351, plate, 30, ST, D",
        "2024, T351, plate, 30, LT, B", "2024, T351, plate, 40, LT, C", "2024, T6, die_forging, 30, ST, D",
        "2024, T6, die_forging, 30, LT, A", "2024, T6, hand_forging, 40, LT, B", "2024, T851, plate, 30, ST, B",
        "2024, T851, bar_rolled, 30, ST, A", "2024, T8511, extrusion, 30, ST, B", "2024, T852, hand_forging, 30, ST, C",
        "2014, T6, plate, 30, ST, D", "2014, T651, bar_rolled, 30, ST, D", "2014, T6511, extrusion, 30, ST, D",
        "2014, T6, die_forging, 30, ST, D", "2219, T351, plate, 30, ST, D", "7049, T7351, plate, 60, ST, A",
        "7049, T73511, extrusion, 60, ST, B", "7049, T73, die_forging, 60, ST, A", "7475, T7351, plate, 30, ST, A",
        "7475, T7651, plate, 30, ST, C"})
    void theLetterOfTheHandbookIsFound(String alloy, String temper, String form, double millimetres,
            GrainDirection direction, String letter) {
        assertEquals(List.of(letter), words(ask(alloy, temper, form, millimetres, direction), "g64_letter"));
    }

    /** MIL-HDBK-5J (2003) Table 3.1.2.3.1(a): A in every form and direction that is offered. */
    @ParameterizedTest(name = "{0}-{1} {2}: letter A in every direction")
    @CsvSource({"2219, T6, plate", "2219, T6, bar_rolled", "2219, T6, extrusion", "2219, T6, die_forging",
        "2219, T87, plate", "2219, T87, extrusion", "2219, T87, hand_forging", "6061, T651, plate",
        "6061, T651, bar_rolled", "6061, T6511, extrusion", "6061, T6, die_forging", "6061, T652, hand_forging"})
    void aResistantAlloyIsRatedTheSameInEveryDirection(String alloy, String temper, String form) {
        for (GrainDirection direction : GrainDirection.values()) {
            assertEquals(List.of("A"), words(ask(alloy, temper, form, 30.0, direction), "g64_letter"));
        }
    }

    /** MIL-HDBK-5J (2003) Table 3.1.2.3.1(a) has no 2219-T8 bar and no 2090. */
    @Test
    void aProductThatTheLetterTableDoesNotOfferHasNoLetter() {
        assertEquals(List.of(), words(ask("2219", "T851", "bar_rolled", 30.0, GrainDirection.ST), "g64_letter"));
        assertEquals(List.of(), words(ask("2090", "T81", "plate", 30.0, GrainDirection.ST), "g64_letter"));
    }

    /** MIL-HDBK-5J (2003) Tables 3.1.2.3.1(b) to (e), in an open transcription; 0 stands for no row. */
    @ParameterizedTest(name = "{0}-{1} {2} {3} mm: {4} MPa")
    @CsvSource({"7075, T7351, plate, 50, 290", "7075, T7351, plate, 60, 269", "7075, T7351, plate, 80, 248",
        "7075, T7351, plate, 110, 0", "7050, T7451, plate, 150, 241", "7050, T7451, plate, 160, 0",
        "7050, T76511, extrusion, 40, 117", "7010, T7451, plate, 70, 214", "7010, T7451, plate, 100, 241",
        "7175, T74, die_forging, 70, 241", "7175, T74, die_forging, 90, 214", "7175, T74, die_forging, 120, 207",
        "7175, T74, die_forging, 140, 200", "7475, T7351, plate, 30, 276", "7475, T7651, plate, 30, 172",
        "2090, T81, plate, 30, 138", "7075, T7352, die_forging, 76.2, 290", "7075, T7352, die_forging, 76.3, 269"})
    void theStressOfTheQualificationTestIsFound(String alloy, String temper, String form, double millimetres,
            long expected) {
        DirectionAnswer answer = ask(alloy, temper, form, millimetres, GrainDirection.ST);
        assertEquals(expected == 0 ? List.of() : List.of(expected), stresses(answer, SccStress.Kind.QUALIFICATION));
    }

    /** MIL-HDBK-5J (2003) Table 3.1.2.3.1(c): 42 ksi, and 41 ksi over 20 sq in (129 cm2) of section. */
    @Test
    void anExtrusionOfUnknownSectionTakesTheLowerFigure() {
        MaterialQuery thick = MaterialQuery.ofAlloy("7075").temper("T73").form("extrusion").thickness(0.100);
        assertEquals(290, lowestTestStress(thick.sectionArea(100e-4)), PRINTED);
        assertEquals(283, lowestTestStress(thick.sectionArea(150e-4)), PRINTED);
        assertEquals(283, lowestTestStress(thick), PRINTED);
    }

    private static double lowestTestStress(MaterialQuery query) {
        return materials.lookUp(query).in(GrainDirection.ST).stress().hits().stream()
                .filter(s -> s.kind() == SccStress.Kind.QUALIFICATION).mapToDouble(s -> s.low().orElseThrow() / MPA)
                .min().orElseThrow();
    }

    /** MIL-STD-1568C (2014) 5.2.3.1.4: 25 ksi (172.4 MPa, printed 173) frees a part from mandatory peening. */
    @Test
    void theExtrusionTemperLiesBelowThePeeningLimitAndThePlateTemperAbove() {
        assertTrue(stresses(ask("7050", "T76511", "extrusion", 40.0, GrainDirection.ST),
                SccStress.Kind.QUALIFICATION).get(0) < 173);
        assertTrue(stresses(ask("7050", "T7451", "plate", 100.0, GrainDirection.ST),
                SccStress.Kind.QUALIFICATION).get(0) >= 173);
        assertTrue(materials.lookUp(MaterialQuery.ofAlloy("7050").temper("T76511").form("extrusion")).statements()
                .stream().anyMatch(s -> s.citation().clause().equals("5.2.3.1.4")));
    }

    /** Corrosion 23(11), 335 (1967), abstract: 7 ksi for 7075-T651 and 7079-T651; 27 ksi for 7178-T7651, 7001-T7551. */
    @ParameterizedTest(name = "{0}-{1} plate ST: threshold {2} MPa")
    @CsvSource({"7075, T651, 48", "7079, T651, 48", "7178, T7651, 186", "7001, T7551, 186"})
    void theThresholdOfThePlateTestsIsFound(String alloy, String temper, long expected) {
        DirectionAnswer answer = ask(alloy, temper, "plate", 34.9, GrainDirection.ST);
        assertTrue(stresses(answer, SccStress.Kind.THRESHOLD).contains(expected));
        assertTrue(answer.stress().low().orElseThrow() <= expected * MPA);
    }

    /** As above; the class words of MSFC-STD-3029A and ECSS-Q-ST-70-36C are from memory. */
    @Test
    void theMostSusceptiblePlateIsWorstInEveryScheme() {
        DirectionAnswer answer = ask("7075", "T651", "plate", 60.0, GrainDirection.ST);
        assertEquals(SccLevel.LEVEL_1, answer.level().level());
        assertEquals(List.of("low"), words(answer, "msfc_std_3029"));
        assertEquals(List.of("low"), words(answer, "ecss_q_st_70_36"));
        assertEquals(48 * MPA, answer.stress().low().orElseThrow(), 1);
        assertFalse(answer.stress().restsOnMemory());
    }

    /** MSFC-STD-3029A (2005) and ECSS-Q-ST-70-36C (2009), from memory. */
    @ParameterizedTest(name = "{0} {1} {2}: MSFC {3}, ECSS {4}")
    @CsvSource({"7075, T7351, plate, high, high", "2014, T6, die_forging, low, low",
        "15-5PH, H1025, bar_rolled, high, high", "15-5PH, H900, bar_rolled, moderate, moderate",
        "Custom 455, H1000, bar_rolled, high, high", "Custom 455, H950, bar_rolled, low, low",
        "17-7PH, CH900, sheet, high, high", "17-7PH, TH1050, sheet, low, low", "440C, , bar_rolled, low, low",
        "Ti-6Al-4V, annealed, bar_rolled, high, high", "Ti-8Al-1Mo-1V, annealed, sheet, low, low",
        "AZ31B, , sheet, moderate, moderate", "AZ61A, , extrusion, low, low"})
    void theClassIsFound(String alloy, String temper, String form, String msfc, String ecss) {
        DirectionAnswer answer = ask(alloy, temper, form, 30.0, GrainDirection.ST);
        assertEquals(List.of(msfc), words(answer, "msfc_std_3029"));
        assertEquals(List.of(ecss), words(answer, "ecss_q_st_70_36"));
    }

    /** MSFC-STD-3029A (2005): 1240 and 1380 MPa; ECSS-Q-ST-70-36C (2009): 1225 and 1370 MPa; both from memory. */
    @ParameterizedTest(name = "4340 at {0} MPa: MSFC {1}, ECSS {2}, level {3}")
    @CsvSource({"1200, high, high, 4", "1235, high, moderate, 2", "1300, moderate, moderate, 2",
        "1375, moderate, low, 1", "1450, low, low, 1"})
    void steelIsClassedByItsGreatestStrength(double mpa, String msfc, String ecss, int level) {
        MaterialQuery query = MaterialQuery.ofAlloy("4340").form("bar_rolled").strength(mpa * MPA, mpa * MPA);
        DirectionAnswer answer = materials.lookUp(query).in(GrainDirection.ST);
        assertEquals(List.of(msfc), words(answer, "msfc_std_3029"));
        assertEquals(List.of(ecss), words(answer, "ecss_q_st_70_36"));
        assertEquals(level, answer.level().level().number());
        assertEquals(!msfc.equals(ecss), answer.level().sourcesDisagree());
    }

    /** MSFC-SPEC-522B and ECSS: moderate in all conditions; MSFC-STD-3029A: high from H1000; all from memory. */
    @Test
    void whereTwoEditionsConflictTheWorseCountsAndTheConflictIsTold() {
        DirectionAnswer answer = ask("17-4PH", "H1025", "bar_rolled", 60.0, GrainDirection.ST);
        assertEquals(List.of("high", "moderate"), words(answer, "msfc_std_3029"));
        assertEquals(List.of("moderate"), words(answer, "ecss_q_st_70_36"));
        assertEquals(SccLevel.LEVEL_2, answer.level().level());
        assertTrue(answer.level().sourcesDisagree());
    }

    /** MSFC-STD-3029 (2000) against 3029A (2005), foreword of the latter, read. */
    @Test
    void freeMachiningSteelIsLowInOneEditionAndHighInTheNext() {
        DirectionAnswer answer = ask("303", "annealed", "bar_rolled", 20.0, GrainDirection.ST);
        assertTrue(answer.level().hits().stream().anyMatch(h -> h.citation().id().equals("msfc-std-3029-2000")
                && h.word().equals("low")));
        assertTrue(answer.level().hits().stream().anyMatch(h -> h.citation().id().equals("msfc-std-3029a")
                && h.word().equals("high") && !h.citation().status().needsConfirmation()));
        assertEquals(SccLevel.LEVEL_1, answer.level().level());
        assertTrue(answer.level().sourcesDisagree());
    }

    /** MIL-STD-1568C (2014) Table I, read: very high; MIL-HDBK-5J (2003) Table 3.1.2.3.1(a): B. */
    @Test
    void aLikelyMisprintOnTheGoodSideDoesNotCount() {
        DirectionAnswer answer = ask("7075", "T74", "die_forging", 60.0, GrainDirection.ST);
        assertEquals(List.of("very high"), words(answer, "mil_std_1568"));
        assertEquals(List.of("B"), words(answer, "g64_letter"));
        assertEquals(SccLevel.LEVEL_3, answer.level().level());
        assertTrue(answer.level().sourcesDisagree());
    }

    /** Alloys that no table seen rates; service cracking of 7449 told by the trade press (2019). */
    @ParameterizedTest(name = "{0}-{1}: not rated")
    @CsvSource({"7449, T7651, plate", "2060, T8, plate", "8090, T8, plate"})
    void anAlloyThatNoTableRatesIsUnknownAndNearOnesAreNamed(String alloy, String temper, String form) {
        MaterialAnswer answer = materials.lookUp(MaterialQuery.ofAlloy(alloy).temper(temper).form(form));
        assertEquals(SccLevel.UNKNOWN, answer.in(GrainDirection.ST).level().level());
        assertEquals(Susceptibility.UNKNOWN, answer.in(GrainDirection.ST).level().susceptibility());
        assertFalse(answer.statements().isEmpty());
    }

    /** MIL-HDBK-5J (2003) 3.1.2.3.1, in an open transcription; the class words from memory. */
    @Test
    void strainHardenedMarineAlloysAreJudgedByTemperAndTemperature() {
        DirectionAnswer uncontrolled = ask("5083", "H32", "plate", 20.0, GrainDirection.ST);
        assertEquals(List.of("not recommended"), words(uncontrolled, "mil_hdbk_5_text"));
        assertEquals(SccLevel.LEVEL_1, uncontrolled.level().level());
        DirectionAnswer controlled = ask("5083", "H116", "plate", 20.0, GrainDirection.ST);
        assertEquals(List.of("high"), words(controlled, "msfc_std_3029"));
        OptionalDouble limit = materials.lookUp(MaterialQuery.ofAlloy("5083").temper("H116").form("plate"))
                .statements().stream().filter(s -> s.kind().equals("temperature limit"))
                .map(MaterialStatement::aboveCelsius).findFirst().orElseThrow();
        assertEquals(66, limit.orElseThrow(), 0);
    }

    /** MIL-HDBK-5J (2003) Figure 2.5.0.2(a) at 10 000 h, digitised; Table 2.6.5.0(a) for Custom 465. */
    @ParameterizedTest(name = "{0} {1}: {2} MPa sqrt(m)")
    @CsvSource({"4340, , 10.1", "300M, , 14.1", "AerMet 100, , 21.5", "AF1410, , 25.3", "Custom 465, H950, 74.7",
        "Custom 465, H1000, 107.7"})
    void theCrackThresholdOfHighStrengthSteelIsFound(String alloy, String condition, double expected) {
        MaterialQuery query = MaterialQuery.ofAlloy(alloy).form("bar_rolled");
        MaterialAnswer answer = materials.lookUp(condition == null ? query : query.temper(condition));
        assertTrue(answer.growth().stream().anyMatch(g -> g.kisccLow().isPresent()
                && Math.abs(g.kisccLow().getAsDouble() / MPA - expected) < 0.01));
    }

    /** Order by over-ageing: MIL-HDBK-5J (2003) 3.7, for the 7xxx alloys that have the tempers. */
    @ParameterizedTest(name = "{0} {1}: more ageing is never worse in ST")
    @CsvSource({"7075, plate", "7075, extrusion", "7075, die_forging", "7050, plate", "7050, extrusion", "7475, plate"})
    void moreAgeingIsNeverWorse(String alloy, String form) {
        int before = 0;
        for (String temper : List.of("T6", "T76", "T74", "T73")) {
            int level = ask(alloy, temper, form, 30.0, GrainDirection.ST).level().level().number();
            if (level > 0) {
                assertTrue(before <= level, alloy + "-" + temper);
                before = level;
            }
        }
    }

    /** MIL-HDBK-5J (2003) Tables 3.1.2.3.1(b) to (e); 7010-T7451 plate is printed lower when thinner. */
    @Test
    void testStressNeverRisesWithThicknessButForOnePrintedException() {
        for (StressTable.StressRow thin : materials.stresses().all()) {
            for (StressTable.StressRow thick : materials.stresses().all()) {
                boolean sameProduct = thin.stress().kind() == SccStress.Kind.QUALIFICATION
                        && thick.stress().kind() == SccStress.Kind.QUALIFICATION
                        && thin.scope().alloys().equals(thick.scope().alloys())
                        && thin.scope().tempers().text().equals(thick.scope().tempers().text())
                        && thin.scope().forms().equals(thick.scope().forms())
                        && thin.scope().area().equals(thick.scope().area());
                boolean exception = thin.scope().alloys().contains("7010")
                        && thin.scope().tempers().text().equals("=T7451");
                if (sameProduct && !exception && thin.scope().thickness().to() < thick.scope().thickness().to()) {
                    assertTrue(thin.stress().low().orElseThrow() >= thick.stress().low().orElseThrow(),
                            thin.scope().describe());
                }
            }
        }
    }
}
