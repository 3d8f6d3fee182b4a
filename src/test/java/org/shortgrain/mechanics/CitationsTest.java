package org.shortgrain.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class CitationsTest {

    private static final Pattern CITED = Pattern.compile("new Citation\\(\\s*\"([a-z0-9-]+)\"");
    private static final Path MECHANICS = Path.of("src/main/java/org/shortgrain/mechanics");

    @Test
    void everyDocumentThatAnEquationCitesIsInTheListOfSources() throws IOException {
        List<String> listed = Files.readAllLines(Path.of("rules/sources.yaml"));
        try (Stream<Path> files = Files.walk(MECHANICS)) {
            List<String> cited = files.filter(f -> f.toString().endsWith(".java")).flatMap(CitationsTest::cited).distinct()
                    .toList();
            assertFalse(cited.isEmpty());
            assertEquals(List.of(), cited.stream().filter(id -> !listed.contains(id + ":")).toList());
        }
    }

    private static Stream<String> cited(Path file) {
        try {
            return CITED.matcher(Files.readString(file)).results().map((MatchResult m) -> m.group(1));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
