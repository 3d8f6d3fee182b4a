package org.shortgrain.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtomicFileTest {

    @TempDir
    private Path folder;

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void aFileTakesThePlaceOfAnOlderOne() throws IOException {
        Path file = folder.resolve("report.json");
        AtomicFile.write(file, to -> to.write("old".getBytes()));
        AtomicFile.write(file, to -> to.write("new".getBytes()));
        assertEquals("new", Files.readString(file));
        assertEquals(List.of("report.json"), names());
    }

    @Test
    void aFileThatFailsHalfWayLeavesWhatWasThere() throws IOException {
        Path file = folder.resolve("report.json");
        AtomicFile.write(file, to -> to.write("old".getBytes()));
        IOException failure = assertThrows(IOException.class, () -> AtomicFile.write(file, to -> {
            to.write("half".getBytes());
            throw new IOException("no room");
        }));
        assertEquals("no room", failure.getMessage());
        assertEquals("old", Files.readString(file));
        assertEquals(List.of("report.json"), names());
    }

    @Test
    void aFolderThatIsMissingIsMade() throws IOException {
        AtomicFile.write(folder.resolve("out").resolve("report.json"), to -> to.write('x'));
        assertEquals(List.of("out"), names());
    }

    @Test
    void aPlaceThatIsAFolderIsRefused() throws IOException {
        Files.createDirectories(folder.resolve("report.json").resolve("inside"));
        assertThrows(IOException.class, () -> AtomicFile.write(folder.resolve("report.json"), to -> to.write('x')));
        assertEquals(List.of("report.json"), names());
    }
}
