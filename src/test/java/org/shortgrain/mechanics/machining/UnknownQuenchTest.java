package org.shortgrain.mechanics.machining;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.quench.Quench;
import org.shortgrain.mechanics.quench.QuenchResolution;
import org.shortgrain.mechanics.quench.QuenchSolver;
import org.shortgrain.mechanics.quench.QuenchedSection;
import org.shortgrain.mechanics.quench.QuenchedSection.Shape;
import org.shortgrain.mechanics.quench.Quenches;
import org.shortgrain.mechanics.quench.StressRelief;
import org.shortgrain.reference.QuenchTables;
import org.shortgrain.terms.GrainDirection;

/** Where the quench is not known, the bound from the W-temper yield (150 MPa for 7050) stands. */
class UnknownQuenchTest {

    private static final double MPA = 1e6;
    private static final double EXACT = 1;
    private final QuenchTables tables = Quenches.TABLES;
    private final ResidualStress residual = new ResidualStress(new QuenchSolver(QuenchResolution.COARSE, 10),
            tables.baths(), tables.published());

    private Computed exposed(QuenchedSection section, StressRelief relief, FinishedSurface surface,
            GrainDirection direction, OptionalDouble yield) {
        return residual.at(new ResidualStressCase(tables.material("7075").orElseThrow(), section,
                new Quench.Unknown(), relief, surface, direction, yield)).governing();
    }

    private Computed exposed(QuenchedSection section, FinishedSurface surface, GrainDirection direction) {
        return exposed(section, new StressRelief.None(), surface, direction, OptionalDouble.empty());
    }

    private static FinishedSurface unknownPlace(Optional<GrainDirection> hole) {
        return new FinishedSurface(OptionalDouble.empty(), OptionalDouble.empty(), Restraint.UNKNOWN, false, hole,
                OptionalDouble.empty());
    }

    private static QuenchedSection unknownSize(Shape shape) {
        return new QuenchedSection(shape, OptionalDouble.empty(), OptionalDouble.empty());
    }

    @Test
    void aPlateOfUnknownSizeShowsItsWYieldInPlaneAndAQuarterMoreAtMost() {
        Computed c = exposed(unknownSize(Shape.PLATE), unknownPlace(Optional.empty()), GrainDirection.LT);

        assertEquals(150 * MPA, c.value().value(), EXACT);
        assertEquals(187.5 * MPA, c.value().high(), EXACT);
        assertEquals(0, c.value().low(), EXACT);
    }

    @Test
    void aRoundBarShowsOnePointSixOfTheYieldAlongAnd06Across() {
        QuenchedSection bar = unknownSize(Shape.ROUND_BAR);

        assertEquals(240 * MPA, exposed(bar, unknownPlace(Optional.empty()), GrainDirection.L).value().value(), EXACT);
        assertEquals(90 * MPA, exposed(bar, unknownPlace(Optional.empty()), GrainDirection.ST).value().value(), EXACT);
    }

    @Test
    void aHoleDoublesTheCoreStressOfAPlateAndOfABarBoredAlongItsAxis() {
        assertEquals(300 * MPA, exposed(unknownSize(Shape.PLATE), unknownPlace(Optional.of(GrainDirection.ST)),
                GrainDirection.LT).value().value(), EXACT);
        assertEquals(180 * MPA, exposed(unknownSize(Shape.ROUND_BAR), unknownPlace(Optional.of(GrainDirection.L)),
                GrainDirection.ST).value().value(), EXACT);
    }

    @Test
    void shortTransverseStressOfAPlateLivesNearItsEdgesAndAnUnknownPlaceIsNearOne() {
        QuenchedSection plate = QuenchedSection.of(Shape.PLATE, 0.1);
        FinishedSurface farFromEdges = new FinishedSurface(OptionalDouble.of(0.03), OptionalDouble.of(0.02),
                Restraint.UNKNOWN, false, Optional.empty(), OptionalDouble.of(0.2));

        double inTheBand = exposed(plate, unknownPlace(Optional.empty()), GrainDirection.ST).value().value();
        assertEquals(67.5 * MPA, inTheBand, 1 * MPA, "0.45 of the yield, or the cold-water model, which is 0.6 MPa higher");
        assertEquals(0, exposed(plate, farFromEdges, GrainDirection.ST).value().value(), EXACT);
    }

    @Test
    void aShapeThatIsNotKnownCountsAsTheWorseOfPlateAndBar() {
        QuenchedSection unknown = unknownSize(Shape.UNKNOWN);

        assertEquals(240 * MPA, exposed(unknown, unknownPlace(Optional.empty()), GrainDirection.L).value().value(),
                EXACT);
        assertEquals(150 * MPA, exposed(unknown, unknownPlace(Optional.empty()), GrainDirection.LT).value().value(),
                EXACT);
        assertEquals(90 * MPA, exposed(unknown, unknownPlace(Optional.empty()), GrainDirection.ST).value().value(),
                EXACT);
    }

    @Test
    void aSurfaceThatIsStillTheQuenchedOneShowsNoTensionAndIsGivenNoCompression() {
        Computed c = exposed(QuenchedSection.of(Shape.PLATE, 0.05), FinishedSurface.face(0, 0.05, Restraint.UNKNOWN),
                GrainDirection.LT);

        assertEquals(0, c.value().high(), EXACT);
        assertEquals(0, c.value().value(), EXACT);
    }

    /** Prime and Hill 2002 (authors' summary): stretching leaves about a tenth; 0.13 and 25 MPa are planned for. */
    @Test
    void aStretchedPlateKeepsAtLeast25Mpa() {
        Computed c = exposed(unknownSize(Shape.PLATE), new StressRelief.Stretched(OptionalDouble.empty()),
                unknownPlace(Optional.empty()), GrainDirection.L, OptionalDouble.empty());

        assertEquals(25 * MPA, c.value().value(), EXACT);
    }

    @Test
    void anElasticSumIsCappedAtTheYieldStrengthOfTheFinalTemper() {
        Computed c = exposed(unknownSize(Shape.PLATE), new StressRelief.None(),
                unknownPlace(Optional.of(GrainDirection.LT)), GrainDirection.L, OptionalDouble.of(386 * MPA));

        assertEquals(386 * MPA, c.value().value(), EXACT, "3 x 150 MPa without the cap");
        assertTrue(c.notes().stream().anyMatch(note -> note.contains("capped")));
    }

    @Test
    void aFinishedSectionThatDoesNotFitIntoTheBlankIsReported() {
        Computed c = exposed(QuenchedSection.of(Shape.PLATE, 0.05), FinishedSurface.face(0.03, 0.04, Restraint.HELD),
                GrainDirection.LT);

        assertFalse(c.validity().inside());
        assertTrue(c.value().value() >= 150 * MPA, "the worst place of the section stands in");
    }
}
