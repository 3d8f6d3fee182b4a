package org.shortgrain.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.yaml.snakeyaml.Yaml;

class ExamplePatchTest {

    private static final String BASE = """
            material: {alloy: "7075", temper: "T7351"}
            route:
              - {op: "10", do: saw}
              - {op: "30", do: prime}
            features:
              - id: BORE
                what: bore
                loads: [{stress: 5 MPa}]
              - id: RIB
                what: web
            """;

    private static Map<String, Object> merged(String patch) {
        return new Yaml().load(ExamplePatch.merged(BASE, patch));
    }

    private static Object loaded(String yaml) {
        return new Yaml().load(yaml);
    }

    /** The test cases of RFC 7396, appendix A, that change one object by another. */
    @ParameterizedTest(name = "{0} changed by {1}")
    @CsvSource(delimiter = '!', textBlock = """
            {a: b}               ! {a: c}                   ! {a: c}
            {a: b}               ! {b: c}                   ! {a: b, b: c}
            {a: b}               ! {a: null}                ! {}
            {a: b, b: c}         ! {a: null}                ! {b: c}
            {a: [b]}             ! {a: c}                   ! {a: c}
            {a: c}               ! {a: [b]}                 ! {a: [b]}
            {a: {b: c}}          ! {a: {b: d}}              ! {a: {b: d}}
            {a: {b: c}}          ! {a: [1]}                 ! {a: [1]}
            """)
    void changesAsAMergePatchDoes(String base, String patch, String expected) {
        assertEquals(loaded(expected), loaded(ExamplePatch.merged(base, patch)));
    }

    @Test
    void aFeatureIsChangedByItsName() {
        Map<String, Object> merged = merged("features: {BORE: {what: lug_bore, loads: none}}");
        assertEquals(loaded("[{id: BORE, what: lug_bore, loads: none}, {id: RIB, what: web}]"), merged.get("features"));
    }

    @Test
    void aFeatureIsTakenAwayOrAdded() {
        assertEquals(loaded("[{id: RIB, what: web}, {id: LUG, what: lug_bore}]"),
                merged("features: {BORE: null, LUG: {what: lug_bore}}").get("features"));
    }

    @Test
    void aStepIsAddedWhereItsNumberBelongs() {
        assertEquals(loaded("[{op: '10', do: saw}, {op: '20', do: etch}, {op: '30', do: prime}, {op: '40', do: seal}]"),
                merged("route: {\"20\": {do: etch}, \"40\": {do: seal}}").get("route"));
    }

    @Test
    void quotedTextStaysText() {
        assertEquals(loaded("{alloy: '7050', temper: T7351}"), merged("material: {alloy: \"7050\"}").get("material"));
    }

    @Test
    void whatIsNotThereCannotBeTakenAway() {
        assertThrows(IllegalArgumentException.class, () -> merged("surface: null"));
        assertThrows(IllegalArgumentException.class, () -> merged("features: {LUG: null}"));
        assertThrows(IllegalArgumentException.class, () -> merged("[a]"));
    }
}
