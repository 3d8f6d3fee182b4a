package org.shortgrain.mechanics.quench;

/**
 * Computes what a quench and its relief leave in a plate or a bar, and computes equal cases once.
 *
 * <p>Valid for free immersion with every face wet, sections of 10 to 250 mm, solution temperatures of 460 to 540 degC;
 * {@link QuenchRange} says whether a case lies inside. Not modelled: one-sided or uneven wetting, the shape of a die
 * forging, racking, creep in ageing, kinematic hardening, rate dependence when hot.
 *
 * <p>Safe for use by several threads; the memory of results is bounded. One solver should serve a whole process.
 */
public final class QuenchSolver {

    /** Results that a usual solver remembers: some 30 kB each. */
    private static final int USUAL_MEMORY = 128;
    /** An uphill quench starts from liquid nitrogen, degC. */
    private static final double LIQUID_NITROGEN = -196;

    private final QuenchResolution resolution;
    private final Memo memo;

    /**
     * A solver with an empty memory.
     *
     * @param resolution how finely to compute
     * @param remembered how many results to remember
     */
    public QuenchSolver(QuenchResolution resolution, int remembered) {
        this.resolution = resolution;
        this.memo = new Memo(remembered);
    }

    /** {@return a solver for reviews: normal resolution, memory for a batch of parts} */
    public static QuenchSolver usual() {
        return new QuenchSolver(QuenchResolution.NORMAL, USUAL_MEMORY);
    }

    /**
     * {@return the plate after the quench}
     *
     * @param quench metal, bath, thickness and temperature
     */
    public QuenchedPlate plate(SectionQuench quench) {
        return memo.get(quench, QuenchedPlate.class, () -> {
            SectionGrid grid = grid(SectionGrid.Shape.SLAB, quench);
            PlateStress plate = new PlateStress(grid, quench.material(), quench.solutionTemperature());
            return cool(grid, plate, quench.material(), quench.film(), quench.solutionTemperature());
        });
    }

    /**
     * {@return the round bar after the quench}
     *
     * @param quench metal, bath, diameter and temperature
     */
    public QuenchedBar bar(SectionQuench quench) {
        return memo.get(quench, QuenchedBar.class, () -> {
            SectionGrid grid = grid(SectionGrid.Shape.CYLINDER, quench);
            BarStress bar = new BarStress(grid, quench.material(), quench.solutionTemperature());
            HeatConduction heat = new HeatConduction(grid, quench.material(), quench.film(),
                    quench.solutionTemperature());
            CoolingHistory history = new Cooling(grid, heat, bar, resolution.temperatureStep()).run();
            return QuenchedBar.of(quench.thickness() / 2, bar, history);
        });
    }

    /**
     * {@return the plate after an uphill quench from liquid nitrogen} The cooling itself is uniform and only scales the
     * stress with Young's modulus, below the cold yield.
     *
     * @param quench the quench before
     * @param heating the medium into which the cold plate is put
     */
    public QuenchedPlate uphill(SectionQuench quench, FilmCoefficient heating) {
        return memo.get(new Uphill(quench, heating), QuenchedPlate.class, () -> {
            QuenchedPlate before = plate(quench);
            PlateStress plate = new PlateStress(before.grid(), quench.material(), before.state());
            return cool(before.grid(), plate, quench.material(), heating, LIQUID_NITROGEN);
        });
    }

    /**
     * {@return the plate after stretching along L}
     *
     * @param quench          the quench before
     * @param permanentStrain permanent set, such as 0.02
     */
    public RelievedPlate stretched(SectionQuench quench, double permanentStrain) {
        return memo.get(new Stretched(quench, permanentStrain), RelievedPlate.class,
                () -> new Stretching(quench.material()).relieve(plate(quench), permanentStrain));
    }

    /**
     * {@return the plate after ideal compression through its thickness}
     *
     * @param quench          the quench before
     * @param permanentStrain permanent set through the thickness, such as 0.03
     */
    public RelievedPlate compressed(SectionQuench quench, double permanentStrain) {
        return memo.get(new Compressed(quench, permanentStrain), RelievedPlate.class,
                () -> new IdealCompression(quench.material()).relieve(plate(quench), permanentStrain));
    }

    private SectionGrid grid(SectionGrid.Shape shape, SectionQuench quench) {
        return new SectionGrid(shape, quench.thickness() / 2, resolution.intervals());
    }

    private QuenchedPlate cool(SectionGrid grid, PlateStress plate, QuenchMaterial material, FilmCoefficient film,
            double startTemperature) {
        HeatConduction heat = new HeatConduction(grid, material, film, startTemperature);
        CoolingHistory history = new Cooling(grid, heat, plate, resolution.temperatureStep()).run();
        return new QuenchedPlate(grid, plate.stress(), plate.state(), history);
    }

    private record Uphill(SectionQuench quench, FilmCoefficient heating) {
    }

    private record Stretched(SectionQuench quench, double strain) {
    }

    private record Compressed(SectionQuench quench, double strain) {
    }
}
