package org.shortgrain.part.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole files that cannot be read, and text that is no proper YAML. */
class BadInputTest {
    @TempDir
    private Path folder;

    private Path write(String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes);
    }

    private static String yaml(String text) {
        return Read.only(Read.text(text));
    }

    private static void assertNamesOnly(String expected, Path file) {
        Reading reading = Read.file(file);
        assertEquals(file + ": " + expected, Read.only(reading));
        assertTrue(((Reading.Refused) reading).isInputMissing());
    }

    @Test
    void aMissingFileIsNamed() {
        assertNamesOnly("there is no such file. Expected: a part description in YAML. Check the path; \"shortgrain "
                + "start\" writes a blank description.", folder.resolve("absent.yaml"));
    }

    @Test
    void aDirectoryIsNoFile() {
        assertNamesOnly("this is a directory or a device. Expected: a file that holds a part description. Name the "
                + "file itself.", folder);
    }

    @Test
    void aFileWithoutPermissionIsReportedAsUnreadable() throws IOException {
        Path file = write("locked.yaml", "schema: 1\n".getBytes(StandardCharsets.UTF_8));
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
        Assumptions.assumeFalse(Files.isReadable(file), "an administrator may read everything");
        assertNamesOnly("the file cannot be read (permission denied). Expected: a file that you may read. Check its "
                + "permissions.", file);
    }

    @Test
    void aFileThatFailsWhileItIsReadIsUnreadable() {
        // a regular file on Linux whose first page is never mapped, so that reading fails whoever reads
        Path broken = Path.of("/proc/self/mem");
        Assumptions.assumeTrue(Files.isRegularFile(broken));
        assertNamesOnly("the file cannot be read (input or output error). Expected: a file that you may read. Check its permissions.",
                broken);
    }

    @Test
    void aFileOfTenMegabytesIsRefusedAfterItsFirst() throws IOException {
        Path file = folder.resolve("huge.yaml");
        try (RandomAccessFile huge = new RandomAccessFile(file.toFile(), "rw")) {
            huge.setLength(10_000_000);
        }
        assertEquals(file + ": the file has more than 1000000 bytes. Expected: the description of one part, some "
                + "kilobytes. Check that this is the right file.", Read.only(Read.file(file)));
    }

    @Test
    void anEmptyFileHoldsNoData() {
        String message = "part.yaml:1:1: the file holds no data. Expected: a part description in YAML. \"shortgrain "
                + "start\" writes a blank description to fill in.";
        assertEquals(message, yaml(""));
        assertEquals(message, yaml("# a comment\n\n"));
        assertEquals(message, yaml("---\n"));
    }

    @Test
    void textOrAListIsNoDescription() {
        String expected = "Expected: a part description: keys such as part, material, form, route and features. "
                + "\"shortgrain start\" writes a blank description to fill in.";
        assertEquals("part.yaml:1:1: the file holds text only. " + expected, yaml("seventy-six millimetres\n"));
        assertEquals("part.yaml:1:1: the file holds a list. " + expected, yaml("- a\n- b\n"));
    }

    @Test
    void anotherEncodingIsShownAtItsFirstForeignByte() throws IOException {
        Path latin = write("latin.yaml",
                "schema: 1\npart: {name: Tr\u00e4ger}\n".getBytes(StandardCharsets.ISO_8859_1));
        assertEquals(latin + ":2:16: the byte 0xE4 is not UTF-8 text. Expected: text encoded in UTF-8. Save the "
                + "file with the encoding UTF-8 in your editor.", Read.only(Read.file(latin)));
        Path wide = write("wide.yaml", "\ufeffschema: 1\n".getBytes(StandardCharsets.UTF_16LE));
        assertTrue(Read.only(Read.file(wide)).startsWith(wide + ":1:1: the byte 0xFF is not UTF-8 text."));
    }

    @Test
    void aByteOrderMarkAndWindowsLineEndsAreReadAndDoNotShiftPositions() {
        assertEquals("part.yaml:3:3: the key \"numbr\" is not known here (at /part/numbr). Expected: one of number, "
                + "revision, name, criticality, single_load_path, function, effect_of_failure, design_authority, "
                + "next_assembly, manufacturer, serials, effectivity, life. Did you mean \"number\"?",
                yaml("\ufeffschema: 1\r\npart:\r\n  numbr: 7\r\n  number: 7\r\n"));
    }

    @Test
    void aControlCharacterIsShown() {
        assertEquals("part.yaml:2:8: the character U+0000 is a control character. Expected: printable text. Delete "
                + "the character.", yaml("schema: 1\npart: {\0number: 1}\n"));
    }

    @Test
    void aTabIsShown() {
        assertEquals("part.yaml:2:1: a tab character stands where YAML takes only spaces. Expected: spaces. Replace "
                + "the tab by spaces.", yaml("part:\n\tnumber: 1\n"));
    }

    @Test
    void malformedYamlIsShownWhereItBreaks() {
        String hint = " Expected: one key and value a line, groups indented by spaces. Look at the quotes, "
                + "brackets, colons and indentation of this line and the one above.";
        assertEquals("part.yaml:1:5: this is not well-formed YAML: mapping values are not allowed here." + hint,
                yaml("a: b: c\n"));
        assertEquals("part.yaml:2:5: this is not well-formed YAML: expected ',' or '}', but got :, while parsing a "
                + "flow mapping begun in line 1, column 7." + hint, yaml("part: {number: 1\nform: x\n"));
        assertEquals("part.yaml:1:7: this is not well-formed YAML: found undefined alias x." + hint, yaml("part: "
                + "*x\n"));
    }

    @Test
    void anOpenQuoteIsShownWhereItOpens() {
        assertTrue(yaml("part: {number: \"EX-1}\nform:\n").startsWith("part.yaml:1:16: this is not well-formed "
                + "YAML: found unexpected end of stream, while scanning a quoted scalar begun in line 1, column 16."));
    }

    @Test
    void aSecondDocumentIsRefusedWhereItBegins() {
        assertEquals("part.yaml:2:1: a second document begins here. Expected: one part a file. Give each part its "
                + "own file.",
                yaml("part: {number: 1}\n---\npart: {number: 2}\n"));
    }

    @Test
    void aRepeatedKeyIsRefusedWithTheLineOfTheFirst() {
        assertEquals("part.yaml:4:3: the key \"number\" stands here for the second time; the first is in line 3. "
                + "Expected: each key once. Delete one of the two, or join them.", yaml("schema: 1\npart:\n  number: 1\n  number: "
                + "2\n"));
    }

    @Test
    void aListAsKeyIsRefused() {
        assertEquals("part.yaml:3:3: a list or a group stands where a key is expected. Expected: a word as key. Put "
                + "quotes around text that begins with a bracket.", yaml("schema: 1\npart: {number: 1}\n? [a]\n: b\n"));
    }

    @Test
    void tagsMakeNoObjects() {
        assertTrue(yaml("part: !!javax.script.ScriptEngineManager {number: 1}\n").startsWith("part.yaml:1:7: the "
                + "YAML tag tag:yaml.org,2002:javax.script.ScriptEngineManager is not read. Expected: plain values. "
                + "Delete the tag."));
        assertTrue(Read.problems(Read.text("schema: 1\npart: !mine {number: 1}\n")).get(0).text()
                .startsWith("part.yaml:2:7: the YAML tag !mine is not read."));
    }

    @Test
    void anAliasBombIsRefused() {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 9; i++) {
            bomb.append("a%d: &a%d [%s]\n".formatted(i, i, "*a%d, ".formatted(i - 1).repeat(9)));
        }
        assertEquals("part.yaml: the file uses too many YAML aliases (*name). Expected: at most 20 uses of aliases "
                + "for groups and lists. Write the values out.", yaml(bomb.toString()));
    }

    @Test
    void fewAliasesOfALongListAreABombAsWell() {
        StringBuilder bomb = new StringBuilder("a0: &a0 [" + "x, ".repeat(10_000) + "x]\n");
        for (int i = 1; i <= 6; i++) {
            bomb.append("a%d: &a%d [*a%d, *a%d, *a%d]\n".formatted(i, i, i - 1, i - 1, i - 1));
        }
        assertTrue(yaml(bomb.toString()).startsWith("part.yaml: the file uses too many YAML aliases"));
    }

    @Test
    void anAliasOfItselfIsRefused() {
        assertEquals("part.yaml:1:7: this value contains itself through a YAML alias. Expected: values that end. "
                + "Write the value out.", yaml("part: &p {number: *p}\n"));
    }

    @Test
    void endlessNestingIsRefused() {
        assertEquals("part.yaml: groups or lists are nested more than 30 deep. Expected: a part description, at "
                + "most some ten levels deep. Look for brackets that are not closed.", yaml("a: " + "[".repeat(500)));
    }

    @Test
    void allProblemsAreReportedInTheOrderOfTheFileAndTheRestIsCounted() {
        String unknownKeys = "zzz%d: 1\n";
        StringBuilder text = new StringBuilder("schema: 1\npart: {number: 1}\n");
        for (int i = 0; i < 30; i++) {
            text.append(unknownKeys.formatted(i));
        }
        List<Problem> problems = Read.problems(Read.text(text.toString()));
        assertEquals(30, problems.size());
        assertEquals(3, problems.get(0).at().line());
        String[] shown = Problem.text(problems).split("\n");
        assertEquals(21, shown.length);
        assertEquals("... and 10 more; mend these first.", shown[20]);
        assertFalse(Problem.text(problems).contains("Exception"));
    }
}
