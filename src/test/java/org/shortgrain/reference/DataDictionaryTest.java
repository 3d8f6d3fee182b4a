package org.shortgrain.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The data dictionary describes every table and column, and its coverage section is current.
 *
 * <p>To write that section anew: {@code mvn test -Dtest=DataDictionaryTest -Dcoverage.write=true}.
 */
class DataDictionaryTest {
    private static final Path FOLDER = Path.of("rules", "data");
    private static final Path DICTIONARY = FOLDER.resolve("README.md");
    private static final String BEGIN = "<!-- coverage: written by DataDictionaryTest; do not edit by hand -->\n";
    private static final String END = "<!-- end of coverage -->\n";

    @Test
    void everyTableAndColumnIsDescribed() throws IOException {
        String dictionary = Files.readString(DICTIONARY);
        List<Path> tables;
        try (Stream<Path> files = Files.list(FOLDER)) {
            tables = files.filter(f -> f.toString().endsWith(".csv")).sorted().toList();
        }
        assertTrue(tables.size() > 30);
        for (Path table : tables) {
            assertTrue(dictionary.contains("`" + table.getFileName() + "`"), table + " is not described");
            for (String column : Files.readAllLines(table).get(0).split(",")) {
                assertTrue(dictionary.contains("`" + column + "`"), column + " of " + table + " is not described");
            }
        }
    }

    @Test
    void theCoverageSectionIsCurrent() throws IOException {
        String dictionary = Files.readString(DICTIONARY);
        int begin = dictionary.indexOf(BEGIN) + BEGIN.length();
        int end = dictionary.indexOf(END);
        assertTrue(begin >= BEGIN.length() && end >= begin, "the marks of the coverage section are missing");
        String report = new CoverageReport(ReferenceTables.builtIn()).write();
        if (Boolean.getBoolean("coverage.write")) {
            Files.writeString(DICTIONARY, dictionary.substring(0, begin) + report + dictionary.substring(end));
            return;
        }
        assertEquals(report, dictionary.substring(begin, end));
    }
}
