package org.shortgrain.mechanics.sustained;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shortgrain.mechanics.sustained.Points.mpa;
import static org.shortgrain.mechanics.sustained.Points.point;
import static org.shortgrain.mechanics.sustained.Points.shortTransverse;

import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Direction;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.StressTensor;
import org.shortgrain.mechanics.uncertainty.Distribution.Shape;
import org.shortgrain.mechanics.uncertainty.MonteCarlo;
import org.shortgrain.terms.GrainDirection;

/**
 * Monte Carlo over a utilisation, against closed forms of rectangular sums. Ten thousand draws: 1 to 2 % are allowed.
 */
class LikelihoodTest {

    private static final MonteCarlo DRAWS = new MonteCarlo(10_000, 1);

    private static Likelihood likelihood(SustainedPoint point, Given threshold) {
        return new Utilisation(point, Map.of(GrainDirection.ST, threshold), Given.exact(1, "test"))
                .likelihood(GrainDirection.ST, DRAWS).orElseThrow();
    }

    private static double step(Computed computed, String symbol) {
        return computed.steps().stream().filter(s -> s.symbol().equals(symbol)).findFirst().orElseThrow().value().value();
    }

    /** One rectangular stress from 20 to 120 MPa against 100 MPa: a fifth lies above, percentiles at 22.5 and 117.5. */
    @Test
    void oneRectangularStress() {
        Likelihood likely = likelihood(point(0, shortTransverse("residual", 70, 20, 120)), mpa(100));
        assertEquals(0.2, likely.aboveOne().value().value(), 0.012);
        assertTrue(likely.aboveOne().value().low() < 0.2 && 0.2 < likely.aboveOne().value().high());
        assertEquals(0.225, likely.utilisation().value().low(), 0.006);
        assertEquals(0.70, likely.utilisation().value().value(), 0.015);
        assertEquals(1.175, likely.utilisation().value().high(), 0.006);
    }

    /** Shares go with the squares of the widths: 60^2 to 20^2, nine to one. */
    @Test
    void contributionsAreRankedByTheirShareOfTheSpread() {
        Likelihood likely = likelihood(point(0, shortTransverse("clamp-up", 20, 10, 30),
                shortTransverse("residual", 70, 40, 100), shortTransverse("one g", 15, 15, 15)), mpa(100));
        List<Likelihood.Share> shares = likely.shares();
        assertEquals("residual", shares.get(0).source());
        assertEquals(0.9, shares.get(0).share(), 0.02);
        assertEquals("clamp-up", shares.get(1).source());
        assertEquals(0.1, shares.get(1).share(), 0.02);
        assertEquals(3, shares.size(), "an exact contribution causes no spread and is not ranked");
        assertEquals(1, shares.stream().mapToDouble(Likelihood.Share::share).sum(), 0.03);
    }

    @Test
    void theLawOfPropagationStandsBesideMonteCarloAndAgreesForAnExactThreshold() {
        Computed likely = likelihood(point(0, shortTransverse("residual", 70, 40, 100),
                shortTransverse("clamp-up", 20, 10, 30)), mpa(100)).utilisation();
        double exact = Math.sqrt(60 * 60 + 20 * 20) / Math.sqrt(12) / 100;
        assertEquals(exact, step(likely, "u_c"), 1e-12);
        assertEquals(exact, step(likely, "u"), 0.02 * exact);
    }

    @Test
    void anUncertainThresholdTakesItsShare() {
        Likelihood likely = likelihood(point(0, shortTransverse("residual", 70, 69, 71)), mpa(60, 40, 80));
        assertEquals("threshold", likely.shares().get(0).source());
    }

    @Test
    void compressionIsCutToZeroAtTheEnd() {
        Likelihood likely = likelihood(point(0, shortTransverse("residual", -20, -60, 20)), mpa(10));
        assertEquals(0, likely.utilisation().value().low(), 0);
        assertEquals(0, likely.utilisation().value().value(), 0);
        assertTrue(likely.utilisation().value().high() > 1.5);
        assertEquals(10.0 / 80, likely.aboveOne().value().value(), 0.01);
    }

    @Test
    void neverAboveOneIsStillGivenWithTheErrorOfTheDraws() {
        Band probability = likelihood(point(0, shortTransverse("residual", 10, 5, 15)), mpa(100)).aboveOne().value();
        assertEquals(0, probability.value(), 0);
        assertTrue(probability.high() > 0 && probability.high() < 0.001);
    }

    /** Plane stress, grain known within 20 deg: u = sin^2(tilt), its mean over the cap is 1 - (1 + c + c^2)/3. */
    @Test
    void theLieOfTheGrainIsDrawnOverItsCone() {
        Contribution plane = Contribution.stated("along the surface", StressTensor.alongSurface(Direction.Z, 1), mpa(100),
                Shape.RECTANGULAR);
        double beta = Math.toRadians(20);
        Likelihood likely = likelihood(point(beta, plane), mpa(100));
        double c = Math.cos(beta);
        double sine = Math.sin(beta);
        assertEquals(sine * sine, likely.utilisation().value().high(), 0.03 * sine * sine,
                "the 97.5 percentile lies just inside the rim");
        double median = (1 + c) / 2;
        assertEquals(1 - median * median, likely.utilisation().value().value(), 0.002);
        assertEquals("lie of the grain, and inputs acting together", likely.shares().get(0).source());
    }

    @Test
    void theSameSeedGivesTheSameReport() {
        SustainedPoint point = point(0.2, shortTransverse("residual", 70, 20, 120));
        assertEquals(likelihood(point, mpa(40, 30, 50)), likelihood(point, mpa(40, 30, 50)));
    }

    @Property(tries = 50)
    void theLikelyRangeLiesInsideTheRangeOfTheExtremes(@ForAll @Scale(6) @DoubleRange(min = -100, max = 100) double value,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 80) double down,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 80) double up,
            @ForAll Shape shape, @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.5) double cone) {
        Contribution contribution = Contribution.stated("drawn", new StressTensor(0.4, 0.1, 1, 0.2, 0.1, -0.3),
                mpa(value, value - down, value + up), shape == Shape.NORMAL ? Shape.RECTANGULAR : shape);
        Utilisation utilisation = new Utilisation(point(cone, contribution), Map.of(GrainDirection.ST, mpa(50, 40, 70)),
                Given.exact(0.5, "test"));
        Band extremes = utilisation.of(GrainDirection.ST).orElseThrow().value();
        Band likely = utilisation.likelihood(GrainDirection.ST, DRAWS).orElseThrow().utilisation().value();
        assertTrue(extremes.low() <= likely.low() + 1e-9 && likely.high() <= extremes.high() + 1e-9,
                () -> likely + " not inside " + extremes);
    }
}
