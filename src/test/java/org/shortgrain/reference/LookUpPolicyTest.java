package org.shortgrain.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shortgrain.terms.GrainDirection;

/** The policy that stands in the data dictionary, sentence by sentence. */
class LookUpPolicyTest {
    private static final double MPA = 1e6;

    private static MaterialTable materials;

    @BeforeAll
    static void load() {
        materials = ReferenceTables.builtIn().materials();
    }

    private static MaterialQuery ask(String alloy, String temper, String form) {
        return MaterialQuery.ofAlloy(alloy).temper(temper).form(form).thickness(0.030);
    }

    private static LevelAnswer level(MaterialQuery query, GrainDirection direction) {
        return materials.lookUp(query).in(direction).level();
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({"718, Inconel 718", "13-8Mo, PH13-8Mo", "A286, A-286", "ti 6al 4v, Ti-6Al-4V", "AA7075, 7075",
        "EN AW-7075, 7075", "A97075, 7075", "S17400, 17-4PH", "UNS N07718, Inconel 718", "18Ni maraging, 18Ni maraging",
        "al-mag 35, 535.0", "Clad 7075, Alclad 7075"})
    void anAlloyIsFoundByItsOtherNames(String text, String name) {
        MaterialAnswer answer = materials.lookUp(MaterialQuery.ofAlloy(text));
        assertEquals(Optional.of(name), answer.alloy().map(Alloy::name));
        assertEquals(!text.equals(name), answer.aliasUsed().isPresent());
    }

    @Test
    void aTemperBehindTheAlloyIsRead() {
        MaterialAnswer answer = materials.lookUp(MaterialQuery.ofAlloy("7075-T7351").form("plate"));
        assertEquals("T7351", answer.temper().normal());
        MaterialAnswer two = materials.lookUp(MaterialQuery.ofAlloy("7075-T7351").temper("T651").form("plate"));
        assertEquals("T651", two.temper().normal());
        assertTrue(two.notes().get(0).contains("T7351"));
    }

    @Test
    void aRowForANearRelativeRaisesButDoesNotClear() {
        assertEquals(Susceptibility.SUSCEPTIBLE, level(ask("7075", "T6", "ring_rolled"), GrainDirection.ST)
                .susceptibility());
        LevelAnswer weld = level(ask("6061", "T6", "weldment"), GrainDirection.ST);
        assertEquals(Susceptibility.UNKNOWN, weld.susceptibility());
        assertTrue(weld.hits().stream().allMatch(h -> h.reading() == RatingHit.Reading.MAY_APPLY));
    }

    @Test
    void aMissingFormIsNamedAndNothingIsCleared() {
        LevelAnswer answer = level(MaterialQuery.ofAlloy("7075").temper("T7351").thickness(0.030), GrainDirection.ST);
        assertEquals(Set.of(OpenDatum.PRODUCT_FORM), answer.open());
        assertEquals(Susceptibility.UNKNOWN, answer.susceptibility());
    }

    @Test
    void aMissingTemperIsReadAsTheMostSusceptibleOne() {
        LevelAnswer answer = level(MaterialQuery.ofAlloy("7075").form("plate").thickness(0.030), GrainDirection.ST);
        assertEquals(SccLevel.LEVEL_1, answer.level());
        assertTrue(answer.open().contains(OpenDatum.TEMPER));
    }

    @ParameterizedTest
    @ValueSource(strings = {"T7", "T7x", "T7X51"})
    void anOverAgedTemperWithoutItsDigitIsReadAsTheLeastAgedThatIsRated(String temper) {
        LevelAnswer answer = level(ask("7075", temper, "plate"), GrainDirection.ST);
        assertEquals(SccLevel.LEVEL_2, answer.level());
        assertTrue(answer.open().contains(OpenDatum.TEMPER_DIGITS));
    }

    @Test
    void aTemperWithoutReliefDigitsTakesTheLowestTestStressOfItsGroup() {
        StressAnswer group = materials.lookUp(MaterialQuery.ofAlloy("7075").temper("T73xx").form("die_forging")
                .thickness(0.090)).in(GrainDirection.ST).stress();
        double lowest = group.hits().stream().filter(s -> s.kind() == SccStress.Kind.QUALIFICATION)
                .mapToDouble(s -> s.low().orElseThrow()).min().orElseThrow();
        assertEquals(269, lowest / MPA, 0.5);
        assertTrue(group.open().contains(OpenDatum.TEMPER_DIGITS));
    }

    @Test
    void aMissingThicknessTakesTheWorseOfTheBands() {
        LevelAnswer answer = level(MaterialQuery.ofAlloy("2024").temper("T351").form("plate"), GrainDirection.LT);
        assertEquals(SccLevel.LEVEL_2, answer.level());
        assertTrue(answer.open().contains(OpenDatum.THICKNESS));
    }

    @Test
    void aDirectionOfItsOwnGoesBeforeTheClassOfTheWholeMaterial() {
        LevelAnswer along = level(ask("7075", "T651", "plate"), GrainDirection.L);
        assertEquals(SccLevel.LEVEL_4, along.level());
        assertFalse(along.sourcesDisagree());
        assertTrue(along.hits().stream().anyMatch(h -> h.word().equals("low")
                && h.reading() == RatingHit.Reading.WORST_DIRECTION));
    }

    @Test
    void aSquarishBarHasNoLongTransverseApartFromShortTransverse() {
        MaterialQuery bar = ask("7075", "T7351", "bar_rolled");
        MaterialQuery wide = new MaterialQuery(bar.alloy(), bar.family(), bar.temper(), bar.productForm(),
                bar.thickness(), bar.sectionArea(), OptionalDouble.of(4), bar.minUts(), bar.maxUts());
        assertTrue(materials.lookUp(bar).in(GrainDirection.LT).stress().hits().stream()
                .anyMatch(s -> s.kind() == SccStress.Kind.QUALIFICATION));
        assertTrue(materials.lookUp(wide).in(GrainDirection.LT).stress().hits().stream()
                .noneMatch(s -> s.kind() == SccStress.Kind.QUALIFICATION));
    }

    /** MIL-HDBK-5J letter B, class moderate by MSFC and ECSS: the letter narrows the class. */
    @Test
    void aClassThatSpansTwoLevelsIsNarrowedByALetter() {
        LevelAnswer answer = level(ask("7050", "T7451", "plate"), GrainDirection.ST);
        assertEquals(SccLevel.LEVEL_3, answer.level());
        assertTrue(answer.cleared());
        assertFalse(answer.sourcesDisagree());
    }

    @Test
    void memoryRaises() {
        LevelAnswer answer = level(ask("15-5PH", "H900", "bar_rolled"), GrainDirection.ST);
        assertTrue(answer.restsOnMemory());
        assertEquals(Susceptibility.SUSCEPTIBLE, answer.susceptibility());
    }

    @Test
    void memoryAloneDoesNotClear() {
        LevelAnswer answer = level(ask("15-5PH", "H1025", "bar_rolled"), GrainDirection.ST);
        assertEquals(SccLevel.LEVEL_4, answer.level());
        assertEquals(Susceptibility.UNKNOWN, answer.susceptibility());
    }

    @Test
    void aSeenRowClearsWithMemoryBesideIt() {
        LevelAnswer answer = level(ask("7075", "T7351", "plate"), GrainDirection.ST);
        assertTrue(answer.cleared());
        assertTrue(answer.hits().stream().anyMatch(h -> h.citation().status().needsConfirmation()));
    }

    @Test
    void whatIsNotCoveredNamesItsNeighbours() {
        MaterialAnswer answer = materials.lookUp(ask("2011", "T8", "die_forging"));
        assertEquals(SccLevel.UNKNOWN, answer.in(GrainDirection.ST).level().level());
        assertTrue(answer.neighbours().stream().anyMatch(n -> n.row().contains("2011 T8 bar")));
    }

    @Test
    void anUnknownAlloyOfAFamilyIsReadAsTheWorstOfTheFamily() {
        LevelAnswer answer = level(MaterialQuery.ofFamily("aluminium_7xxx").temper("T73").form("plate"),
                GrainDirection.ST);
        assertTrue(answer.open().contains(OpenDatum.ALLOY));
        assertFalse(answer.cleared());
        assertEquals(SccLevel.LEVEL_1, level(MaterialQuery.ofFamily("aluminium_7xxx").temper("T6").form("plate"),
                GrainDirection.ST).level());
    }

    @Test
    void steelGivenByStrengthAloneReadsTheLevelItReaches() {
        StrengthAnswer answer = materials.lookUp(MaterialQuery.ofAlloy("4340").form("bar_rolled")
                .strength(1250 * MPA, 1380 * MPA)).in(GrainDirection.L).strength();
        assertEquals(163 * 6.894757, answer.fty().orElseThrow() / MPA, 0.06);
    }

    @Test
    void steelWithoutAGreatestStrengthIsReadAsTheStrongestThatItMayBe() {
        MaterialAnswer answer = materials.lookUp(MaterialQuery.ofAlloy("4340").temper("HT-180").form("bar_rolled"));
        LevelAnswer level = answer.in(GrainDirection.ST).level();
        assertEquals(SccLevel.LEVEL_1, level.level());
        assertEquals(Set.of(OpenDatum.STRENGTH), level.open());
    }

    /** MIL-HDBK-5J 3.7.1: resistance of 7010-T7451 plate higher than 7075-T7651, which has letter C. */
    @Test
    void aComparisonInTheHandbooksTextIsReadAsALevel() {
        LevelAnswer answer = level(ask("7010", "T7451", "plate"), GrainDirection.ST);
        assertEquals(SccLevel.LEVEL_3, answer.level());
    }

    /** Corrosion 23(11), 335 (1967): the only figure for a D-rated plate that has none of its own. */
    @Test
    void theWorstLevelWithoutAFigureIsComparedWithWhatItsLikesShowed() {
        StressAnswer stress = materials.lookUp(ask("7475", "T651", "plate")).in(GrainDirection.ST).stress();
        assertEquals(SccStress.Kind.TYPICAL_OF_LEVEL, stress.governing().orElseThrow().kind());
        assertEquals(48, stress.low().orElseThrow() / MPA, 0.5);
    }

    @Test
    void aSizeThatIsNotPositiveIsRefused() {
        assertEquals("thickness must be positive, is -0.01", org.junit.jupiter.api.Assertions.assertThrows(
                IllegalArgumentException.class, () -> MaterialQuery.ofAlloy("7075").thickness(-0.01)).getMessage());
    }
}
