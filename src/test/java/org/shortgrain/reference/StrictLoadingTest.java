package org.shortgrain.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A rulebook with a fault in a table is refused, and the fault is told with file and line. */
class StrictLoadingTest {
    private static final Path RULES = Path.of("rules");

    /** Loads the shipped tables with one file changed. */
    private static ReferenceTables loadChanged(String file, UnaryOperator<String> change) {
        return ReferenceTables.load(name -> {
            try {
                String text = Files.readString(RULES.resolve(name));
                return new ByteArrayInputStream((name.equals(file) ? change.apply(text) : text)
                        .getBytes(StandardCharsets.UTF_8));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    private static String faultOf(String file, UnaryOperator<String> change) {
        RulebookTableException refused = assertThrows(RulebookTableException.class, () -> loadChanged(file, change));
        return String.join("\n", refused.faults());
    }

    @ParameterizedTest(name = "{0}: {1} becomes {2}")
    @CsvSource(delimiter = ';', value = {
        "data/ratings.csv; ,mil-hdbk-5j,; ,mil-hdbk-9z,; source 'mil-hdbk-9z' is not in sources.yaml",
        "data/ratings.csv; ,secondary,; ,hearsay,; status is 'hearsay'",
        "data/ratings.csv; ,g64_letter,A,; ,g64_letter,E,; 'E' is no word of g64_letter",
        "data/ratings.csv; ,g64_letter,A,; ,g65_letter,A,; scheme is 'g65_letter'",
        "data/ratings.csv; 2014,T6,; 20l4,T6,; alloy '20l4' is not in alloys.csv",
        "data/ratings.csv; ,plate,; ,plat,; form 'plat' is not in product-forms.csv",
        "data/ratings.csv; ,any,msfc_std_3029,; ,ST,msfc_std_3029,; classes by the worst direction",
        "data/ratings.csv; ,medium-high,; ,fairly sure,; confidence is 'fairly sure'",
        "data/ratings.csv; ,T37,; ,T37a,; is no T temper family",
        "data/ratings.csv; alloys,tempers; alloys,temper; has no column tempers",
        "data/scc-stresses.csv; ,193,193,; ,19300,193,; outside 1.0 to 2000.0",
        "data/scc-stresses.csv; ,193,193,; ,193 MPa,193,; not a number",
        "data/scc-stresses.csv; ,193,193,; ,193,192,; stress_low_MPa lies above stress_high_MPa",
        "data/scc-stresses.csv; ,qualification,; ,passed,; kind 'passed' is unknown",
        "data/scc-stresses.csv; plate,101.63,152.4; plate,100.63,152.4; overlaps the thickness band of",
        "data/strengths.csv; ,L,A,448.2,; ,L,A,4482,; outside 50.0 to 3000.0",
        "data/strengths.csv; ,L,A,448.2,399.9; ,L,A,448.2,499.9; ftu_MPa lies below fty_MPa",
        "data/strengths.csv; sheet,0.508,0.991; sheet,,; overlaps the thickness band of",
        "data/strengths.csv; ,L,A,448.2; ,LS,A,448.2; direction is 'LS'",
        "data/strengths.csv; ,L,A,448.2; ,L,C,448.2; basis is 'C'; expected one of",
        "data/relief-digits.csv; ,unrelieved,; ,stressed,; verdict is 'stressed'",
        "data/fluids.csv; ,yes,; ,maybe,; electrolyte is 'maybe'",
        "data/physical.csv; ,0.33,; ,33,; outside 0.2 to 0.45",
        "data/tempers.csv; 87,peak; 86,peak; the temper stands twice",
        "data/crosswalk.csv; high,4,4; high,4,3; level_worst lies above level_best",
        "data/zones.csv; wheel_well,; landing_gear,; 'landing_gear' stands twice",
        "data/zones.csv; ,W4,; ,W9,; wetness is 'W9'",
        "data/fluid-attacks.csv; ,titanium,; ,titan,; no material has the family 'titan'",
        "data/route-order.csv; ,quench,; ,quenchh,; unknown operation or kind 'quenchh'",
        "data/route-operations.csv; straighten,; straighten,anneal|; stands for both",
        "data/alloys.csv; 7050,A97050; 7075,A97050; 7075 stands twice",
        "data/temper-acceptance.csv; ,38.0,43.0,; ,380,43.0,; outside 20.0 to 65.0",
        "data/ageing-cycles.csv; ,2,age,163; ,3,age,163; out of order",
        "data/galvanic.csv; ,15,SCE,; ,15.5,SCE,; must be a whole number",
        "sources.yaml; kind: handbook; kind: rumour; kind of",
        "sources.yaml; '  kind: handbook'; '  sort: handbook'; unknown or repeated key 'sort'",
        "sources.yaml; 'mil-hdbk-5j:'; 'mil-hdbk-5j: [x]  #'; expected title, kind and seen of mil-hdbk-5j",
        "sources.yaml; 'mil-hdbk-5j:'; 'astm-g64-99:'; astm-g64-99 stands twice"})
    void aFaultInARowIsTold(String file, String find, String replace, String fault) {
        String told = faultOf(file, text -> {
            assertTrue(text.contains(find), "the table no longer holds '" + find + "'");
            return text.replaceFirst(java.util.regex.Pattern.quote(find),
                    java.util.regex.Matcher.quoteReplacement(replace));
        });
        assertTrue(told.contains(fault), told);
        assertTrue(told.contains(file + ":"), told);
    }

    @Test
    void theLineOfTheFaultIsTold() {
        String told = faultOf("data/ratings.csv", text -> text.replaceFirst("memory", "hearsay"));
        assertTrue(told.startsWith("data/ratings.csv:2: status is 'hearsay'"), told);
    }

    @Test
    void aRowThatStandsTwiceIsTold() {
        String told = faultOf("data/ratings.csv", text -> text + text.lines().skip(400).findFirst().orElseThrow()
                + "\n");
        assertTrue(told.contains("or is the same row again"), told);
    }

    @Test
    void aRowWithAFieldTooFewIsTold() {
        String told = faultOf("data/zones.csv", text -> text + "shed,open shed\n");
        assertTrue(told.contains("data/zones.csv"), told);
    }

    @Test
    void aMissingTableIsTold() {
        RulebookTableException refused = assertThrows(RulebookTableException.class,
                () -> ReferenceTables.load(name -> name.equals("data/ratings.csv") ? null : open(name)));
        assertTrue(refused.getMessage().contains("data/ratings.csv: is missing from the rulebook"));
    }

    @Test
    void allFaultsOfAllTablesAreToldAtOnce() {
        RulebookTableException refused = assertThrows(RulebookTableException.class, () -> ReferenceTables.load(name ->
                name.startsWith("data/z") || name.startsWith("data/fluids") ? changed(name) : open(name)));
        assertTrue(refused.faults().stream().anyMatch(f -> f.startsWith("data/zones.csv:")));
        assertTrue(refused.faults().stream().anyMatch(f -> f.startsWith("data/fluids.csv:")));
    }

    /** Some tables are read after the others; the order of the faults does not tell. */
    @Test
    void faultsAreToldFileByFileAndLineByLineWhateverIsReadFirst() {
        Set<String> edited = Set.of("data/answers.csv", "data/remedies.csv", "data/ratings.csv", "sources.yaml");
        RulebookTableException refused = assertThrows(RulebookTableException.class, () -> ReferenceTables.load(name ->
                edited.contains(name) ? new ByteArrayInputStream(textOf(name)
                        .replace("common practice", "guess").replace("memory", "guess").replace("kind: patent", "kind: rumour")
                        .replace(",mil-hdbk-5j,", ",mil-hdbk-9z,").getBytes(StandardCharsets.UTF_8)) : open(name)));
        List<String> files = refused.faults().stream().map(fault -> fault.substring(0, fault.indexOf(':'))).toList();
        assertEquals(edited.stream().sorted().toList(), files.stream().distinct().toList());
        assertEquals(files.stream().sorted().toList(), files);
        List<Integer> lines = refused.faults().stream().filter(fault -> fault.startsWith("data/ratings.csv:"))
                .map(fault -> Integer.valueOf(fault.split(":")[1])).toList();
        assertEquals(lines.stream().sorted().toList(), lines);
    }

    @Test
    void anEditedRulebookIsLoadedFromItsFolder() {
        assertEquals(ReferenceTables.builtIn().materials().ratings().all().size(),
                ReferenceTables.from(RULES).materials().ratings().all().size());
    }

    private static InputStream open(String name) {
        try {
            return Files.newInputStream(RULES.resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static InputStream changed(String name) {
        return new ByteArrayInputStream(textOf(name).replace("common practice", "guess")
                .getBytes(StandardCharsets.UTF_8));
    }

    private static String textOf(String name) {
        try {
            return Files.readString(RULES.resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
