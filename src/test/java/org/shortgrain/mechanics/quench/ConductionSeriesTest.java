package org.shortgrain.mechanics.quench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.shortgrain.mechanics.quench.Quenches.MPA;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Conduction and elastic stress in a slab with constant properties, against the series solution (textbook):
 * theta = sum of C exp(-zeta^2 Fo) cos(zeta x), zeta tan zeta = Bi, C = 4 sin zeta / (2 zeta + sin 2 zeta).
 */
class ConductionSeriesTest {

    private static final double HALF = 0.0375;
    private static final double START = 475;
    private static final double BATH = 20;
    private static final double CONDUCTIVITY = 150;
    private static final double MODULUS = 70e9;
    private static final double EXPANSION = 24e-6;
    private static final int TERMS = 200;
    private static final double MIDDLE = -1;

    private static double zeta(int term, double biot) {
        double low = term * Math.PI + 1e-12;
        double high = (term + 0.5) * Math.PI - 1e-12;
        return new BracketingNthOrderBrentSolver(1e-14, 5).solve(200, z -> z * Math.sin(z) - biot * Math.cos(z), low,
                high);
    }

    /** Temperature at x of the half-thickness, or the mean. */
    private static double series(double fourier, double biot, double x) {
        double sum = 0;
        for (int i = 0; i < TERMS; i++) {
            double zeta = zeta(i, biot);
            double c = 4 * Math.sin(zeta) / (2 * zeta + Math.sin(2 * zeta));
            sum += c * Math.exp(-zeta * zeta * fourier)
                    * (x == MIDDLE ? Math.sin(zeta) / zeta : Math.cos(zeta * x));
        }
        return sum;
    }

    /** The published first roots, six digits. */
    @ParameterizedTest
    @CsvSource({"0.1, 0.311053, 1.016094", "0.5, 0.653271, 1.070128", "1, 0.860334, 1.119132", "2, 1.076874, 1.178456",
        "5, 1.313838, 1.240249", "10, 1.428870, 1.261963", "100, 1.555245, 1.273088"})
    void theSeriesOfThisTestHasTheRootsOfTheTextbook(double biot, double root, double factor) {
        double zeta = zeta(0, biot);
        assertEquals(root, zeta, 1e-6);
        assertEquals(factor, 4 * Math.sin(zeta) / (2 * zeta + Math.sin(2 * zeta)), 1e-6);
    }

    /** 8,000 equal steps on 80 intervals; backward Euler is first order in time: 2e-4. */
    @ParameterizedTest
    @CsvSource({"0.1, 0.5, 0.967981, 0.921779, 0.952574", "1, 0.5, 0.772526, 0.504522, 0.681105",
        "3, 0.05, 0.999352, 0.537589, 0.901824", "3, 0.1, 0.983553, 0.442019, 0.829168",
        "3, 0.2, 0.894842, 0.348828, 0.712249", "3, 0.5, 0.594215, 0.219724, 0.463262",
        "3, 1, 0.291956, 0.107842, 0.227521", "10, 0.5, 0.454641, 0.064329, 0.315016"})
    void theSlabCoolsAsTheSeriesSays(double biot, double fourier, double centre, double surface, double mean) {
        assertEquals(centre, series(fourier, biot, 0), 1e-6);
        assertEquals(surface, series(fourier, biot, 1), 1e-6);
        assertEquals(mean, series(fourier, biot, MIDDLE), 1e-6);
        SectionGrid grid = new SectionGrid(SectionGrid.Shape.SLAB, HALF, 80);

        double[] t = cooled(grid, biot, fourier);

        assertEquals(centre, share(t[0]), 2e-4);
        assertEquals(surface, share(t[80]), 2e-4);
        assertEquals(mean, share(grid.mean(t)), 2e-4);
    }

    /** s = E alpha / (1 - nu) (Tm - T): 2.507463 MPa/K; error of the temperatures, 0.2 MPa. */
    @ParameterizedTest
    @CsvSource({"0.05, 415.554, -111.269", "0.1, 441.697, -176.137", "0.2, 414.626, -208.320",
        "0.5, 277.851, -149.403", "1, 136.541, -73.514"})
    void theElasticSlabCarriesTheTextbookThermalStress(double fourier, double surface, double centre) {
        SectionGrid grid = new SectionGrid(SectionGrid.Shape.SLAB, HALF, 80);
        PlateStress plate = new PlateStress(grid, Quenches.elastic(CONDUCTIVITY, MODULUS, EXPANSION), START);

        plate.follow(cooled(grid, 3, fourier));

        assertEquals(surface * MPA, plate.surfaceStress(), 0.2 * MPA);
        assertEquals(centre * MPA, plate.centreStress(), 0.2 * MPA);
    }

    /** The axial stress follows the same formula with the area mean; the centre carries half of it across. */
    @ParameterizedTest
    @CsvSource({"0.05", "0.2", "0.5"})
    void theElasticBarCarriesTheTextbookThermalStress(double fourier) {
        SectionGrid grid = new SectionGrid(SectionGrid.Shape.CYLINDER, HALF, 200);
        QuenchMaterial metal = Quenches.elastic(CONDUCTIVITY, MODULUS, EXPANSION);
        BarStress bar = new BarStress(grid, metal, START);
        double[] t = cooled(grid, 3, fourier);

        bar.follow(t);

        double perKelvin = MODULUS * EXPANSION / (1 - 0.33);
        double mean = grid.mean(t);
        assertEquals(perKelvin * (mean - 0.5 * (t[0] + t[1])), bar.centreStress(), 0.1 * MPA);
        assertEquals(perKelvin * (mean - 0.5 * (t[199] + t[200])), bar.surfaceStress(), 0.1 * MPA);
        assertEquals(0.5 * bar.centreStress(), bar.stress(0)[0], 0.5 * MPA);
        assertEquals(bar.stress(0)[0], bar.stress(1)[0], 0.5 * MPA);
    }

    /** Largest surface stress over all times, as a share of E alpha dT / (1 - nu); backward Euler blunts it by up to 0.4 %. */
    @ParameterizedTest
    @CsvSource({"0.05, 0.0160", "0.1, 0.0309", "0.2, 0.0582", "0.5, 0.1256", "1, 0.2083", "2, 0.3166", "5, 0.4778",
        "10, 0.5935"})
    void thePeakOfTheSurfaceStressFollowsTheBiotNumber(double biot, double peak) {
        SectionQuench quench = new SectionQuench(Quenches.elastic(CONDUCTIVITY, MODULUS, EXPANSION),
                Quenches.constantFilm(biot * CONDUCTIVITY / HALF, BATH), 2 * HALF, START);

        double highest = new QuenchSolver(new QuenchResolution(80, 0.5), 1).plate(quench).history().moments().stream()
                .mapToDouble(CoolingHistory.Moment::surfaceStress).max().orElseThrow();

        assertEquals(peak, highest / (MODULUS * EXPANSION / (1 - 0.33) * (START - BATH)), 0.004 * peak + 5e-5);
    }

    private static double[] cooled(SectionGrid grid, double biot, double fourier) {
        QuenchMaterial metal = Quenches.elastic(CONDUCTIVITY, MODULUS, EXPANSION);
        double diffusivity = CONDUCTIVITY / (metal.density() * metal.heatCapacity().at(BATH));
        HeatConduction heat = new HeatConduction(grid, metal,
                Quenches.constantFilm(biot * CONDUCTIVITY / HALF, BATH), START);
        int steps = 8000;
        double dt = fourier * HALF * HALF / diffusivity / steps;
        for (int i = 0; i < steps; i++) {
            heat.propose(dt);
            heat.accept();
        }
        return heat.temperature();
    }

    private static double share(double temperature) {
        return (temperature - BATH) / (START - BATH);
    }
}
