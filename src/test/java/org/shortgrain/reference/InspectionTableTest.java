package org.shortgrain.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shortgrain.reference.InspectionTable.Place;

class InspectionTableTest {

    private static final double MM = 1e-3;
    private static final InspectionTable TABLE = ReferenceTables.builtIn().inspection();

    /** JSSG-2006 Table XXX via the Damage Tolerant Design Handbook Table 1.3.2: 0.05 in at holes, 0.125 x 0.25 in elsewhere. */
    @ParameterizedTest
    @CsvSource({"SURFACE, 20, 3.175, 3.175, false", "SURFACE, 3, 3, 3.175, true", "EDGE, 20, 1.27, 1.27, false",
        "EDGE, 1, 1, 1.27, true"})
    void theFlawAssumedFromManufacture(Place place, double section, double depth, double half, boolean through) {
        List<InspectionTable.Crack> flaws = TABLE.found(InspectionTable.ASSUMED, place, section * MM);
        assertEquals(1, flaws.size());
        assertEquals(depth, flaws.get(0).depth() / MM, 1e-9);
        assertEquals(half, flaws.get(0).halfLength() / MM, 1e-9);
        assertEquals(through, flaws.get(0).through());
    }

    /** NASA-STD-5009 Table 1 (memory): 0.020 x 0.100 in or 0.050 x 0.050 in by eddy current on a face over 0.050 in. */
    @Test
    void twoShapesAreFoundByEddyCurrent() {
        List<InspectionTable.Crack> found = TABLE.found("eddy_current", Place.SURFACE, 10 * MM);
        assertEquals(List.of(0.508, 1.27), found.stream().map(one -> Math.round(one.depth() * 1e6) / 1e3).toList());
    }

    @Test
    void noCrackIsShorterThanDeepOrDeeperThanTheSection() {
        for (String method : List.of("eddy_current", "penetrant", "magnetic_particle", "ultrasonic", "radiography", "visual",
                InspectionTable.ASSUMED)) {
            for (Place place : Place.values()) {
                for (double section = 0.3; section < 100; section *= 1.3) {
                    for (InspectionTable.Crack crack : TABLE.found(method, place, section * MM)) {
                        assertTrue(crack.halfLength() >= crack.depth() && crack.depth() <= section * MM, method + crack);
                    }
                }
            }
        }
    }

    /** EN-SB-12-003 page 1 (read): half of the time. Damage Tolerant Design Handbook Table 1.3.6 (read): one year. */
    @Test
    void theIntervalIsHalfOfTheTimeAndAYearAtMost() {
        assertEquals(2, TABLE.practice("factor").value(), 0);
        assertEquals(365.25 * 86_400, TABLE.practice("longest").value(), 1);
        assertThrows(IllegalArgumentException.class, () -> TABLE.practice("no such key"));
    }
}
