package org.shortgrain.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The reports beside the sample parts are what the tool writes today.
 *
 * <p>To renew them: {@code mvn -o test -Dtest=SampleReviewsTest -Dshortgrain.renew=true}, then look at every page.
 */
class SampleReviewsTest {

    private static final Path SAMPLES = Path.of("sample-reviews");
    private static final boolean RENEW = Boolean.getBoolean("shortgrain.renew");

    @TempDir
    Path folder;

    static List<Path> samples() {
        try (Stream<Path> files = Files.list(SAMPLES)) {
            return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void theReportBesideASampleIsCurrent(Path sample) throws IOException {
        PrintWriter nowhere = new PrintWriter(new StringWriter());
        Path out = RENEW ? SAMPLES : folder;
        Main.run(nowhere, nowhere, "review", sample.toString(), "--out", out.toString());
        for (String ending : List.of(".review.pdf", ".review.json")) {
            String name = sample.getFileName().toString().replace(".yaml", ending);
            assertArrayEquals(Files.readAllBytes(SAMPLES.resolve(name)), Files.readAllBytes(out.resolve(name)),
                    name + " is not current; renew it as the comment of this test says, and look at it");
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void everySampleSaysThatItIsInvented(Path sample) throws IOException {
        assertTrue(Files.readString(sample).lines().limit(3).anyMatch(line -> line.contains("nvented for demonstration")),
                sample.toString());
    }

    @Test
    void noReportIsLeftWithoutItsSample() throws IOException {
        try (Stream<Path> files = Files.list(SAMPLES)) {
            files.filter(file -> file.toString().contains(".review.")).forEach(file -> assertTrue(Files.exists(
                    SAMPLES.resolve(file.getFileName().toString().replaceAll("\\.review\\..*", ".yaml"))), file.toString()));
        }
    }
}
