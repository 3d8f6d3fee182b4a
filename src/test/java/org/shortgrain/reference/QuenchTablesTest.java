package org.shortgrain.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.shortgrain.mechanics.quench.FilmCoefficient;
import org.shortgrain.mechanics.quench.QuenchBound;
import org.shortgrain.terms.SourceStatus;

class QuenchTablesTest {

    private final QuenchTables tables = QuenchTables.bundled();

    private static QuenchTables edited(String file, UnaryOperator<String> edit) {
        return QuenchTables.load(name -> {
            InputStream shipped = QuenchTablesTest.class.getResourceAsStream("/rulebook/" + name);
            if (!name.equals(file)) {
                return shipped;
            }
            try (shipped) {
                String text = new String(shipped.readAllBytes(), StandardCharsets.UTF_8);
                return new ByteArrayInputStream(edit.apply(text).getBytes(StandardCharsets.UTF_8));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    /** Bounds of the skin: 7050 150 and 190 MPa, 7449 175 and 215, Al-Cu 110 and 150. */
    @Test
    void theWTemperYieldsAreThoseOfTheBound() {
        assertBound("7085", 150, 190);
        assertBound("7449", 175, 215);
        assertBound("2219", 110, 150);
    }

    private void assertBound(String alloy, double yield, double skin) {
        QuenchBound bound = QuenchBound.of(tables.material(alloy).orElseThrow());
        assertEquals(yield * 1e6, bound.yield(), 1);
        assertEquals(-skin * 1e6, bound.plateSkin(), 1);
    }

    @Test
    void anAlloyWithoutATableIsNotGuessedAndItsFamilyHasAStandIn() {
        assertTrue(tables.material("7055").isEmpty());
        assertEquals("7449", tables.standInFor("aluminium_7xxx").orElseThrow().name());
        assertTrue(tables.standInFor("titanium_alpha_beta").isEmpty());
    }

    /** 40 degC is the mean of the curves of 20 and 60 degC. */
    @Test
    void waterBetweenTwoBathsIsWeightedAndOutsideThemNotExtrapolated() {
        FilmCoefficient forty = tables.baths().water(40).orElseThrow();

        assertEquals(0.5 * (20_000 + 12_000), forty.coefficient().at(180), 1e-6);
        assertEquals(0.5 * (1 + 0.72), forty.shareOfColdWater(), 1e-12);
        assertEquals("water20", tables.baths().water(10).orElseThrow().name());
        assertTrue(tables.baths().water(101).isEmpty());
        assertTrue(tables.baths().water(-5).isEmpty());
        assertTrue(tables.baths().glycol(5).isEmpty());
        assertTrue(tables.baths().glycol(35).isEmpty());
        assertEquals("pag15", tables.baths().glycol(15).orElseThrow().name());
    }

    @Test
    void whatIsFromMemorySaysSo() {
        assertEquals(SourceStatus.MEMORY, tables.material("7050").orElseThrow().source().status());
        assertEquals(SourceStatus.MEMORY, tables.baths().coldWater().source().status());
        assertEquals(SourceStatus.READ, tables.baths().water(60).orElseThrow().sourceOfShare().status());
        assertEquals(SourceStatus.COMMON_PRACTICE, tables.published().compressedHand().source().status());
    }

    @Test
    void faultsAreReportedTogetherWithFileAndLine() {
        RulebookTableException e = assertThrows(RulebookTableException.class,
                () -> edited("data/quench-materials.csv", text -> text
                        .replace("7050,density,kg/m3,2820", "7050,density,kg/m3,-1")
                        .replace("7449,expansion,1e-6/K,-196:17|20:23.0", "7449,expansion,1e-6/K,20:17|20:23.0")
                        .replace("2219,hardening,", "2219,softening,")));

        assertTrue(e.faults().stream().anyMatch(f -> f.startsWith("data/quench-materials.csv:3: values is -1")), e.getMessage());
        assertTrue(e.faults().stream().anyMatch(f -> f.contains("temperatures rising")));
        assertTrue(e.faults().stream().anyMatch(f -> f.contains("unknown property 'softening'")));
        assertTrue(e.faults().stream().anyMatch(f -> f.contains("2219 has no row for hardening")));
    }

    @Test
    void aMissingRowOfThePublishedSharesIsAFault() {
        RulebookTableException e = assertThrows(RulebookTableException.class,
                () -> edited("data/stress-relief.csv", text -> text.replace("water60,", "water61,")));

        assertTrue(e.faults().contains("data/stress-relief.csv: has no row for water60"), e.getMessage());
    }
}
