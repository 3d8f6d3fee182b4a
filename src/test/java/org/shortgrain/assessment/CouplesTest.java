package org.shortgrain.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.reader.PartReader;
import org.shortgrain.part.reader.Problem;
import org.shortgrain.part.reader.Reading;
import org.shortgrain.reference.GalvanicTable;
import org.shortgrain.reference.ReferenceTables;
import org.shortgrain.rulebook.facts.Couple;
import org.shortgrain.rulebook.facts.Couple.Call;
import org.shortgrain.rulebook.facts.Metal;
import org.shortgrain.rulebook.facts.Part;
import org.shortgrain.rulebook.facts.Route;
import org.shortgrain.rulebook.facts.Zone;

/**
 * Couples against values worked out by hand from the anodic index. Index: public anodic-index pages and the reprint of the
 * MIL-DTL-14072 table (secondary; the values from steel upwards from memory); the arithmetic is exact in hundredths of a
 * volt.
 */
class CouplesTest {

    private static ReferenceTables tables;

    @BeforeAll
    static void load() {
        tables = ReferenceTables.builtIn();
    }

    /** The couple of a bare part with one bare or plated neighbour that touches it. */
    private static Couple couple(String alloy, String plating, String neighbour, String coating, int wetness) {
        return only(alloy, plating, wetness, "neighbours: [{what: it, material: \"" + neighbour + "\", coating: "
                + coating + ", insulated: false}]");
    }

    private static Couple only(String alloy, String plating, int wetness, String lines) {
        List<Couple> couples = couples(alloy, plating, wetness, lines);
        assertEquals(1, couples.size());
        return couples.get(0);
    }

    private static List<Couple> couples(String alloy, String plating, int wetness, String lines) {
        String surface = "surface: {pretreatment: none, primer: none, topcoat: none, plating: "
                + (plating.equals("none") ? "none" : "{kind: \"" + plating + "\"}") + "}\n";
        PartDescription description = read("schema: 1\npart: {number: P-1}\n" + surface + lines + "\n");
        String family = tables.galvanicMembers().family(alloy).orElseThrow();
        Metal metal = new Metal(alloy, "", family, alloy, true, Optional.empty(), Map.of(), Map.of(), Map.of(),
                OptionalDouble.empty(), OptionalDouble.empty());
        Part part = new Part(description, metal, new Route(List.of(), false, false),
                new Zone(List.of("zone"), wetness));
        return new Couples(tables.galvanic(), tables.galvanicMembers()).of(part, List.of());
    }

    private static PartDescription read(String yaml) {
        Knowledge words = new Knowledge(null, tables);
        Reading reading = new PartReader(words.vocabularies()).read("part.yaml", yaml.getBytes(StandardCharsets.UTF_8));
        assertTrue(reading instanceof Reading.Read, () -> Problem.text(((Reading.Refused) reading).problems()));
        return ((Reading.Read) reading).description();
    }

    /** Wetness: 3 is wetted regularly (0.15 V), 1 indoors and not controlled (0.25 V), 0 controlled (0.50 V). */
    @ParameterizedTest(name = "{0} {1} with {2} {3} in W{4}: {5} cV")
    @CsvSource(textBlock = """
            7075, none, Ti-6Al-4V, none, 3, 60, part, PROTECT, PROTECT
            7075, none, A286, none, 3, 55, part, PROTECT, PROTECT
            7075, none, 304, none, 3, 55, part, PROTECT, PROTECT
            7075, none, 316, none, 3, 55, part, PROTECT, PROTECT
            7075, none, 17-4PH H1025, none, 3, 40, part, PROTECT, PROTECT
            7075, none, 17-4PH, none, 0, 40, part, USABLE, USABLE
            7075, none, 4340, cadmium, 3, 5, other, USABLE, USABLE
            2024, none, 4340, cadmium, 3, 20, other, PROTECT, USABLE
            2024, none, 4340, cadmium, 1, 20, other, USABLE, USABLE
            7075, none, 2024-T351, none, 3, 15, part, USABLE, USABLE
            7075, none, 4340, none, 3, 5, part, USABLE, PROTECT
            7075, none, CFRP, none, 3, 105, part, ISOLATE, ISOLATE
            Ti-6Al-4V, none, CFRP, none, 3, 45, part, PROTECT, USABLE
            A-286, none, CFRP, none, 3, 50, part, PROTECT, PROTECT
            4340, cadmium, CFRP, none, 1, 110, part, ISOLATE, ISOLATE
            4340, none, CFRP, none, 3, 100, part, ISOLATE, ISOLATE
            2024, none, copper bus bar, none, 3, 40, part, PROTECT, PROTECT
            7075, none, copper, silver, 1, 75, part, PROTECT, PROTECT
            7075, none, copper, silver, 0, 75, part, PROTECT, PROTECT
            Ti-6Al-4V, none, A286, none, 3, 5, other, USABLE, USABLE
            Ti-6Al-4V, none, 4340, cadmium, 3, 65, other, PROTECT, PROTECT
            4340, none, 4340, cadmium, 3, 10, other, USABLE, USABLE
            4340, none, 4340, zinc, 3, 40, other, PROTECT, USABLE
            4340, none, 17-4PH, none, 3, 35, part, PROTECT, PROTECT
            AZ31B, none, 4340, none, 3, 90, part, ISOLATE, ISOLATE
            AZ31B, none, 6061, none, 3, 85, part, ISOLATE, ISOLATE
            C17200, gold, copper, silver, 3, 15, other, USABLE, USABLE
            Ti-6Al-4V, none, copper, gold, 0, 30, part, USABLE, USABLE
            17-4PH, none, 12 % chromium steel, none, 3, 10, other, USABLE, USABLE
            7075, none, 4340, tin plate, 1, 25, part, USABLE, USABLE
            2024, none, 4340, chromium plate, 3, 15, part, USABLE, USABLE
            Ti-6Al-4V, none, 17-4PH, none, 1, 20, other, USABLE, USABLE
            """)
    void aPairIsCalledByItsVoltageAndByWhatTheTradeKnowsBeyondIt(String alloy, String plating, String neighbour,
            String coating, int wetness, int difference, String anode, Call byVoltage, Call call) {
        Couple couple = couple(alloy, plating, neighbour, coating, wetness);
        assertEquals(difference, couple.difference().orElseThrow(), couple.say());
        assertEquals(anode.equals("part"), couple.partIsAnode(), couple.say());
        assertEquals(byVoltage, couple.byVoltage(), couple.say());
        assertEquals(call, couple.call(), couple.say());
    }

    /** MIL-STD-186F 4.14 (read): a 5056 washer, wet with primer, is what magnesium bears. */
    @Test
    void magnesiumBears5056PutTogetherWet() {
        assertEquals(Call.PROTECT, only("AZ31B", "none", 3,
                "neighbours: [{what: washer, material: \"5056\", coating: none, insulated: true}]").call());
        assertEquals(Call.ISOLATE, couple("AZ31B", "none", "5056", "none", 3).call());
    }

    /** The index is 0.15 V minus the potential against the calomel electrode. */
    @Test
    void indexAndPotentialOfEveryRowSayTheSame() {
        for (GalvanicTable.Entry row : tables.galvanic().series("anodic_index")) {
            assertEquals(15 - row.potential().orElseThrow(), row.anodicIndex().orElseThrow(), row.group());
        }
    }

    /** Area effect: 1 + cathode over anode; stainless skin with an aluminium rivet, and the other way round. */
    @ParameterizedTest
    @CsvSource({"7075, 316, 40, 40", "316, 7075, 40, 0.025"})
    void theAreaRatioIsThatOfCathodeOverAnode(String part, String neighbour, double stated, double expected) {
        Couple couple = only(part, "none", 3, "neighbours: [{what: it, material: \"" + neighbour
                + "\", coating: none, insulated: false, area_ratio: " + stated + "}]");
        assertEquals(expected, couple.cathodeOverAnode(), 1e-12);
    }

    /** Flowing sea water against calomel, as a web page collects it (secondary): 0.69, 1.04 and 0.18 V. */
    @ParameterizedTest
    @CsvSource({"Aluminium 3003-H, Titanium, 69", "Aluminium 3003-H, Graphite, 104", "Aluminium 3003-H, Carbon steel, 18"})
    void anotherSeriesGivesOtherDifferences(String one, String other, int difference) {
        assertEquals(difference, GalvanicTable.difference(flowing(one), flowing(other)));
    }

    @Test
    void noDifferenceIsTakenAcrossTwoSeries() {
        GalvanicTable.Entry index = tables.galvanic().series("anodic_index").get(0);
        assertThrows(IllegalArgumentException.class, () -> GalvanicTable.difference(index, flowing("Titanium")));
    }

    private static GalvanicTable.Entry flowing(String metal) {
        return tables.galvanic().series("flowing_sea_water_sce").stream().filter(row -> row.metal().equals(metal))
                .findFirst().orElseThrow();
    }

    @Test
    void aNeighbourThatConductsNothingOrStaysDryMakesNoCouple() {
        assertEquals(List.of(), couples("7075", "none", 3, "neighbours: [{what: skin, material: \"GFRP\"}]"));
        assertEquals(List.of(), couples("7075", "none", 3, "neighbours: [{what: it, material: \"316\", wetted: false}]"));
        assertEquals(List.of(), couples("7075", "none", 3, "neighbours: [{what: it, compatible: true}]"));
    }

    @Test
    void ofAMaterialThatLeavesAChoiceThePairFurthestApartCounts() {
        Couple couple = couple("7075", "none", "steel", "none", 3);
        assertEquals(55, couple.difference().orElseThrow());
        assertEquals(Call.PROTECT, couple.call());
    }

    @Test
    void aMetalOutsideTheIndexIsNotKnown() {
        Couple couple = couple("7075", "none", "MP35N", "none", 3);
        assertEquals(Call.NOT_KNOWN, couple.call());
        assertTrue(couple.difference().isEmpty());
    }

    @Test
    void paintIsNoMetalAndDoesNotChangeThePair() {
        assertEquals(55, couple("7075", "none", "316", "\"primer and topcoat\"", 3).difference().orElseThrow());
    }

    @Test
    void whatCracksTitaniumIsLeftToTheRulesOnTitanium() {
        assertFalse(couple("Ti-6Al-4V", "none", "4340", "cadmium", 3).isBeyondLimit());
        assertTrue(couple("7075", "none", "316", "none", 3).isBeyondLimit());
    }

    @Test
    void withoutAZoneTheStrictestLimitHolds() {
        Couple couple = couple("7075", "none", "17-4PH", "none", -1);
        assertEquals(15, couple.limit());
        assertEquals(Call.PROTECT, couple.call());
    }
}
