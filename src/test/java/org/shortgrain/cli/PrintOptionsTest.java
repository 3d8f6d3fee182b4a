package org.shortgrain.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shortgrain.report.pdf.PdfText;

/** How the report is printed is for its user to say. */
class PrintOptionsTest {

    private static final Path SAMPLE = Path.of("sample-reviews", "hatch-hinge-arm.yaml");
    private static final Path SHIPPED_WORDING = Path.of("templates", "report");
    /** Letter paper, points (8.5 in x 11 in). */
    private static final float LETTER_HEIGHT = 792;

    @TempDir
    Path folder;

    private byte[] printed(Object... options) throws IOException {
        List<Object> arguments = new ArrayList<>(List.of("review", SAMPLE, "--out", folder, "--format", "pdf"));
        arguments.addAll(List.of(options));
        CommandRun.Ran ran = CommandRun.run(arguments.toArray());
        assertEquals("", ran.err());
        return Files.readAllBytes(folder.resolve("hatch-hinge-arm.review.pdf"));
    }

    /** The sum at the bore, on page one: 55 MPa / 6.894757 MPa per ksi = 7.98. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"si|LT 55 MPa 5 to", "us|LT 7.98 ksi 0.725 to",
        "both|LT 55 MPa [7.98 ksi]"})
    void numbersArePrintedInTheUnitsAskedFor(String units, String sum) throws IOException {
        String first = PdfText.pages(printed("--units", units)).get(0);
        assertTrue(first.contains(sum), first);
    }

    @Test
    void theSheetIsTheOneAskedFor() throws IOException {
        try (PDDocument document = Loader.loadPDF(printed("--paper", "letter"))) {
            assertEquals(LETTER_HEIGHT, document.getPage(0).getMediaBox().getHeight());
        }
    }

    @Test
    void numberIssueAndDraftStandOnTheReport() throws IOException {
        List<String> pages = PdfText.pages(printed("--number", "MP-0042", "--issue", "B", "--draft"));
        assertTrue(pages.get(0).contains("MP-0042 \u00b7 B"), pages.get(0));
        for (String page : pages) {
            assertTrue(page.contains("MP-0042") && page.contains("DRAFT"), page);
        }
        assertTrue(PdfText.pages(printed()).stream().allMatch(page -> page.contains("VALID ONLY WHEN SIGNED")));
    }

    @Test
    void aNumberIsForOneReport() {
        CommandRun.Ran ran = CommandRun.run("review", SAMPLE, SAMPLE, "--out", folder, "--number", "MP-0042");
        assertEquals(ExitCode.USAGE.code(), ran.code());
        assertTrue(ran.err().contains("a number names one report"), ran.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "tr-TR", "ar-EG"})
    void theLanguageOfTheComputerChangesNoByte(String language) throws IOException {
        byte[] here = printed();
        Locale locale = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(language));
            assertArrayEquals(here, printed());
        } finally {
            Locale.setDefault(locale);
        }
    }

    @Test
    void ownWordsArePrinted() throws IOException {
        Path words = ownWording("Stress-corrosion review", "Review of stress corrosion");
        assertTrue(PdfText.pages(printed("--wording", words)).get(0).contains("Review of stress corrosion"));
    }

    @Test
    void ownWordsWithASlipAreRefusedWithFileAndLine() throws IOException {
        Path words = ownWording("${hash}", "${hsh}");
        CommandRun.Ran ran = CommandRun.run("review", SAMPLE, "--out", folder, "--wording", words);
        assertEquals(ExitCode.INPUT_INVALID.code(), ran.code());
        assertTrue(ran.err().contains("words.txt:") && ran.err().contains("${hsh}"), ran.err());
        assertFalse(Files.exists(folder.resolve("hatch-hinge-arm.review.pdf")));
    }

    @Test
    void ownWordsThatAreNotThereAreNamed() {
        CommandRun.Ran ran = CommandRun.run("review", SAMPLE, "--out", folder, "--wording", folder.resolve("nowhere"));
        assertEquals(ExitCode.INPUT_MISSING.code(), ran.code());
        assertTrue(ran.err().contains("nowhere"), ran.err());
    }

    private Path ownWording(String words, String other) throws IOException {
        Path own = Files.createDirectory(folder.resolve("wording"));
        try (Stream<Path> files = Files.list(SHIPPED_WORDING)) {
            for (Path file : files.toList()) {
                Files.writeString(own.resolve(file.getFileName()), Files.readString(file).replace(words, other));
            }
        }
        return own;
    }

    @Test
    void aCharacterThatNoFontShowsIsSaidToTheUser() throws IOException {
        Path odd = folder.resolve("odd.yaml");
        Files.writeString(odd, Files.readString(SAMPLE).replaceFirst("name: \"", "name: \"\u6f22 "));
        CommandRun.Ran ran = CommandRun.run("review", odd, "--format", "pdf");
        assertTrue(ran.err().contains("odd.yaml") && ran.err().contains("U+6F22"), ran.err());
    }
}
