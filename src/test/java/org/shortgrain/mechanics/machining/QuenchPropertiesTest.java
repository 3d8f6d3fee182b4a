package org.shortgrain.mechanics.machining;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shortgrain.mechanics.quench.Quenches.MM;
import static org.shortgrain.mechanics.quench.Quenches.MPA;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.machining.SectionRelease.Strip;
import org.shortgrain.mechanics.quench.FilmCoefficient;
import org.shortgrain.mechanics.quench.Quench;
import org.shortgrain.mechanics.quench.QuenchResolution;
import org.shortgrain.mechanics.quench.QuenchSolver;
import org.shortgrain.mechanics.quench.QuenchedBar;
import org.shortgrain.mechanics.quench.QuenchedSection;
import org.shortgrain.mechanics.quench.QuenchedSection.Shape;
import org.shortgrain.mechanics.quench.Quenches;
import org.shortgrain.mechanics.quench.SectionQuench;
import org.shortgrain.mechanics.quench.StressProfile;
import org.shortgrain.mechanics.quench.StressRelief;
import org.shortgrain.terms.GrainDirection;

/** What must hold for every section, over drawn dimensions, baths and metals. */
class QuenchPropertiesTest {

    /** A mean stress of 1e-9 MPa over the section. */
    private static final double BALANCED = 1e-3;

    /**
     * A mean stress of 1e-7 MPa over a slice. The moments are summed from the face: rounding 300 MPa to the 16th digit,
     * for a slice of 0.4 mm that lies 76 mm from it, and 6/h^2, makes 6 * 3e8 * 2e-16 * (76 / 0.4)^2 = 0.014 Pa.
     */
    private static final double BALANCED_SLICE = 0.1;
    private static final QuenchSolver SOLVER = new QuenchSolver(QuenchResolution.COARSE, 500);
    private static final ResidualStress RESIDUAL = new ResidualStress(SOLVER, Quenches.TABLES.baths(),
            Quenches.TABLES.published());

    @Provide
    Arbitrary<SectionQuench> quenches() {
        return Combinators.combine(Arbitraries.of("7050", "7449", "2219", "6061"), baths(),
                Arbitraries.doubles().between(10, 250).ofScale(1))
                .as((alloy, film, millimetres) -> new SectionQuench(Quenches.metal(alloy), film, millimetres * MM,
                        Quenches.metal(alloy).solutionTemperature()));
    }

    private static Arbitrary<FilmCoefficient> baths() {
        return Arbitraries.of("water20", "water35", "water60", "water75", "water80", "water100", "pag10", "pag15",
                "pag20", "pag30").map(Quenches::bath);
    }

    @Provide
    Arbitrary<StressProfile> profiles() {
        return Arbitraries.doubles().between(-300, 300).ofScale(2).list().ofMinSize(2).ofMaxSize(40)
                .map(stress -> StressProfile.through(
                        IntStream.range(0, stress.size()).mapToDouble(i -> i * 80 * MM / (stress.size() - 1))
                                .toArray(),
                        stress.stream().mapToDouble(s -> s * MPA).toArray()));
    }

    @Property(tries = 150)
    void aQuenchedPlateCarriesNoForce(@ForAll("quenches") SectionQuench quench) {
        StressProfile profile = SOLVER.plate(quench).profile();

        assertEquals(0, profile.force() / profile.thickness(), BALANCED);
        assertEquals(0, profile.moment(profile.thickness() / 2) / Math.pow(profile.thickness(), 2), BALANCED);
    }

    /** The axial stress is known in the middle of each ring, and read on straight lines between. */
    @Property(tries = 60)
    void aQuenchedBarCarriesNearlyNoForceAndItsSkinNoPressure(@ForAll("quenches") SectionQuench quench) {
        QuenchedBar bar = SOLVER.bar(quench);
        double area = 0.5 * bar.radius() * bar.radius();

        assertEquals(0, bar.axial().moment(0) / area, 0.5 * MPA);
        assertEquals(0, bar.radial().at(bar.radius()), 2 * MPA);
    }

    @Property(tries = 500)
    void whatIsCutFreeCarriesNoForceAndNoMoment(@ForAll("profiles") StressProfile blank,
            @ForAll @Scale(4) @DoubleRange(min = 0, max = 0.9) double start,
            @ForAll @Scale(4) @DoubleRange(min = 0.05, max = 1) double share) {
        double from = start * blank.thickness();
        double to = Math.min(blank.end(), from + share * (blank.thickness() - from));
        double h = to - from;

        StressProfile free = SectionRelease.ofPlate(blank, from, to).after(Release.FREE_TO_BOW);

        assertEquals(0, free.force() / h, BALANCED_SLICE);
        assertEquals(0, 6 * free.moment(0.5 * (from + to)) / (h * h), BALANCED_SLICE);
    }

    @Property(tries = 300)
    void aWebWithRibsThatIsCutFreeCarriesNoForceAndNoMoment(@ForAll("profiles") StressProfile blank,
            @ForAll @Scale(3) @DoubleRange(min = 1, max = 100) double web,
            @ForAll @Scale(3) @DoubleRange(min = 1, max = 100) double rib) {
        List<Strip> strips = List.of(new Strip(5 * MM, 12 * MM, web * MM), new Strip(12 * MM, 60 * MM, rib * MM),
                new Strip(60 * MM, 66 * MM, web * MM));
        SectionRelease release = SectionRelease.ofSection(blank, strips);
        double force = 0;
        double moment = 0;
        for (Strip strip : strips) {
            StressProfile left = blank.between(strip.from(), strip.to()).minusLine(release.meanStress(),
                    release.gradient(), release.centroid());
            force += strip.width() * left.force();
            moment += strip.width() * left.moment(release.centroid());
        }

        assertEquals(0, force / release.area(), BALANCED);
        assertEquals(0, moment * 60 * MM / release.secondMoment(), BALANCED, "bending stress at 60 mm");
    }

    private static Band exposed(QuenchedSection section, Quench quench, FinishedSurface surface,
            GrainDirection direction) {
        return RESIDUAL.at(new ResidualStressCase(Quenches.metal("7050"), section, quench, new StressRelief.None(),
                surface, direction, OptionalDouble.empty())).governing().value();
    }

    private static FinishedSurface pocket(double depth, double floor) {
        return new FinishedSurface(OptionalDouble.of(depth), OptionalDouble.of(floor), Restraint.HELD, true,
                Optional.empty(), OptionalDouble.empty());
    }

    /**
     * Under a pocket in a stiff part the blank's stress stays, and its tension rises from the zero crossing to the
     * middle. In the compressed skin the stress may dip before it rises, which exposes no tension.
     */
    @Property(tries = 80)
    void aDeeperPocketNeverLowersTheUpperBoundDownToTheMiddle(@ForAll("quenches") SectionQuench quench,
            @ForAll @Scale(3) @DoubleRange(min = 0, max = 0.5) double one,
            @ForAll @Scale(3) @DoubleRange(min = 0, max = 0.5) double other) {
        double t = quench.thickness();
        double floor = 0.05 * t;
        QuenchedSection section = QuenchedSection.of(Shape.PLATE, t);
        Quench bath = new Quench.Known(quench.film(), 475, true);

        Band shallow = exposed(section, bath, pocket(Math.min(one, other) * t, floor), GrainDirection.LT);
        Band deep = exposed(section, bath, pocket(Math.max(one, other) * t, floor), GrainDirection.LT);

        assertTrue(Math.max(0, deep.high()) >= Math.max(0, shallow.high()) - 1 * MPA, "coarse grid: 1 MPa");
    }

    /**
     * In the middle three tenths every quench leaves tension, and a colder one more of it. Nearer to the skin the physics
     * says otherwise: there the colder quench leaves more compression, and a plate of some 20 mm has its zero crossing as
     * deep as a third of its thickness, which moves inwards as the bath gets colder.
     */
    @Property(tries = 80)
    void aColderBathNeverLowersTheUpperBoundInTheCore(
            @ForAll @Scale(1) @DoubleRange(min = 20, max = 100) double one,
            @ForAll @Scale(1) @DoubleRange(min = 20, max = 100) double other,
            @ForAll @Scale(1) @DoubleRange(min = 10, max = 250) double millimetres,
            @ForAll @Scale(3) @DoubleRange(min = 0.35, max = 0.5) double depth) {
        double t = millimetres * MM;
        QuenchedSection section = QuenchedSection.of(Shape.PLATE, t);

        Band colder = exposed(section, water(Math.min(one, other)), pocket(depth * t, 0.1 * t), GrainDirection.LT);
        Band hotter = exposed(section, water(Math.max(one, other)), pocket(depth * t, 0.1 * t), GrainDirection.LT);

        assertTrue(colder.high() >= hotter.high() - 1 * MPA, "coarse grid: 1 MPa");
    }

    private static Quench water(double celsius) {
        return new Quench.Known(Quenches.TABLES.baths().water(celsius).orElseThrow(), 475, true);
    }

    @Property(tries = 60)
    void notKnowingTheQuenchNeverLowersTheUpperBound(@ForAll("quenches") SectionQuench quench,
            @ForAll @Scale(3) @DoubleRange(min = 0, max = 0.9) double depth, @ForAll Shape shape,
            @ForAll GrainDirection direction, @ForAll Restraint restraint) {
        double t = quench.thickness();
        QuenchedSection section = QuenchedSection.of(shape, t);
        FinishedSurface surface = FinishedSurface.face(depth * t, 0.1 * t, restraint);

        double known = exposed(section, new Quench.Known(quench.film(), 475, true), surface, direction).high();
        double unknown = exposed(section, new Quench.Unknown(), surface, direction).high();

        assertTrue(unknown >= known - 1 * MPA, unknown + " < " + known);
    }

    @Property(tries = 60)
    void theValueLiesInItsBandAndEveryWayOfReleaseIsCounted(@ForAll("quenches") SectionQuench quench,
            @ForAll @Scale(3) @DoubleRange(min = 0, max = 0.9) double depth, @ForAll GrainDirection direction) {
        double t = quench.thickness();
        ResidualStressCase free = new ResidualStressCase(quench.material(), QuenchedSection.of(Shape.UNKNOWN, t),
                new Quench.Known(quench.film(), 475, true), new StressRelief.None(),
                FinishedSurface.face(depth * t, 0.1 * t, Restraint.UNKNOWN), direction, OptionalDouble.empty());

        double worst = RESIDUAL.ways(free).stream().mapToDouble(way -> way.value().value()).max().orElseThrow();
        assertEquals(worst, RESIDUAL.at(free).governing().value().value(), 1);
    }

    /** Cutting deeper into a wall that is free can lower its stress: less and less stressed metal is left to balance. */
    @Example
    void aThinSliceOfTheSkinThatIsFreeHardlyCarriesStressAtAll() {
        QuenchedSection plate = QuenchedSection.of(Shape.PLATE, 75 * MM);
        List<Double> highs = new ArrayList<>();
        for (double left : new double[] {25, 12.5}) {
            highs.add(exposed(plate, water(20), FinishedSurface.face((75 - left) * MM, left * MM, Restraint.FREE),
                    GrainDirection.LT).value());
        }
        assertEquals(58.8 * MPA, highs.get(0), 1 * MPA);
        assertTrue(highs.get(1) < 5 * MPA);
    }
}
