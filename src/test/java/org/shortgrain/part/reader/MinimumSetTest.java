package org.shortgrain.part.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shortgrain.part.Minimum;

class MinimumSetTest {

    private static List<Missing> missing(String yaml) {
        return new MinimumSet().of(Read.lines(yaml));
    }

    private static Missing at(String yaml, String path) {
        return missing(yaml).stream().filter(field -> field.at().path().equals(path)).findFirst().orElseThrow();
    }

    private static boolean answered(String yaml, String path) {
        return missing(yaml).stream().noneMatch(field -> field.at().path().equals(path));
    }

    @Test
    void absentAndUnknownAreToldApart() {
        assertEquals(Missing.State.ABSENT, at("material: {alloy: 7075}\n", "/material/temper").state());
        assertEquals(Missing.State.UNKNOWN, at("material: {temper: unknown}\n", "/material/temper").state());
        assertTrue(answered("material: {temper: T6}\n", "/material/temper"));
    }

    @Test
    void noneIsAnAnswerWhereThereMayBeNone() {
        assertTrue(answered("form: {heat_treat_thickness: none}\n", "/form/heat_treat_thickness"));
        assertTrue(answered("features: [{id: A, loads: none}]\n", "/features/0/loads"));
        assertEquals(Missing.State.NONE, at("material: {alloy: none}\n", "/material/alloy").state());
    }

    @Test
    void theFieldsOfAGroupThatIsMissingAreMissing() {
        assertEquals(Missing.State.ABSENT, at("", "/environment/zone").state());
        assertEquals(Missing.State.UNKNOWN, at("environment: unknown\n", "/environment/zone").state());
        assertEquals(Missing.State.NONE, at("planning: none\n", "/planning/number").state());
    }

    @Test
    void everyFeatureIsAskedForItself() {
        List<String> paths = missing("features: [{id: A, what: web}, {id: B}]\n").stream().map(field -> field.at().path())
                .filter(path -> path.startsWith("/features")).toList();
        assertTrue(paths.contains("/features/1/what"));
        assertTrue(paths.contains("/features/0/stress_direction"));
        assertTrue(!paths.contains("/features/0/what"));
    }

    @Test
    void identityAndJudgingFieldsAreToldApart() {
        assertEquals(Minimum.Role.IDENTITY, at("", "/part/revision").role());
        assertEquals(Minimum.Role.JUDGING, at("", "/material/alloy").role());
        assertEquals("Revision as in the title block. Without it the report is not tied to a design.",
                at("", "/part/revision").meaning());
    }

    @Test
    void aMissingFieldIsShownWhereItsGroupStands() {
        assertEquals(2, at("", "/part/revision").at().line());
        assertEquals(3, at("material: {alloy: 7075}\n", "/material/temper").at().line());
    }

    @Test
    void aCompleteDescriptionLeavesNothingOpen() {
        List<String> open = new MinimumSet().of(Read.description(Read.file(Read.WHOLE_FORM))).stream()
                .map(field -> field.at().path()).toList();
        assertEquals(List.of("/features/2/loads"), open, "the one field that the file states as unknown");
    }
}
