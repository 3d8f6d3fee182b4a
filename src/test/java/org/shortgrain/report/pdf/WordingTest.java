package org.shortgrain.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shortgrain.report.pdf.tagged.Inline;
import org.shortgrain.report.pdf.tagged.Text;

class WordingTest {

    private static final Path SHIPPED = Path.of("templates", "report");

    @TempDir
    private Path folder;

    @BeforeEach
    void copy() throws IOException {
        try (Stream<Path> files = Files.list(SHIPPED)) {
            for (Path file : files.toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
    }

    @Test
    void words_can_be_edited() throws IOException {
        edit("words.txt", "Stress-corrosion review", "Review of stress corrosion");
        assertEquals("Review of stress corrosion", Wording.of(folder).words(Label.REPORT_TITLE));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            words.txt      | [report-title]  | [report-titel]              | no entry of the report is called [report-titel]
            words.txt      | [label-name]    | [label-date]                | stands there a second time
            sections.txt   | ${purpose}      | a purpose                   | the placeholder ${purpose} is missing
            sections.txt   | ${purpose}      | ${purpose} of ${part-name}  | the placeholder ${part-name} is not known here
            sections.txt   | Purpose:        | **Purpose:                  | is opened and not closed
            figures.txt    | The tension     | $ The tension               | a placeholder is written ${name}
            """)
    void a_slip_is_refused_with_its_place(String file, String words, String slip, String message) throws IOException {
        edit(file, words, slip);
        String said = assertThrows(IllegalArgumentException.class, () -> Wording.of(folder)).getMessage();
        assertTrue(said.contains(message), said);
        assertTrue(said.startsWith(file + ":"), said);
    }

    @Test
    void a_missing_entry_is_refused() throws IOException {
        edit("signatures.txt", "[role-quality]\nQuality\n", "");
        String said = assertThrows(IllegalArgumentException.class, () -> Wording.of(folder)).getMessage();
        assertTrue(said.contains("[role-quality] is missing"), said);
    }

    @Test
    void a_missing_file_is_refused() throws IOException {
        Files.delete(folder.resolve("figures.txt"));
        assertThrows(IOException.class, () -> Wording.of(folder));
    }

    @Test
    void values_keep_their_marks_and_take_the_style_of_their_place() {
        Text said = Wording.shipped().say(Sentence.CALCULATION_RESULT, Text.of("**96** MPa"));
        assertEquals(List.of(new Inline.Run("Result: ", Inline.Style.PLAIN),
                new Inline.Run("**96** MPa", Inline.Style.BOLD)), said.parts());
    }

    @Test
    void a_wrong_number_of_values_is_a_defect_of_the_caller() {
        Wording wording = Wording.shipped();
        assertThrows(IllegalArgumentException.class, () -> wording.say(Sentence.CALCULATION_RESULT));
    }

    @Test
    void the_wording_never_says_what_a_tool_cannot_know() throws IOException {
        Pattern never = Pattern.compile("\\b(safe|approved|certified|airworthy|immune|zero risk)\\b",
                Pattern.CASE_INSENSITIVE);
        try (Stream<Path> files = Files.list(SHIPPED)) {
            for (Path file : files.toList()) {
                assertFalse(never.matcher(Files.readString(file)).find(), file.toString());
            }
        }
    }

    private void edit(String file, String words, String replacement) throws IOException {
        Path path = folder.resolve(file);
        String text = Files.readString(path);
        assertTrue(text.contains(words), words);
        Files.writeString(path, text.replaceFirst(Pattern.quote(words),
                Matcher.quoteReplacement(replacement)));
    }
}
