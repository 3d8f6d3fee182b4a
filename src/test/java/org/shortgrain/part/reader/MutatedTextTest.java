package org.shortgrain.part.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;

/** A good description, damaged at random: whatever comes of it, the reader answers and never throws. */
class MutatedTextTest {
    private static final String GOOD = good();
    /** Pieces that mean something to YAML or to the reader. */
    private static final List<String> PIECES = List.of("none", "unknown", "Unknown", "true", "no", "1e5", "012", "~", "''", "[]",
            "{}", "[", "]", "{", "}", ": ", ", ", "- ", "\n", "\n  ", "\t", "#", "&a ", "*a", "!x ", "!!str ", "|", ">", "? ",
            "<<: ", "---\n", "...", "%YAML 1.1\n", "\"", "'", "\\", "\0", "\r", "\u0085", "\u2028", "\ud83d\ude00", "76", "76 mm",
            "-3 mm", "48 MPa", "{value: none}", "{value: 3 mm, kind: typical}", "{min: 1 mm, max: 2 mm}", "[ST, LT]",
            "{axis: [0, 0, 1]}", "[0, 0, 1]", "99999999999999999999", "value: ", "kind: ", "ref: ");

    /**
     * One change of the text.
     *
     * @param place   where, as a share of the text
     * @param length  how many characters go
     * @param instead what comes
     */
    record Change(double place, int length, String instead) {
        String apply(String text) {
            int from = (int) (place * text.length());
            int to = Math.min(text.length(), from + length);
            return text.substring(0, from) + instead + text.substring(to);
        }
    }

    private static String good() {
        try {
            return Files.readString(Read.WHOLE_FORM);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Provide
    Arbitrary<List<Change>> changes() {
        Arbitrary<String> pieces = Arbitraries.frequencyOf(Tuple.of(4, Arbitraries.of(PIECES)),
                Tuple.of(1, Arbitraries.strings().ofMaxLength(6)));
        return Combinators.combine(Arbitraries.doubles().between(0, 1), Arbitraries.integers().between(0, 12), pieces)
                .as(Change::new).list().ofMinSize(1).ofMaxSize(4);
    }

    /** Values exchanged as a whole keep the YAML well-formed more often and reach deeper into the reader. */
    @Provide
    Arbitrary<List<Change>> exchangedValues() {
        List<int[]> values = new ArrayList<>();
        Matcher matcher = Pattern.compile(": ([^\\s{}\\[\\],\"][^{}\\[\\],\n]*)").matcher(GOOD);
        while (matcher.find()) {
            values.add(new int[] {matcher.start(1), matcher.end(1)});
        }
        return Combinators.combine(Arbitraries.of(values), Arbitraries.of(PIECES)).as((value, piece) ->
                List.of(new Change((value[0] + 0.5) / GOOD.length(), value[1] - value[0], piece)));
    }

    @Property(tries = 600)
    void damagedTextIsReadOrRefusedButNeverThrows(@ForAll("changes") List<Change> changes) {
        assertAnswers(apply(changes));
    }

    @Property(tries = 600)
    void exchangedValuesAreReadOrRefusedButNeverThrow(@ForAll("exchangedValues") List<Change> changes) {
        assertAnswers(apply(changes));
    }

    @Property(tries = 200)
    void arbitraryBytesAreRefusedAndNeverThrow(@ForAll byte[] bytes) {
        Reading reading = new PartReader(new FewWords()).read("part.yaml", bytes);
        assertFalse(Read.problems(reading).isEmpty());
    }

    private static String apply(List<Change> changes) {
        String text = GOOD;
        for (Change change : changes) {
            text = change.apply(text);
        }
        return text;
    }

    private static void assertAnswers(String text) {
        Reading reading = Read.text(text);
        if (reading instanceof Reading.Refused refused) {
            assertFalse(refused.problems().isEmpty());
            refused.problems().forEach(problem -> assertSays(problem, text));
        } else {
            assertEquals(List.of(), SchemaTest.refusals(text), "the reader accepts what the schema refuses");
        }
    }

    private static void assertSays(Problem problem, String text) {
        String message = problem.text();
        assertFalse(message.contains("Exception") || message.contains("java.") || message.contains("\n"), message);
        long lines = text.lines().count() + 1;
        assertTrue(problem.at().line() >= 0 && problem.at().line() <= 2 * lines, message);
        assertTrue(message.length() < 2000, message);
        assertEquals(message, new String(message.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8));
    }
}
