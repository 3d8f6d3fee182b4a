package org.shortgrain.part.reader;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The form of a description as a table: what {@link RecordForms} reads off the records, written down by the build. Reading
 * it off costs a cold start far more than all the rest of a reading, since the runtime makes a class for each type of
 * annotation.
 */
public final class FormTable {
    /** Where the table lies among the tool's classes: one component of a record in each row. */
    static final String PLACE = "schema/part-forms.csv";

    private FormTable() {
    }

    /**
     * Writes the table, a step of the build.
     *
     * @param classes folder of the tool's classes
     * @throws IOException if it cannot be written
     */
    public static void write(Path classes) throws IOException {
        Path file = classes.resolve(PLACE);
        Files.createDirectories(file.getParent());
        try (CsvWriter table = CsvWriter.builder().build(file)) {
            table.writeRecord(FormRow.heads());
            RecordForms.read().forEach((record, fields) -> fields.components()
                    .forEach(component -> table.writeRecord(FormRow.write(record, component))));
        }
    }

    /** Each group of the form by its name. */
    static Map<String, Expected.Fields> shipped() {
        return trusted(Optional.ofNullable(FormTable.class.getResource("/" + PLACE)));
    }

    /**
     * The forms of a table in the tool's jar, where nothing is younger than it. A folder of classes may hold a record that
     * was compiled without the build, as an editor does; there the records themselves are asked.
     */
    static Map<String, Expected.Fields> trusted(Optional<URL> table) {
        return table.isEmpty() || table.get().getProtocol().equals("file") ? RecordForms.read() : read(table.get());
    }

    static Map<String, Expected.Fields> read(URL table) {
        try (InputStream in = table.openStream()) {
            return read(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + table, e);
        }
    }

    private static Map<String, Expected.Fields> read(String text) throws IOException {
        Map<String, List<Expected.Component>> records = new LinkedHashMap<>();
        try (CsvReader<CsvRecord> table = CsvReader.builder().ofCsvRecord(text)) {
            for (CsvRecord line : table) {
                if (line.getStartingLineNumber() > 1) {
                    FormRow row = new FormRow(line);
                    records.computeIfAbsent(row.record(), name -> new ArrayList<>()).add(row.component());
                }
            }
        }
        Map<String, Expected.Fields> forms = new LinkedHashMap<>();
        for (Map.Entry<String, List<Expected.Component>> record : records.entrySet()) {
            forms.put(record.getKey(), Expected.Fields.of(record.getValue()));
        }
        return forms;
    }
}
