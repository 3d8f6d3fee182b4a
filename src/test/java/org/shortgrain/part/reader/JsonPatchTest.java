package org.shortgrain.part.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Changes of a description; cases of RFC 6902, appendix A (read), with the form of its JSON as this project writes it. */
class JsonPatchTest {

    private static EditableDescription of(String yaml) {
        return EditableDescription.of(new SourceFile("part.yaml", yaml.getBytes(StandardCharsets.UTF_8))).orElseThrow();
    }

    private static String changed(String yaml, String patch) {
        return of(yaml).with(JsonPatch.parse(patch)).json();
    }

    @Test
    void aMemberIsAdded() {
        assertEquals("{\"foo\": \"bar\", \"baz\": \"qux\"}",
                changed("{\"foo\": \"bar\"}", "[{\"op\": \"add\", \"path\": \"/baz\", \"value\": \"qux\"}]"));
    }

    @Test
    void anItemIsAddedBeforeAnother() {
        assertEquals("{\"foo\": [\"bar\", \"qux\", \"baz\"]}",
                changed("{\"foo\": [\"bar\", \"baz\"]}", "[{\"op\": \"add\", \"path\": \"/foo/1\", \"value\": \"qux\"}]"));
    }

    @Test
    void anItemIsAddedAtTheEnd() {
        assertEquals("{\"foo\": [\"bar\", [\"abc\", \"def\"]]}",
                changed("{\"foo\": [\"bar\"]}", "[{\"op\": \"add\", \"path\": \"/foo/-\", \"value\": [\"abc\", \"def\"]}]"));
    }

    @Test
    void aMemberAndAnItemAreRemoved() {
        assertEquals("{\"foo\": \"bar\"}",
                changed("{\"baz\": \"qux\", \"foo\": \"bar\"}", "[{\"op\": \"remove\", \"path\": \"/baz\"}]"));
        assertEquals("{\"foo\": [\"bar\", \"baz\"]}",
                changed("{\"foo\": [\"bar\", \"qux\", \"baz\"]}", "[{\"op\": \"remove\", \"path\": \"/foo/1\"}]"));
    }

    @Test
    void aValueIsReplacedInItsPlace() {
        assertEquals("{\"baz\": \"boo\", \"foo\": \"bar\"}", changed("{\"baz\": \"qux\", \"foo\": \"bar\"}",
                "[{\"op\": \"replace\", \"path\": \"/baz\", \"value\": \"boo\"}]"));
    }

    @Test
    void aValueAndAnItemAreMoved() {
        assertEquals("{\"foo\": {\"bar\": \"baz\"}, \"qux\": {\"corge\": \"grault\", \"thud\": \"fred\"}}",
                changed("{\"foo\": {\"bar\": \"baz\", \"waldo\": \"fred\"}, \"qux\": {\"corge\": \"grault\"}}",
                        "[{\"op\": \"move\", \"from\": \"/foo/waldo\", \"path\": \"/qux/thud\"}]"));
        assertEquals("{\"foo\": [\"all\", \"cows\", \"eat\", \"grass\"]}",
                changed("{\"foo\": [\"all\", \"grass\", \"cows\", \"eat\"]}",
                        "[{\"op\": \"move\", \"from\": \"/foo/1\", \"path\": \"/foo/3\"}]"));
    }

    @Test
    void aPointerEscapesSlashAndTilde() {
        assertEquals("{\"a/b\": {\"m~n\": 8}}", changed("{\"a/b\": {\"m~n\": 7}}",
                "[{\"op\": \"replace\", \"path\": \"/a~1b/m~0n\", \"value\": 8}]"));
    }

    @Test
    void aPlaceThatIsNotThereIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> changed("{\"foo\": \"bar\"}",
                "[{\"op\": \"add\", \"path\": \"/baz/bat\", \"value\": \"qux\"}]"));
        assertThrows(IllegalArgumentException.class, () -> changed("{\"foo\": [1]}",
                "[{\"op\": \"add\", \"path\": \"/foo/2\", \"value\": 3}]"));
        assertThrows(IllegalArgumentException.class,
                () -> changed("{\"foo\": \"bar\"}", "[{\"op\": \"remove\", \"path\": \"/baz\"}]"));
    }

    @Test
    void numbersAndTruthStayWhatTheyAreAndTextStaysText() {
        assertEquals("{\"a\": 0.5, \"b\": true, \"c\": \"0.5\", \"d\": \"no\", \"e\": \"9.5 mm\", \"f\": \"7075\"}",
                of("{a: 0.5, b: true, c: \"0.5\", d: no, e: 9.5 mm, f: \"7075\"}").json());
        EditableDescription back = of(of("{a: 0.5, b: true, c: \"0.5\", d: no, e: 9.5 mm, f: \"7075\"}").yaml());
        assertEquals("{\"a\": 0.5, \"b\": true, \"c\": \"0.5\", \"d\": \"no\", \"e\": \"9.5 mm\", \"f\": \"7075\"}", back.json());
    }

    @Test
    void theOriginalIsNotChanged() {
        EditableDescription part = of("{a: {b: 1}}");
        part.with(JsonPatch.parse("[{\"op\": \"replace\", \"path\": \"/a/b\", \"value\": 2}]"));
        assertEquals("{\"a\": {\"b\": 1}}", part.json());
    }

    @Test
    void settingMakesTheGroupsThatAreMissingAndTakesThePlaceOfUnknown() {
        for (String yaml : new String[] {"{x: 1}", "{x: 1, a: unknown}", "{x: 1, a: {c: 2}}"}) {
            EditableDescription part = of(yaml);
            assertEquals("\"3 mm\"", part.with(part.setting("/a/b", DescriptionValue.of("3 mm"))).at("/a/b").orElseThrow().json());
        }
    }

    @Test
    void fillingLeavesAloneWhatIsAnswered() {
        EditableDescription part = of("{a: {b: 1, c: unknown, e: {value: unknown, ref: note 3}}}");
        assertEquals("{\"a\": {\"b\": 1, \"c\": 8, \"e\": 10, \"d\": 9}}",
                part.with(part.filling("/a", DescriptionValue.of("{b: 7, c: 8, d: 9, e: 10}"))).json());
    }

    @Test
    void fillingGoesIntoEveryGroupOfAList() {
        EditableDescription part = of("{a: [{b: 1}, {c: 2}]}");
        assertEquals("{\"a\": [{\"b\": 1}, {\"c\": 2, \"b\": 5}]}",
                part.with(part.filling("/a", DescriptionValue.of("{b: 5}"))).json());
    }

    @Test
    void aPatchReadsBackAsItWasWritten() {
        JsonPatch patch = JsonPatch.parse("[{op: add, path: /a, value: {b: \"x \\\" y\", c: [1, true, none]}},"
                + " {op: move, from: /a, path: /b}, {op: remove, path: /c}]");
        assertEquals(patch, JsonPatch.parse(patch.json()));
    }
}
