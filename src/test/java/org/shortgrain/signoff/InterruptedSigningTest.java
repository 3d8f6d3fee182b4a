package org.shortgrain.signoff;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shortgrain.report.AtomicFile;

/** A signing that is stopped half way leaves the report as it was; and a review knows nothing of signing. */
class InterruptedSigningTest {

    @TempDir
    Path folder;

    private Path report() throws IOException {
        Path file = folder.resolve("report.pdf");
        Files.write(file, Signing.report(Signing.GOOD));
        return file;
    }

    private static ProcessBuilder java(List<String> options, String... command) {
        List<String> words = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        words.addAll(options);
        words.addAll(List.of("-cp", System.getProperty("java.class.path"), "org.shortgrain.cli.Main"));
        words.addAll(List.of(command));
        return new ProcessBuilder(words).redirectErrorStream(true);
    }

    @Test
    void aProcessThatIsKilledWhileItSignsLeavesTheReportAsItWasOrSigned() throws Exception {
        byte[] before = Signing.report(Signing.GOOD);
        Path key = folder.resolve("k.p12");
        Files.write(key, TestKeys.selfMade("Ada Preparer").store());
        // killed early, in the middle, and about when it writes
        for (int milliseconds : new int[] {400, 1200, 2000, 2600, 3200}) {
            Path file = report();
            ProcessBuilder signing = java(List.of("-XX:TieredStopAtLevel=1"), "sign", file.toString(), "--key", key.toString(),
                    "--role", "prepared");
            signing.environment().put("SHORTGRAIN_KEY_PASSWORD", TestKeys.PASSWORD);
            Process process = signing.start();
            process.waitFor(milliseconds, TimeUnit.MILLISECONDS);
            process.destroyForcibly().waitFor();
            byte[] after = Files.readAllBytes(file);
            if (!java.util.Arrays.equals(before, after)) {
                assertTrue(new Verifier(List.of()).verify(after).isIntact(), "killed after " + milliseconds + " ms");
            }
        }
    }

    /** The writing itself, stopped at every tenth of the file. */
    @Test
    void aWritingThatFailsAtAnyPlaceLeavesTheReportAsItWas() throws Exception {
        Path file = report();
        byte[] signed = Signing.once();
        for (int tenth = 0; tenth <= 10; tenth++) {
            int room = signed.length / 10 * tenth;
            assertThrows(IOException.class, () -> AtomicFile.write(file, to -> {
                to.write(signed, 0, room);
                throw new IOException("No space left on device");
            }));
            assertArrayEquals(Signing.report(Signing.GOOD), Files.readAllBytes(file));
        }
        try (var files = Files.list(folder)) {
            assertEquals(List.of("report.pdf"), files.map(one -> one.getFileName().toString()).toList());
        }
    }

    /** On Linux a shell can bound the size of what a process writes, which is a full disk as far as the process can tell. */
    @Test
    void aDiskThatIsFullLeavesTheReportAsItWasAndSaysSo() throws Exception {
        Assumptions.assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "no /bin/bash; the test of the full disk is skipped");
        Path file = report();
        Path key = folder.resolve("k.p12");
        Files.write(key, TestKeys.selfMade("Ada Preparer").store());
        List<String> command = java(List.of("-XX:TieredStopAtLevel=1", "-XX:-UsePerfData", "-Xshare:off"), "sign", file.toString(),
                "--key", key.toString(), "--role", "prepared").command();
        long blocks = Files.size(file) / 1024 / 2;
        List<String> bounded = new ArrayList<>(List.of("/bin/bash", "-c", "trap '' XFSZ; ulimit -f " + blocks + "; exec \"$@\"", "sign"));
        bounded.addAll(command);
        ProcessBuilder signing = new ProcessBuilder(bounded).redirectErrorStream(true);
        signing.environment().put("SHORTGRAIN_KEY_PASSWORD", TestKeys.PASSWORD);
        Process process = signing.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(74, process.waitFor(), said);
        assertTrue(said.contains("cannot write") && said.contains("is as it was"), said);
        assertArrayEquals(Signing.report(Signing.GOOD), Files.readAllBytes(file));
    }

    @Test
    void aReviewLoadsNothingOfTheSigningLibraries() throws Exception {
        Path log = folder.resolve("classes.txt");
        Process process = java(List.of("-Xlog:class+load=info:file=" + log), "review",
                "sample-reviews/" + Signing.GOOD + ".yaml", "--out", folder.toString()).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), said);
        try (var lines = Files.lines(log)) {
            assertEquals(List.of(), lines.filter(line -> line.contains("eu.europa.esig") || line.contains("org.bouncycastle")
                    || line.contains("jakarta.xml")).toList());
        }
    }
}
