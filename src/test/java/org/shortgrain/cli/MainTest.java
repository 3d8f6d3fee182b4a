package org.shortgrain.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shortgrain.report.json.ReviewJson;
import tools.jackson.databind.json.JsonMapper;

class MainTest {

    private static final Path SAMPLES = Path.of("sample-reviews");

    @TempDir
    Path folder;

    private static void assertPlain(CommandRun.Ran ran) {
        assertFalse(ran.err().contains("\tat ") || ran.err().contains("Exception"), ran.err());
    }

    /** The published one is of Java 5, and no archive of classes takes it: a start would take longer, unnoticed. */
    @Test
    void theCommandLineLibraryIsTheOneCompiledWithTheTool() {
        assertEquals(Main.class.getProtectionDomain().getCodeSource().getLocation(),
                picocli.CommandLine.class.getProtectionDomain().getCodeSource().getLocation());
    }

    @ParameterizedTest
    @CsvSource({"strut-end-fitting, 1, OBJECTION", "rudder-horn-bracket, 3, CANNOT BE JUDGED",
        "hatch-hinge-arm, 0, NO OBJECTION"})
    void aReviewPrintsTheVerdictAndWhereTheReportIs(String sample, int code, String verdict) {
        CommandRun.Ran ran = CommandRun.run("review", SAMPLES.resolve(sample + ".yaml"), "--out", folder);
        assertEquals(code, ran.code(), ran.err());
        assertTrue(ran.out().contains(verdict), ran.out());
        Path pdf = folder.resolve(sample + ".review.pdf");
        assertTrue(ran.out().contains("Report written to " + pdf), ran.out());
        assertTrue(Files.exists(pdf));
    }

    @Test
    void aRemedyIsShownWithItsPatchAndTheChangedDescriptionGetsTheVerdictThatWasStated() {
        Path sample = SAMPLES.resolve("sponson-bulkhead-tray.yaml");
        CommandRun.Ran study = CommandRun.run("remedies", sample, "--patch");
        assertEquals(0, study.code(), study.err());
        assertTrue(study.out().contains("R-01*") && study.out().contains("{\"op\": \"replace\""), study.out());
        assertEquals("", study.err(), "quiet where nobody watches");
        CommandRun.Ran applied = CommandRun.run("remedies", sample, "--apply", "R-01", "--out", folder);
        assertEquals(0, applied.code(), applied.err());
        CommandRun.Ran review = CommandRun.run("review", folder.resolve("sponson-bulkhead-tray.r-01.yaml"), "--out", folder, "--format", "text");
        assertEquals(0, review.code(), review.err());
    }

    @Test
    void anAnnexOnRemediesIsPrintedOnRequestAndOnlyThen() throws IOException {
        Path sample = SAMPLES.resolve("sponson-bulkhead-tray.yaml");
        CommandRun.run("review", sample, "--out", folder.resolve("a"), "--format", "pdf");
        CommandRun.run("review", sample, "--out", folder.resolve("b"), "--format", "pdf", "--with-remedies");
        assertFalse(pdfText(folder.resolve("a")).contains("7050-T7451 instead of"));
        String annex = pdfText(folder.resolve("b")).replaceAll("\\s+", " ");
        assertTrue(annex.contains("7050-T7451 instead of") && annex.contains("/material/temper"), annex);
    }

    private static String pdfText(Path folder) throws IOException {
        try (var pdf = org.apache.pdfbox.Loader.loadPDF(folder.resolve("sponson-bulkhead-tray.review.pdf").toFile())) {
            return new org.apache.pdfbox.text.PDFTextStripper().getText(pdf);
        }
    }

    @Test
    void aStudyAsDataAndAnUnknownRemedyAreAnswered() {
        Path sample = SAMPLES.resolve("sponson-bulkhead-tray.yaml");
        CommandRun.Ran data = CommandRun.run("remedies", sample, "--format", "json", "--out", "-");
        assertTrue(data.out().startsWith("{") && data.out().contains("\"format\": \"shortgrain-remedies\""), data.err());
        assertEquals(2, CommandRun.run("remedies", sample, "--apply", "R-99").code());
        assertEquals(66, CommandRun.run("remedies", folder.resolve("none.yaml")).code());
    }

    @Test
    void withSeveralPartsTheWorstStands() {
        CommandRun.Ran ran = CommandRun.run("review", SAMPLES.resolve("hatch-hinge-arm.yaml"), SAMPLES.resolve("rudder-horn-bracket.yaml"),
                "--out", folder, "--format", "text");
        assertEquals(3, ran.code());
    }

    @ParameterizedTest
    @ValueSource(strings = {"strut-end-fitting", "rudder-horn-bracket", "hatch-hinge-arm"})
    void theSameInputAndDateGiveTheSameBytes(String sample) throws IOException {
        Path part = SAMPLES.resolve(sample + ".yaml");
        CommandRun.run("review", part, "--out", folder.resolve("a"), "--date", "2026-02-03", "--format", "pdf,json,sarif,text");
        CommandRun.run("review", part, "--out", folder.resolve("b"), "--date", "2026-02-03", "--format", "pdf,json,sarif,text");
        for (String ending : List.of("pdf", "json", "sarif", "txt")) {
            String name = sample + ".review." + ending;
            assertArrayEquals(Files.readAllBytes(folder.resolve("a").resolve(name)),
                    Files.readAllBytes(folder.resolve("b").resolve(name)), name);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"strut-end-fitting", "rudder-horn-bracket", "hatch-hinge-arm"})
    void dataOnStandardOutputIsOfThePublishedForm(String sample) {
        PrintStream console = System.out;
        ByteArrayOutputStream caught = new ByteArrayOutputStream();
        System.setOut(new PrintStream(caught, true, StandardCharsets.UTF_8));
        try {
            CommandRun.run("review", "--format", "json", "--out", "-", SAMPLES.resolve(sample + ".yaml"));
        } finally {
            System.setOut(console);
        }
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(ReviewJson.schema());
        String json = caught.toString(StandardCharsets.UTF_8);
        assertEquals(List.of(), schema.validate(JsonMapper.shared().readTree(json)), json.substring(0, 200));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"review", "review --format docx x.yaml", "review --date yesterday x.yaml",
        "review a.yaml b.yaml --out -", "reveiw x.yaml", "rules NO-99", "start spaceship",
        "material 7075 T6 --form slab", "material 7075 T6 --thickness 60"})
    void wrongUsageIsSaidInPlainWords(String line) {
        CommandRun.Ran ran = CommandRun.run((Object[]) line.split(" "));
        assertEquals(2, ran.code(), ran.err());
        assertTrue(ran.err().startsWith("shortgrain: "), ran.err());
        assertPlain(ran);
    }

    @Test
    void aMissingDescriptionIsSaidWithItsName() {
        CommandRun.Ran ran = CommandRun.run("review", folder.resolve("not-there.yaml"));
        assertEquals(66, ran.code());
        assertTrue(ran.err().contains("not-there.yaml"), ran.err());
        assertPlain(ran);
    }

    @Test
    void anInvalidDescriptionIsSaidWithLineAndColumnAndLeavesNoReport() throws IOException {
        Path part = folder.resolve("part.yaml");
        Files.writeString(part, "schema: 1\npart: {number: \"1\", revision: A}\nform:\n  heat_treat_thickness: 76\n");
        CommandRun.Ran ran = CommandRun.run("review", part, "--out", folder.resolve("out"));
        assertEquals(65, ran.code());
        assertTrue(ran.err().contains("part.yaml:4:25"), ran.err());
        assertFalse(Files.exists(folder.resolve("out")));
        assertPlain(ran);
    }

    @Test
    void whereNothingCanBeWrittenNothingThatWasThereIsTouched() throws IOException {
        Path occupied = folder.resolve("occupied");
        Files.writeString(occupied, "a file, not a folder");
        CommandRun.Ran ran = CommandRun.run("review", SAMPLES.resolve("hatch-hinge-arm.yaml"), "--out", occupied);
        assertEquals(74, ran.code(), ran.err());
        assertTrue(ran.err().contains("cannot write"), ran.err());
        assertEquals("a file, not a folder", Files.readString(occupied));
        assertPlain(ran);
    }

    /** MIL-HDBK-5J Table 3.1.2.3.1(a), secondary: 7075-T6 plate is rated D across the short grain. */
    @Test
    void theTablesAreShownWithSourceAndStatusInEightyColumns() {
        CommandRun.Ran ran = CommandRun.run("material", "7075", "T651", "--form", "plate", "--thickness", "60 mm");
        assertEquals(0, ran.code(), ran.err());
        assertTrue(ran.out().contains("mil-hdbk-5j") && ran.out().contains("secondary"), ran.out());
        assertTrue(ran.out().lines().allMatch(text -> text.length() <= 80), ran.out());
    }

    @Test
    void aBlankDescriptionIsWrittenOnceAndNeverOverAnother() throws IOException {
        Path part = folder.resolve("new.yaml");
        assertEquals(0, CommandRun.run("start", "die-forging", "--out", part).code());
        String text = Files.readString(part);
        CommandRun.Ran again = CommandRun.run("start", "die-forging", "--out", part);
        assertEquals(74, again.code());
        assertEquals(text, Files.readString(part));
        assertEquals(3, CommandRun.run("review", part, "--out", folder, "--format", "text").code());
    }

    @Test
    void aRulebookWithAFaultIsSaidWithFileAndLine() throws IOException {
        Path rules = Files.createDirectory(folder.resolve("rules"));
        Files.writeString(rules.resolve("rulebook.yaml"), "edition: mine\nextends: shipped\n");
        Files.writeString(rules.resolve("own.drl"), "package rules.own;\n\nrule \"OWN-01\"\nwhen\n  this is no rule\n");
        CommandRun.Ran ran = CommandRun.run("review", SAMPLES.resolve("hatch-hinge-arm.yaml"), "--rulebook", rules, "--out", folder);
        assertEquals(65, ran.code(), ran.err());
        assertTrue(ran.err().contains("own.drl:"), ran.err());
        assertTrue(ran.err().contains("A rulebook is code"), ran.err());
        assertPlain(ran);
    }

    @Test
    void everyCommandExplainsItself() {
        for (String command : List.of("review", "material", "rules", "start", "schema")) {
            CommandRun.Ran ran = CommandRun.run(command, "--help");
            assertEquals(0, ran.code(), command);
            assertTrue(ran.out().startsWith("Usage: shortgrain " + command), ran.out());
        }
    }
}
