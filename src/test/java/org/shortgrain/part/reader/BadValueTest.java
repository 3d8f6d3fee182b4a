package org.shortgrain.part.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Keys and values that are refused, each with its message. The lines under test follow two good ones. */
class BadValueTest {
    private static final String LENGTHS = "mm, m, cm, um, in, ft";
    private static final String AT_SECTION = "part.yaml:3:30: %s (at /form/heat_treat_thickness). Expected: %s. %s";

    private static String section(String value) {
        return Read.problem("form: {heat_treat_thickness: " + value + "}\n");
    }

    private static void assertSection(String value, String found, String expected, String advice) {
        assertEquals(AT_SECTION.formatted(found, expected, advice), section(value));
    }

    @Test
    void anUnknownKeyNamesTheNearest() {
        assertEquals("part.yaml:3:8: the key \"prodct\" is not known here (at /form/prodct). Expected: one of "
                + "product, heat_treat_thickness, heat_treat_width, heat_treat_shape, finished_thickness, envelope, "
                + "mass, diameter, length, width, wall. Did you mean \"product\"?", Read.problem("form: {prodct: plate}\n"));
    }

    @Test
    void aKeyInTheWrongGroupNamesItsGroup() {
        assertTrue(Read.problem("zone: wheel_well\n").endsWith("It belongs to /features or /environment."));
        assertTrue(Read.problem("zzzzzz: 1\n").endsWith("\"shortgrain schema\" prints the whole form."));
    }

    @Test
    void aBareNumberIsRefusedWithTheUnits() {
        assertSection("76", "the number 76 has no unit", "a length with its unit (" + LENGTHS + ")",
                "Write for example \"76 mm\".");
        assertSection("'76'", "the number 76 has no unit", "a length with its unit (" + LENGTHS + ")",
                "Write for example \"76 mm\".");
    }

    @Test
    void anUnknownUnitIsRefusedWithTheNearest() {
        assertSection("76 MM", "\"76 MM\" has the unknown unit \"MM\"", "a length in one of the units " + LENGTHS,
                "Did you mean \"mm\"?");
        assertSection("76 furlongs", "\"76 furlongs\" has the unknown unit \"furlongs\"",
                "a length in one of the units " + LENGTHS, "Write a number, a blank and a unit, such as \"76 mm\".");
    }

    @Test
    void aUnitOfSomethingElseIsRefused() {
        assertSection("76 MPa", "\"76 MPa\" is a stress", "a length in one of the units " + LENGTHS,
                "Look at the unit, or at the key.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            '1,000 mm'   | Write decimals with a point and thousands without separator, such as "0.5 mm" or "1000 mm".
            '0,5 mm'     | Write decimals with a point and thousands without separator, such as "0.5 mm" or "1000 mm".
            1 000 mm     | Write decimals with a point and thousands without separator, such as "0.5 mm" or "1000 mm".
            3/8 in       | Write fractions as decimals, such as "0.375 mm".
            1e3 mm       | Write the number out, without exponent.
            .5 in        | Write a zero before the point, such as "0.5 mm".
            9-40 mm      | Write limits as {min: 1 mm, max: 2 mm}, or one of the two.
            9 mm to 1 cm | Write limits as {min: 1 mm, max: 2 mm}, or one of the two.
            10 \u00b10.1 mm  | Write limits as {min: 1 mm, max: 2 mm}, or one of the two.
            <5 mm        | Write limits as {min: 1 mm, max: 2 mm}, or one of the two.
            5 mm max     | Write limits as {min: 1 mm, max: 2 mm}, or one of the two.
            thick        | Write a number, a blank and a unit, such as "76 mm".
            """, quoteCharacter = '`')
    void habitsThatAreAmbiguousAreRefusedWithTheRightForm(String value, String advice) {
        assertSection(value, "\"" + value.replace("'", "") + "\" is no number with a unit",
                "a length in one of the units " + LENGTHS, advice);
    }

    @Test
    void aLengthBelowZeroIsOutOfRange() {
        assertSection("-3 mm", "\"-3 mm\" is out of range", "a length above 0 mm, at most 1000000 mm",
                "Look at the point and the unit.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            environment: {temperature: -300 degC}                     | "-300 degC" is out of range (at /environment/temperature). Expected: a temperature of at least -273.15 degC, at most 2000 degC.
            environment: {humidity: 120 %}                            | "120 %" is out of range (at /environment/humidity). Expected: a share of at least 0 %, at most 100 %.
            features: [{id: A, loads: {stress: 20 GPa}}]              | "20 GPa" is out of range (at /features/0/loads/stress). Expected: a stress of at least -10000 MPa, at most 10000 MPa.
            features: [{id: A, loads: {share_of_life: 90}}]           | "90" is out of range (at /features/0/loads/share_of_life). Expected: a number at least 0, at most 1.
            features: [{id: A, stress_concentration: {kt: 0.5}}]      | "0.5" is out of range (at /features/0/stress_concentration/kt). Expected: a number at least 1.
            review: {threshold_factor: 0}                             | "0" is out of range (at /review/threshold_factor). Expected: a number above 0, at most 1.
            evidence: {conductivity: 390 %IACS}                       | "390 %IACS" is out of range (at /evidence/conductivity). Expected: a conductivity of at least 0 %IACS, at most 110 %IACS.
            """, quoteCharacter = '`')
    void absurdValuesAreOutOfRange(String line, String message) {
        String problem = Read.problem(line + "\n");
        assertEquals(message + " Look at the point and the unit.", problem.substring(problem.indexOf(": ") + 2));
    }

    @Test
    void aMillimetreThatMayBeAnInchIsAWarningAndIsRead() {
        List<Problem> warnings = Read.warnings("form: {heat_treat_thickness: 0.07 mm}\n");
        assertEquals(List.of("part.yaml:3:30: warning: \"0.07 mm\" is unusual (at /form/heat_treat_thickness). "
                + "Expected: usually 0.5 mm to 500 mm. Check the unit; the value is used as it stands."),
                warnings.stream().map(Problem::text).toList());
        assertEquals(1, Read.warnings("form: {heat_treat_thickness: 76 in}\n").size());
        assertEquals(0, Read.warnings("form: {heat_treat_thickness: 76 mm}\n").size());
    }

    @Test
    void crossedLimitsAreRefused() {
        assertSection("{min: 9 mm, max: 0.1 in}", "the lower limit \"9 mm\" is above the upper limit \"0.1 in\"",
                "min below max", "Exchange the two.");
        assertSection("{min: unknown, max: none}", "the range has neither min nor max",
                "{min: ..., max: ...} with one limit at least", "Write the limits, or unknown in place of the range.");
    }

    @Test
    void anEmptyValueIsNoAnswer() {
        String expected = "Expected: a length in one of the units " + LENGTHS + ". Write unknown if it is stated "
                + "nowhere, none if there is none, or take the key out if you have not looked.";
        for (String nothing : List.of("", "~", "null", "[]", "{}", "''")) {
            assertEquals("part.yaml:3:8: there is no value (at /form/heat_treat_thickness). " + expected, section(nothing));
        }
    }

    @Test
    void aWordThatTheListDoesNotHoldIsRefusedWithTheNearest() {
        assertEquals("part.yaml:3:17: the word \"die forging\" is not known here (at /form/product). Expected: one "
                + "of plate, sheet, die_forging, hand_forging, forging, extrusion, bar_rolled, bar_cold_finished, "
                + "ring_rolled, tube, casting, wire, fastener, additive, pressure_vessel, seamless_shell, weldment. "
                + "Did you mean \"die_forging\"?",
                Read.problem("form: {product: die forging}\n"));
        assertTrue(Read.problem("features: [{id: A, stress_direction: st}]\n").endsWith("Did you mean \"ST\"?"));
    }

    @Test
    void wordsOfTheRulebookAreRefusedLikeTheOthersButOperationsAreNot() {
        assertEquals("part.yaml:3:21: the word \"wheelwell\" is not known here (at /environment/zone). Expected: "
                + "one of wheel_well, exterior_lower, exterior_upper, cabin_dry, bilge. Did you mean \"wheel_well\"?",
                Read.problem("environment: {zone: wheelwell}\n"));
        assertTrue(Read.problem("environment: {fluids: [rein]}\n").endsWith("Did you mean \"rain\"?"));
        assertEquals(List.of(), Read.warnings("route: [{do: polish with felt}]\n"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"no", "NO", "yes", "n/a", "tbd", "-", "TBA", "true", "False"})
    void aWordThatLeavesTheAnswerOpenIsRefused(String word) {
        assertEquals("part.yaml:3:19: \"" + word + "\" leaves open what is meant (at /surface/primer). Expected: "
                + "text, none or unknown. Write none if there is none, unknown if it is stated nowhere; put quotes "
                + "around it if it is the very text.", Read.problem("surface: {primer: " + word + "}\n"));
    }

    @Test
    void aTruthValueIsTrueOrFalse() {
        assertEquals("part.yaml:3:17: \"yes\" stands here (at /surface/bare). Expected: true, false, none or "
                + "unknown. Write true.", Read.problem("surface: {bare: yes}\n"));
    }

    @Test
    void aNumberIsNoTextAndTextIsNoNumber() {
        assertTrue(Read.problem("service: {hours: many}\n").contains("\"many\" is no plain number (at "
                + "/service/hours)"));
        assertTrue(Read.problem("service: {hours: \"12\"}\n").endsWith("Take the quotes off."));
        assertTrue(Read.problem("service: {hours: 1e4}\n").contains("\"1e4\" is no plain number"));
    }

    @Test
    void aListTextOrGroupInTheWrongPlaceSaysWhatBelongsThere() {
        assertEquals("part.yaml:3:7: \"plate\" stands here (at /form). Expected: a group of keys such as product, "
                + "heat_treat_thickness, heat_treat_width, heat_treat_shape, finished_thickness. Write its keys "
                + "below it, indented, or in braces {key: value}; or none or unknown.", Read.problem("form: plate\n"));
        assertTrue(Read.problem("evidence: {hardness: [a, [b]]}\n").startsWith("part.yaml:3:26: a list stands here "
                + "(at /evidence/hardness/1). Expected: text."));
        assertTrue(Read.problem("form: {product: {kind: typical}}\n").startsWith("part.yaml:3:17: a group of keys "
                + "without value stands here (at /form/product). Expected: one of value, kind, ref, scope."));
    }

    @Test
    void noneOrUnknownBesideValuesIsRefused() {
        assertEquals("part.yaml:3:37: the word unknown stands beside other values (at "
                + "/form/heat_treat_thickness/1). Expected: a list of values, or the word alone. Write the word in "
                + "place of the list, or leave it out of the list.",
                section("[9 mm, unknown]"));
    }

    @Test
    void anAxisOfNoLengthIsNoDirection() {
        assertTrue(Read.problem("grain: {L: [0, 0, 0]}\n").startsWith("part.yaml:3:12: this is no direction (at "
                + "/grain/L). Expected: X, Y, Z, -X, -Y, -Z or three numbers that are not all zero, such as [0, "
                + "0.34, 0.94]."));
    }

    @Test
    void aMissingPartNumberIsRefused() {
        assertEquals("part.yaml:2:7: part.number is missing (at /part/number). Expected: Part number as in the "
                + "title block. Without it no report is made. Write it in.", Read.only(Read.text("schema: 1\npart: {name: x}\n")));
        assertTrue(Read.only(Read.text("schema: 1\npart: {number: unknown}\n")).startsWith("part.yaml:2:16: "
                + "part.number is not stated"));
        assertTrue(Read.only(Read.text("schema: 1\n")).contains("part.number is missing"));
    }

    @Test
    void everyFeatureHasANameOfItsOwn() {
        assertTrue(Read.problem("features: [{what: web}]\n").startsWith("part.yaml:3:12: features.0.id is missing"));
        assertEquals("part.yaml:3:26: the feature id \"A\" is used twice; the first is in line 3 (at "
                + "/features/1/id). Expected: a name of its own for each feature. Rename one of the two.", Read.problem("features: [{id: A}, "
                + "{id: A}]\n"));
    }

    @Test
    void aRouteRowAtAFeatureThatIsNotDescribedIsAWarning() {
        List<Problem> warnings = Read.warnings("features: [{id: GROOVE}]\nroute: [{do: age, at: GROVE}]\n");
        assertEquals(List.of("part.yaml:4:23: warning: no feature has the id \"GROVE\" (at /route/0/at). Expected: "
                + "one of GROOVE. Did you mean \"GROOVE\"?"), warnings.stream().map(Problem::text).toList());
    }

    @Test
    void anotherVersionOfTheFormIsRefusedAndAMissingOneIsAWarning() {
        assertEquals("part.yaml:1:9: \"2\" stands here (at /schema). Expected: schema: 1, the only version of the "
                + "form of a description. Write schema: 1.", Read.only(Read.text("schema: 2\npart: {number: 1}\n")));
        assertEquals("part.yaml:1:1: warning: the key schema is missing (at /schema). Expected: schema: 1. Write "
                + "schema: 1 as the first key; 1 is taken.", ((Reading.Read) Read.text("part: {number: 1}\n")).warnings().get(0).text());
    }

    @Test
    void aSlipInAProvenanceIsRefused() {
        List<Problem> problems = Read.problems(Read.text(
                "schema: 1\npart: {number: 1}\nevidence: {hardness: {value: 150 HB, knd: x, kind: mesured}}\n"));
        assertEquals(2, problems.size());
        assertTrue(problems.get(0).text().endsWith("Did you mean \"kind\"?"));
        assertTrue(problems.get(1).text().endsWith("Did you mean \"measured\"?"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"15/01/2026", "2026-1-15", "2026-02-30", "January 2026", "2026-13"})
    void aDateHasTheFormOfIso8601(String date) {
        assertEquals("part.yaml:3:16: \"" + date + "\" is no date (at /review/date). Expected: a date in the form "
                + "2026-01-15, or 2026-01 or 2026 where no more is known. Write year, month and day with hyphens.",
                Read.problem("review: {date: " + date + "}\n"));
    }

    @Test
    void aReferenceIsText() {
        assertTrue(Read.problem("form: {product: plate, ref: true}\n").startsWith("part.yaml:3:29: \"true\" leaves "
                + "open what is meant (at /form/ref)."));
        assertTrue(Read.problem("form: {product: plate, ref: [a, b]}\n").startsWith("part.yaml:3:29: a list stands "
                + "here (at /form/ref)."));
    }

    @Test
    void textThatCannotBePrintedIsRefused() {
        assertTrue(Read.problem("surface: {primer: \"a\\u0007b\"}\n").startsWith("part.yaml:3:19: the text holds a "
                + "character that cannot be printed (U+0007)"));
    }
}
