package org.shortgrain.reference;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Reads the CSV tables: first line the heads, then one row a line. A table whose heads differ is refused. */
final class Csv {
    private final Function<String, InputStream> door;
    private final Faults faults;
    private final Sources documents;

    /**
     * Makes a reader.
     *
     * @param door      opens a file of the rulebook
     * @param faults    where faults are noted
     * @param documents the documents that rows may cite
     */
    Csv(Function<String, InputStream> door, Faults faults, Sources documents) {
        this.door = door;
        this.faults = faults;
        this.documents = documents;
    }

    Faults faults() {
        return faults;
    }

    Sources documents() {
        return documents;
    }

    /**
     * {@return the rows of a table}
     *
     * @param file  name below the rulebook, such as {@code data/ratings.csv}
     * @param heads the column heads that the table must have, in any order
     */
    List<Row> read(String file, String... heads) {
        List<Row> rows = new ArrayList<>();
        try (CsvReader<CsvRecord> reader = CsvReader.builder().ofCsvRecord(textOf(file))) {
            Map<String, Integer> columns = null;
            for (CsvRecord line : reader) {
                if (columns == null) {
                    columns = columns(file, line.getFields(), heads);
                } else {
                    rows.add(new Row(this, file, columns, line));
                }
            }
            if (columns == null) {
                faults.add(file, "is empty; its first line must name the columns");
            }
        } catch (CsvParseException e) {
            faults.add(file, "is no CSV table with as many fields in each row as there are heads: " + e.getMessage());
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + file, e);
        }
        return rows;
    }

    private String textOf(String file) throws IOException {
        try (InputStream in = door.apply(file)) {
            if (in == null) {
                faults.add(file, "is missing from the rulebook");
                return "";
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** The heads are interned, as the literals are by which readers of rows name them: they are then found at a glance. */
    private Map<String, Integer> columns(String file, List<String> fields, String... heads) {
        Map<String, Integer> columns = new HashMap<>();
        for (int i = 0; i < fields.size(); i++) {
            if (columns.put(fields.get(i).intern(), i) != null) {
                faults.add(file, 1, "names the column " + fields.get(i) + " twice");
            }
        }
        for (String head : heads) {
            if (!columns.containsKey(head)) {
                faults.add(file, 1, "has no column " + head);
            }
        }
        if (columns.size() > heads.length) {
            List<String> extra = new ArrayList<>(fields);
            extra.removeAll(List.of(heads));
            faults.add(file, 1, "has unknown columns " + extra);
        }
        return columns;
    }
}
