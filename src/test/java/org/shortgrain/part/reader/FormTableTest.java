package org.shortgrain.part.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.OutputStream;
import java.net.URI;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The table of forms that the build writes, against the records themselves. */
class FormTableTest {
    private static final Path BUILT = Path.of("target/classes").resolve(FormTable.PLACE);
    private static final Map<String, Expected.Fields> RECORDS = RecordForms.read();

    @Test
    void theTableOfTheBuildSaysWhatTheRecordsSay() throws IOException {
        Map<String, Expected.Fields> table = FormTable.read(BUILT.toUri().toURL());
        assertEquals(List.copyOf(RECORDS.keySet()), List.copyOf(table.keySet()));
        RECORDS.forEach((record, fields) -> {
            assertEquals(fields, table.get(record), record);
            assertEquals(fields.keys(), table.get(record).keys(), record);
        });
    }

    @Test
    void everyGroupOfTheFormIsARecordThatTheNameLeadsTo() {
        RECORDS.keySet().forEach(name -> assertEquals(name, new Expected.Group(name).type().getSimpleName()));
    }

    @Test
    void theTableIsTrustedInAJar(@TempDir Path folder) throws IOException {
        URL table = inJar(folder.resolve("tool.jar"));
        assertEquals(Set.of("PartDescription"), FormTable.trusted(Optional.of(table)).keySet());
    }

    /** A record may have been compiled anew there without the build. */
    @Test
    void inAFolderOfClassesTheRecordsAreAsked(@TempDir Path folder) throws IOException {
        Path table = Files.writeString(folder.resolve("part-forms.csv"), shortened());
        assertEquals(RECORDS, FormTable.trusted(Optional.of(table.toUri().toURL())));
        assertEquals(RECORDS, FormTable.trusted(Optional.empty()));
    }

    private static URL inJar(Path jar) throws IOException {
        try (OutputStream out = Files.newOutputStream(jar); ZipOutputStream entries = new ZipOutputStream(out)) {
            entries.putNextEntry(new ZipEntry(FormTable.PLACE));
            entries.write(shortened().getBytes(StandardCharsets.UTF_8));
        }
        return URI.create("jar:" + jar.toUri() + "!/" + FormTable.PLACE).toURL();
    }

    /** The heads and the first row, which says too little. */
    private static String shortened() throws IOException {
        return String.join("\n", Files.readAllLines(BUILT).subList(0, 2)) + "\n";
    }
}
