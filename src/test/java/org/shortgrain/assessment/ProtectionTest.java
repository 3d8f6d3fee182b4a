package org.shortgrain.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.shortgrain.part.reader.PartReader;
import org.shortgrain.part.reader.Reading;
import org.shortgrain.reference.ProtectionCredits;
import org.shortgrain.reference.ProtectionCredits.Measure;
import org.shortgrain.reference.ReferenceTables;
import org.shortgrain.reference.RulebookTableException;
import org.shortgrain.review.FactorState;
import org.shortgrain.review.FeatureReview;
import org.shortgrain.review.Review;

/** Paint, sealant, wet installation and peening delay or reduce; they are named, they are not counted, and clear nothing. */
class ProtectionTest {

    private static final Knowledge KNOWLEDGE = Knowledge.shipped();
    private static final Reviewer REVIEWER = new Reviewer(KNOWLEDGE, Wording.shipped(), "test");
    private static final Path RULES = Path.of("rules");
    private static final String CREDITS = "data/protection-credits.csv";
    private static final String BARE = "surface: {pretreatment: none, primer: none, topcoat: none, plating: none, cpc: none,"
            + " areas_bare: none, peened: none}\nsealant: none\n";
    private static final String FULL = "surface: {pretreatment: \"MIL-PRF-8625 type IC\", primer: \"MIL-PRF-23377\","
            + " topcoat: \"MIL-PRF-85285\", plating: {kind: cadmium}, cpc: \"MIL-PRF-81309 type II\", areas_bare: none,"
            + " peened: [LUG]}\nsealant: {faying: \"AMS3276 class B\", fillet: none, fasteners_wet: true}\n";

    private static Review review(String temper, String zone, String protection) {
        String text = """
                schema: 1
                review: {purpose: design, threshold_factor: 0.5}
                part: {number: "P-1", revision: "A", name: "Lug (invented)", criticality: secondary}
                drawing: {number: "P-1", revision: "A", changes: none}
                planning: {number: "C-1", revision: "1"}
                material: {alloy: "7075", temper: "%s", clad: none}
                form: {product: plate, heat_treat_thickness: 38 mm, finished_thickness: 20 mm}
                grain: {basis: drawing_arrow, L: X, LT: Y, ST: Z}
                route: [{op: "10", do: finish_machine, removes: 4 mm}]
                features:
                  - id: LUG
                    what: lug_bore
                    stress_direction: ST
                    as_quenched_depth: 4 mm
                    loads: [{source: one_g_ground, stress: 60 MPa, share_of_life: 1}]
                    fit: {kind: clearance}
                    fasteners: [{type: bolt, diameter: 10 mm, preload: 1 kN, material: "A286"}]
                    clamp_up: none
                    drainage: none
                environment: {zone: %s, salt: coastal, temperature: {min: 10 degC, max: 30 degC}, humidity: 35 %%, fluids: none}
                neighbours: none
                """.formatted(temper, zone) + protection;
        Reading reading = new PartReader(KNOWLEDGE.vocabularies()).read("part.yaml", text.getBytes(StandardCharsets.UTF_8));
        Reading.Read read = (Reading.Read) reading;
        return REVIEWER.review(read.description(), new Review.InputId("part.yaml", ""), read.paths(), "2026-01-15");
    }

    private static FeatureReview lug(Review review) {
        return review.features().get(0);
    }

    @ParameterizedTest(name = "{0} in zone {1}")
    @CsvSource({"T651, wheel_well", "T651, hangar_dry", "T7351, wheel_well", "T7351, cabin_dry"})
    void noProtectionChangesTheStateOfAFactorOrTheTension(String temper, String zone) {
        FeatureReview bare = lug(review(temper, zone, BARE));
        FeatureReview full = lug(review(temper, zone, FULL));
        assertEquals(bare.material().state(), full.material().state());
        assertEquals(bare.stress().state(), full.stress().state());
        assertEquals(bare.environment().state(), full.environment().state());
        assertEquals(bare.directions(), full.directions());
    }

    @Test
    void whatProtectsAPlaceIsNamedBesideTheFactorsWithTheReasonWhyItIsNotCounted() {
        Review review = review("T651", "wheel_well", FULL);
        String environment = lug(review).environment().reasons().get(lug(review).environment().reasons().size() - 1);
        assertEquals("protected by topcoat, primer, pretreatment, plating, inhibiting compound, sealant between the faces,"
                + " wet installation, which delays attack and is not counted", environment);
        String stress = lug(review).stress().reasons().get(lug(review).stress().reasons().size() - 1);
        assertEquals("protected by shot peening, which reduces tension at the surface and is not counted", stress);
        assertTrue(review.assumptions().stream().anyMatch(one -> one.text().startsWith("LUG: shot peening is not counted")
                && one.sources().stream().anyMatch(source -> source.id().equals("mil-std-1568c"))),
                () -> "" + review.assumptions());
    }

    @Test
    void ofABarePlaceAndOfAFactorThatIsAbsentNothingIsSaid() {
        assertFalse(lug(review("T651", "wheel_well", BARE)).environment().reasons().toString().contains("protected by"));
        FeatureReview dry = lug(review("T651", "hangar_dry", FULL));
        assertEquals(FactorState.ABSENT, dry.environment().state());
        assertFalse(dry.environment().reasons().toString().contains("protected by"));
    }

    @ParameterizedTest
    @EnumSource(Measure.class)
    void everyMeasureHasItsCreditAndNoneClears(Measure measure) {
        ProtectionCredits.Credit credit = KNOWLEDGE.tables().protectionCredits().of(measure);
        assertTrue(List.of("environment", "stress").contains(credit.factor()));
        assertEquals(credit.factor().equals("stress") ? ProtectionCredits.Effect.REDUCE : ProtectionCredits.Effect.DELAY,
                credit.effect());
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource({"'primer,environment,delay', 'primer,environment,clear', effect",
        "'primer,environment,delay', 'primer,material,delay', factor",
        "'primer,environment,delay', 'varnish,environment,delay', measure"})
    void aTableThatCreditsMoreIsRefused(String was, String becomes, String column) throws IOException {
        String text = Files.readString(RULES.resolve(CREDITS));
        assertTrue(text.contains("\n" + was));
        Function<String, InputStream> door = name -> open(name, text.replace("\n" + was, "\n" + becomes));
        RulebookTableException refused = org.junit.jupiter.api.Assertions.assertThrows(RulebookTableException.class,
                () -> ReferenceTables.load(door));
        assertTrue(refused.getMessage().contains(CREDITS) && refused.getMessage().contains(column), refused.getMessage());
    }

    private static InputStream open(String name, String credits) {
        try {
            return name.equals(CREDITS) ? new ByteArrayInputStream(credits.getBytes(StandardCharsets.UTF_8))
                    : Files.exists(RULES.resolve(name)) ? Files.newInputStream(RULES.resolve(name)) : null;
        } catch (IOException unreadable) {
            throw new IllegalStateException(unreadable);
        }
    }
}
