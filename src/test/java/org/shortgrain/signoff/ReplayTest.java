package org.shortgrain.signoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shortgrain.assessment.Knowledge;
import org.shortgrain.assessment.Wording;
import org.shortgrain.cli.CommandRun;
import org.shortgrain.rulebook.Rulebook;

/** The review made again from the files in its report. */
class ReplayTest {

    @TempDir
    Path folder;

    static List<String> samples() {
        try (Stream<Path> files = Files.list(Path.of("sample-reviews"))) {
            return files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".yaml"))
                    .map(name -> name.replace(".yaml", "")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Replayer shipped() {
        return new Replayer(Knowledge.shipped(), Wording.shipped(), "another version");
    }

    @ParameterizedTest
    @MethodSource("samples")
    void everySampleComesOutTheSameAgain(String sample) throws Exception {
        Replay replay = shipped().replay(Signing.report(sample));
        assertTrue(replay.isSame(), replay.text());
        assertEquals(replay.recorded().contentHash(), replay.again());
        assertTrue(replay.comparison().orElseThrow().isSame());
    }

    @Test
    void anEditedRuleIsNamedByFileAndByRule() throws Exception {
        Path edited = Files.createDirectory(folder.resolve("edited"));
        Files.writeString(edited.resolve("rulebook.yaml"),
                "edition: \"edited\"\nextends: shipped\ndisabled: {ASSEMBLY-07: \"to see whether it is missed\"}\n");
        Replay replay = new Replayer(Knowledge.of(Rulebook.from(edited)), Wording.shipped(), "0").replay(Signing.report(Signing.BAD));
        assertFalse(replay.isSame() || replay.sameRulebook());
        assertTrue(replay.files().contains("rulebook.yaml"), replay.files().toString());
        assertTrue(replay.text().contains("ASSEMBLY-07"), replay.text());
        assertTrue(replay.comparison().orElseThrow().findings().stream().anyMatch(one -> one.rule().equals("ASSEMBLY-07")));
    }

    @Test
    void aRulebookOfTheSameFilesIsTheSameRulebook() throws Exception {
        Replay replay = new Replayer(Knowledge.of(Rulebook.from(Path.of("rules"))), Wording.shipped(), "0")
                .replay(Signing.report(Signing.GOOD));
        assertTrue(replay.isSame(), replay.text());
    }

    @Test
    void anEditedDescriptionIsNamedByItsPath() throws Exception {
        byte[] report = Signing.report(Signing.GOOD);
        String description = new String(Replayer.description(report).orElseThrow(), StandardCharsets.UTF_8);
        String edited = description.replaceFirst("temper: \"[^\"]*\"", "temper: \"T6\"");
        assertFalse(edited.equals(description));
        byte[] swapped = Tampering.withAttachment(report, Signing.GOOD + ".yaml", edited);
        Replay replay = shipped().replay(swapped);
        assertFalse(replay.isSame());
        assertTrue(replay.text().contains("/material/temper: "), replay.text());
    }

    @Test
    void theCommandVerifiesReplaysAndEndsByWhatItFound() throws IOException {
        Path file = folder.resolve("report.pdf");
        Files.write(file, Signing.thrice());
        CommandRun.Ran good = CommandRun.run("verify", file);
        assertEquals(0, good.code(), good.out() + good.err());
        assertTrue(good.out().contains("Replay: same."), good.out());
        assertTrue(good.out().contains("who signed is not proven"), good.out());
        byte[] changed = Signing.thrice().clone();
        changed[4000] ^= 1;
        Files.write(file, changed);
        CommandRun.Ran bad = CommandRun.run("verify", file);
        assertEquals(4, bad.code(), bad.out() + bad.err());
        assertTrue(bad.out().contains("Result: NOT VERIFIED"), bad.out());
        Files.write(file, Signing.report(Signing.GOOD));
        assertEquals(4, CommandRun.run("verify", file).code());
        Files.writeString(file, "no pdf");
        assertEquals(4, CommandRun.run("verify", file).code());
        assertEquals(66, CommandRun.run("verify", folder.resolve("absent.pdf")).code());
    }

    @Test
    void withADescriptionOfTodayAndAnotherRulebookTheFourVerdictsStandCrosswise() throws IOException {
        Path edited = Files.createDirectory(folder.resolve("edited"));
        Files.writeString(edited.resolve("rulebook.yaml"),
                "edition: \"edited\"\nextends: shipped\ndisabled: {ASSEMBLY-07: \"to see whether it is missed\"}\n");
        Path file = folder.resolve("report.pdf");
        Files.write(file, Signing.report(Signing.BAD));
        CommandRun.Ran ran = CommandRun.run("verify", file, "--description", "sample-reviews/" + Signing.GOOD + ".yaml",
                "--rulebook", edited);
        assertEquals(4, ran.code(), "the report is not signed");
        assertTrue(ran.out().contains("Replay: same."), ran.out());
        assertTrue(ran.out().contains("rulebook of the report"), ran.out());
        assertTrue(ran.out().contains("description then    OBJECTION"), ran.out());
        assertTrue(ran.out().contains("description now     NO OBJECTION"), ran.out());
        for (String effect : List.of("Effect of the rulebook", "Effect of the design", "Effect of both")) {
            assertTrue(ran.out().contains(effect), ran.out());
        }
        assertTrue(ran.out().contains("cleared: F-03 objection, ASSEMBLY-07"), ran.out());
    }

    @Test
    void aWithdrawnIssueDoesNotVerify() throws Exception {
        Path file = folder.resolve("report.pdf");
        Files.write(file, Signing.once());
        String hash = ReportFile.of(Signing.once()).review().contentHash().substring(0, 16);
        Files.writeString(folder.resolve("withdrawn.yaml"), "withdrawn:\n  - {content: \"" + hash
                + "\", reason: \"drawing revision E\", by: \"A. Reviewer\", date: 2026-02-03}\n");
        CommandRun.Ran ran = CommandRun.run("verify", file, "--signatures-only");
        assertEquals(4, ran.code(), ran.out());
        assertTrue(ran.out().contains("This issue was withdrawn on 2026-02-03 by A. Reviewer: drawing revision E"), ran.out());
        Files.writeString(folder.resolve("withdrawn.yaml"), "withdrawn:\n  - {content: abc, reason: x, by: y, date: 2026-13-03}\n");
        CommandRun.Ran faulty = CommandRun.run("verify", file, "--signatures-only");
        assertEquals(65, faulty.code());
        assertTrue(faulty.err().contains("withdrawn.yaml:2:15"), faulty.err());
    }
}
