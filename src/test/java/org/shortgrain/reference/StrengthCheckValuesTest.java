package org.shortgrain.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shortgrain.terms.GrainDirection;

/** Minimum strengths looked up as a user would ask, against the figures printed in ksi. */
class StrengthCheckValuesTest {
    private static final double MPA = 1e6;
    /** The tables hold MPa to one decimal, so a printed ksi figure comes back within half of that. */
    private static final double PRINTED = 0.06;

    private static ReferenceTables tables;

    @BeforeAll
    static void load() {
        tables = ReferenceTables.builtIn();
    }

    /** A section of 100 cm2 lies in the first area band of every table that has several. */
    private static StrengthAnswer ask(String alloy, String temper, String form, double millimetres,
            GrainDirection direction) {
        return tables.materials().lookUp(MaterialQuery.ofAlloy(alloy).temper(temper).form(form)
                .thickness(millimetres * 1e-3).sectionArea(100e-4)).in(direction).strength();
    }

    /** MIL-HDBK-5J (31 January 2003), table in the last column; ksi as printed there. */
    @ParameterizedTest(name = "{0}-{1} {2} {3} mm {4}: {5}/{6} ksi")
    @CsvSource({"7075, T6, die_forging, 20, L, A, 75, 64, 3.7.6.0(e1)", "7075, T73, die_forging, 20, L, S, 66, 56, 3.7.6.0(e2)",
        "7075, T7352, die_forging, 20, ST, S, 62, 51, 3.7.6.0(e2)", "7075, T651, plate, 25, LT, A, 78, 68, 3.7.6.0(b1)",
        "7075, T7651, plate, 25, LT, S, 71, 60, 3.7.6.0(b4)", "7075, T7351, plate, 25, LT, A, 69, 57, 3.7.6.0(b3)",
        "7075, T651, plate, 60, ST, A, 70, 59, 3.7.6.0(b1)", "7075, T7351, plate, 60, ST, A, 62, 49, 3.7.6.0(b3)",
        "7050, T7451, plate, 100, ST, S, 68, 57, 3.7.4.0(b1)", "7050, T7452, hand_forging, 100, ST, S, 67, 55, 3.7.4.0(d)",
        "7050, T74, die_forging, 100, LT, S, 67, 55, 3.7.4.0(c1)", "7075, T7352, hand_forging, 100, ST, A, 60, 48, 3.7.6.0(f2)",
        "7175, T74, die_forging, 60, L, S, 76, 66, 3.7.8.0(b)", "7049, T73, die_forging, 60, L, A, 69, 58, 3.7.3.0(c)",
        "2014, T6, die_forging, 40, ST, S, 64, 55, 3.2.1.0(e)", "2014, T652, hand_forging, 100, ST, S, 61, 51, 3.2.1.0(f)",
        "2024, T351, plate, 70, ST, A, 52, 38, 3.2.3.0(b1)", "2124, T851, plate, 70, ST, A, 63, 55, 3.2.7.0(b)",
        "2219, T87, plate, 70, ST, A, 56, 50, 3.2.8.0(b3)", "2618, T61, hand_forging, 60, ST, S, 52, 42, 3.2.13.0(c)",
        "6061, T6, die_forging, 60, L, S, 38, 35, 3.6.2.0(e)", "15-5PH, H1025, plate, 60, LT, S, 155, 145, 2.6.7.0(c)",
        "17-4PH, H900, bar_rolled, 60, L, A, 190, 170, 2.6.9.0(e)", "PH13-8Mo, H1000, bar_rolled, 60, ST, S, 201, 190, 2.6.6.0(b)",
        "Ti-6Al-4V, annealed, plate, 60, LT, A, 130, 118, 5.4.1.0(b)", "300M, HT-280, die_forging, 60, L, S, 280, 230, 2.3.1.0(f1)",
        "7150, T7751, plate, 60, ST, S, 77, 67, 3.7.7.0(b2)", "7475, T7351, plate, 60, ST, A, 65, 53, 3.7.10.0(c)",
        "7010, T7651, plate, 60, ST, S, 71, 59, 3.7.1.0(b2)", "7050, T76511, extrusion, 40, L, S, 79, 69, 3.7.4.0(e3)",
        "7050, T74511, extrusion, 40, L, S, 73, 63, 3.7.4.0(e2)", "7050, T73511, extrusion, 40, L, S, 70, 60, 3.7.4.0(e1)",
        "7075, T6511, extrusion, 22, L, A, 81, 72, 3.7.6.0(g1)", "7075, T76511, extrusion, 22, L, A, 75, 65, 3.7.6.0(g3)",
        "7075, T73511, extrusion, 22, L, A, 70, 60, 3.7.6.0(g2)", "2014, T6511, extrusion, 22, L, A, 68, 60, 3.2.1.0(g)",
        "2024, T851, plate, 20, LT, S, 66, 58, 3.2.3.0(b3)"})
    void theMinimumOfTheHandbookGoverns(String alloy, String temper, String form, double millimetres,
            GrainDirection direction, String basis, double ftuKsi, double ftyKsi, String table) {
        StrengthAnswer answer = ask(alloy, temper, form, millimetres, direction);
        assertEquals(ftuKsi * 6.894757, answer.ftu().orElseThrow() / MPA, PRINTED);
        assertEquals(ftyKsi * 6.894757, answer.fty().orElseThrow() / MPA, PRINTED);
        assertEquals(basis, answer.governing().orElseThrow().basis().name());
        assertTrue(answer.governing().orElseThrow().citation().clause().contains(table));
    }

    /** MIL-HDBK-5J Table 2.3.1.0(f1) prints 260/217 ksi; MMPDS-08, quoted in an engineering note, 260/215 ksi. */
    @Test
    void ofTwoEditionsTheLowerYieldStrengthGovernsAndBothAreShown() {
        StrengthAnswer answer = ask("4340", "HT-260", "die_forging", 40, GrainDirection.L);
        assertEquals(260 * 6.894757, answer.ftu().orElseThrow() / MPA, PRINTED);
        assertEquals(215 * 6.894757, answer.fty().orElseThrow() / MPA, PRINTED);
        assertTrue(answer.hits().stream().anyMatch(s -> s.citation().clause().contains("2.3.1.0(f1)")
                && Math.abs(s.fty().orElseThrow() / MPA - 1496.2) < PRINTED));
    }

    /** MIL-HDBK-5J Tables 3.7.6.0(b3) and 3.7.4.0(b2) end at 4.0 and 3.0 in; plate to 1.5 in has no ST minimum. */
    @ParameterizedTest(name = "{0}-{1} {2} {3} mm {4}: no minimum")
    @CsvSource({"7075, T7351, plate, 110, L", "7050, T7651, plate, 90, L", "7075, T7452, plate, 40, L",
        "7075, T651, plate, 25, ST"})
    void whereTheHandbookPrintsNothingNothingIsGiven(String alloy, String temper, String form, double millimetres,
            GrainDirection direction) {
        StrengthAnswer answer = ask(alloy, temper, form, millimetres, direction);
        assertTrue(answer.ftu().isEmpty());
        assertTrue(answer.fty().isEmpty());
        assertTrue(answer.governing().isEmpty());
    }

    /** ANSI H35.1 as in MIL-HDBK-5J Table 3.1.2: compression digits belong to forgings. */
    @Test
    void compressionDigitsOnPlateAreQueried() {
        MaterialAnswer answer = tables.materials().lookUp(MaterialQuery.ofAlloy("7075").temper("T7452").form("plate"));
        assertTrue(tables.temperRules().check(answer).stream()
                .anyMatch(r -> r.kind() == TemperRemark.Kind.DIGITS_TO_QUERY));
    }

    /** MIL-HDBK-5J Table 3.7.4.0(d): bands 3.001-4.000 and 4.001-5.000 in. */
    @Test
    void oneHundredthOfAMillimetreBeyondFourInchesIsTheNextBand() {
        StrengthAnswer inside = ask("7050", "T7452", "hand_forging", 101.60, GrainDirection.L);
        StrengthAnswer beyond = ask("7050", "T7452", "hand_forging", 101.61, GrainDirection.L);
        assertEquals(1, inside.hits().size());
        assertEquals(1, beyond.hits().size());
        assertNotEquals(inside.governing().orElseThrow().row(), beyond.governing().orElseThrow().row());
    }

    /** Changes in percent computed from MIL-HDBK-5J minima at the size named. */
    @ParameterizedTest(name = "{0}-{1} to {2}-{3}, {4} {5} mm {6}: {7} / {8} %")
    @CsvSource({"7075, T6, 7075, T73, die_forging, 60, L, -10.8, -11.1", "7075, T6, 7075, T7352, die_forging, 60, ST, -11.4, -15.0",
        "7075, T6, 7050, T74, die_forging, 60, L, -4.1, -3.2", "7075, T6, 7175, T74, die_forging, 60, L, 2.7, 4.8",
        "7075, T652, 7050, T7452, hand_forging, 90, ST, -1.5, -1.8", "7075, T651, 7075, T7351, plate, 60, L, -13.3, -21.2",
        "7075, T651, 7050, T7451, plate, 90, ST, 11.5, 14.0", "7075, T6511, 7150, T77511, extrusion, 22, L, 9.9, 16.7",
        "2014, T652, 2219, T852, hand_forging, 90, ST, -1.6, -9.8", "2024, T351, 2124, T851, plate, 70, ST, 21.2, 44.7",
        "17-4PH, H900, 17-4PH, H1025, bar_rolled, 60, L, -18.4, -14.7",
        "PH13-8Mo, H950, PH13-8Mo, H1050, bar_rolled, 60, L, -19.4, -16.7"})
    void aChangeOfMaterialIsTradedInPercent(String fromAlloy, String fromTemper, String toAlloy, String toTemper,
            String form, double millimetres, GrainDirection direction, double ftu, double fty) {
        MaterialQuery from = MaterialQuery.ofAlloy(fromAlloy).temper(fromTemper).form(form)
                .thickness(millimetres * 1e-3).sectionArea(100e-4);
        MaterialQuery to = MaterialQuery.ofAlloy(toAlloy).temper(toTemper).form(form)
                .thickness(millimetres * 1e-3).sectionArea(100e-4);
        StrengthTrade trade = StrengthTrade.between(tables.materials().lookUp(from), tables.materials().lookUp(to),
                direction);
        assertEquals(ftu, 100 * trade.ftu().orElseThrow(), 0.06);
        assertEquals(fty, 100 * trade.fty().orElseThrow(), 0.06);
    }

    /** The greatest thickness with a minimum agrees with the last band of the strength table. */
    @Test
    void theGreatestThicknessIsTheEndOfTheLastBand() {
        int compared = 0;
        for (Scope limit : tables.sectionLimits().scopes()) {
            double last = tables.materials().strengths().all().stream()
                    .filter(r -> r.strength().basis().minimum() && r.scope().alloys().containsAll(limit.alloys())
                            && java.util.Collections.disjoint(r.scope().forms(), limit.forms()) == false
                            && java.util.Arrays.asList(r.scope().tempers().text().split("\\|"))
                                    .contains(limit.tempers().text()))
                    .mapToDouble(r -> r.scope().thickness().to()).filter(Double::isFinite).max().orElse(0);
            double listed = tables.sectionLimits().all().get(tables.sectionLimits().scopes().indexOf(limit))
                    .thickness();
            if (last > 0 && !limit.forms().contains("any_wrought")) {
                assertEquals(last, listed, 0.06e-3, limit.describe());
                compared++;
            }
        }
        assertTrue(compared > 50, "compared " + compared);
    }
}
