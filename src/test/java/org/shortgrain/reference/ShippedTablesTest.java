package org.shortgrain.reference;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shortgrain.terms.GrainDirection;

class ShippedTablesTest {
    private static ReferenceTables tables;

    @BeforeAll
    static void load() {
        tables = ReferenceTables.builtIn();
    }

    /** Those that are read on demand are checked here and nowhere else before they ship. */
    @Test
    void noShippedTableHasAFault() {
        assertDoesNotThrow(ReferenceTables.builtIn()::readAll);
    }

    @Test
    void theDocumentsThatTheBuildCompiledAreThoseOfTheFile() {
        assertEquals(List.copyOf(ReferenceTables.from(Path.of("rules")).sources().all()),
                List.copyOf(tables.sources().all()));
    }

    @Test
    void everyZoneAndFluidIsFoundByItsWordOrAlias() {
        assertEquals("W4", tables.zones().find("wheel well").orElseThrow().wetness().code());
        assertEquals("W5", tables.zones().worst().wetness().code());
        assertEquals("nitrogen_tetroxide", tables.fluids().find("MON-3").orElseThrow().word());
    }

    @Test
    void methanolAttacksTitaniumAndIsopropanolDoesNot() {
        assertFalse(tables.fluids().attacks("methanol", "titanium").isEmpty());
        assertTrue(tables.fluids().attacks("isopropanol", "titanium").isEmpty());
    }

    @Test
    void aCardIsReadInBritishAndAmericanSpelling() {
        assertEquals(tables.operations().find("anodise").orElseThrow(),
                tables.operations().find("Anodize").orElseThrow());
        assertTrue(tables.operations().find("straighten").orElseThrow().is("leaves_tension"));
    }

    /** Letters of MIL-HDBK-5J Table 3.1.2.3.1(a), seen in an open transcription. */
    @ParameterizedTest
    @CsvSource({"7075, T6, die_forging, ST, 1", "7075, T651, plate, ST, 1", "7075, T73, die_forging, ST, 4",
        "7075, T7351, plate, ST, 4", "7050, T7451, plate, ST, 3", "7050, T74, die_forging, ST, 3",
        "2024, T351, plate, ST, 1", "2024, T851, plate, ST, 3", "2014, T6, die_forging, ST, 1",
        "6061, T6, die_forging, ST, 4"})
    void aluminiumIsRatedByItsLetter(String alloy, String temper, String form, GrainDirection direction, int level) {
        LevelAnswer answer = tables.materials().lookUp(MaterialQuery.ofAlloy(alloy).temper(temper).form(form)
                .thickness(0.060)).in(direction).level();
        assertEquals(level, answer.level().number());
        assertEquals(level >= 3, answer.cleared());
        assertFalse(answer.restsOnMemory());
    }

    @Test
    void titaniumRatedFromMemoryAloneIsNotCleared() {
        MaterialAnswer answer = tables.materials().lookUp(MaterialQuery.ofAlloy("Ti-6Al-4V").temper("annealed")
                .form("plate"));
        assertEquals(SccLevel.LEVEL_4, answer.in(GrainDirection.ST).level().level());
        assertEquals(Susceptibility.UNKNOWN, answer.in(GrainDirection.ST).level().susceptibility());
        assertTrue(answer.needsConfirmation());
    }
}
