package org.shortgrain.reference;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MaterialTextTest {
    private static ReferenceTables tables;

    @BeforeAll
    static void load() {
        tables = ReferenceTables.builtIn();
    }

    private static String text(MaterialQuery query) {
        return new MaterialText(tables).of(tables.materials().lookUp(query));
    }

    @Test
    void noLineOfAnyMaterialIsLongerThanEightyCharacters() {
        for (Alloy alloy : tables.materials().alloys().all()) {
            for (MaterialQuery query : List.of(MaterialQuery.ofAlloy(alloy.name()),
                    MaterialQuery.ofAlloy(alloy.name()).temper("T7351").form("plate").thickness(0.060))) {
                text(query).lines().forEach(line -> assertTrue(line.length() <= 80, line));
            }
        }
    }

    @Test
    void aMaterialIsShownWithVerdictRowsSourcesAndStatus() {
        String text = text(MaterialQuery.ofAlloy("7075").temper("T6").form("die_forging").thickness(0.076));
        for (String part : List.of("7075 T6, die forging, 76 mm when heat treated", "ST  susceptible, level 1 of 4",
                "D           ASTM G64 / MIL-HDBK-5 letter", "48 MPa      lowest: threshold", "510/434",
                "Table 3.7.6.0(e1)", "the quench stress is still there", "msfc-std-3029a")) {
            assertTrue(text.replaceAll("\\s+", " ").contains(part.replaceAll("\\s+", " ")), part + " in\n" + text);
        }
    }

    /** Every item in square brackets ends with a status word. */
    @ParameterizedTest
    @ValueSource(strings = {"7075", "7050", "2024", "4340", "17-4PH", "Ti-6Al-4V", "AZ31B", "C26000", "356.0", "303"})
    void everyCitationCarriesItsStatus(String alloy) {
        String text = text(MaterialQuery.ofAlloy(alloy)).replaceAll("\\s+", " ");
        String[] parts = text.split("\\[");
        assertTrue(parts.length > 3, text);
        Arrays.stream(parts).skip(1).forEach(part -> assertTrue(part.substring(0, part.indexOf(']'))
                .matches(".*(read|secondary|derived|common practice|memory)"), part));
    }

    @Test
    void anUnknownAlloyIsNotGuessedAndNearOnesAreNamed() {
        String text = text(MaterialQuery.ofAlloy("7076").temper("T6"));
        assertTrue(text.contains("The tables do not name this alloy."));
        assertTrue(text.contains("ST  not covered"));
        assertTrue(text.contains("7075"));
    }

    @Test
    void whatRestsOnMemoryIsSaidSo() {
        assertTrue(text(MaterialQuery.ofAlloy("Ti-6Al-4V").temper("annealed").form("plate"))
                .contains("rests on memory alone"));
        assertFalse(text(MaterialQuery.ofAlloy("7075").temper("T6")).contains("rests on memory alone"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"safe", "approved", "certified", "airworthy", "immune", "zero risk"})
    void noWordOfApprovalIsUsed(String word) {
        String text = text(MaterialQuery.ofAlloy("7075").temper("T7351").form("plate").thickness(0.060));
        assertFalse(text.toLowerCase(java.util.Locale.ROOT).contains(word));
    }
}
