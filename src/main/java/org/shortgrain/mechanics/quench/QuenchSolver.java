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
    /** Coolings that a solver remembers, some 200 kB each: the same section of a stronger metal wants one again at once. */
    private static final int COOLINGS = 8;
    /** An uphill quench starts from liquid nitrogen, degC. */
    private static final double LIQUID_NITROGEN = -196;

    private final QuenchResolution resolution;
    private final Memo memo;
    private final Memo coolings = new Memo(COOLINGS);

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
            return cool(grid, plate, new Heat(SectionGrid.Shape.SLAB, quench));
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
            CoolingHistory history = cooling(grid, new Heat(SectionGrid.Shape.CYLINDER, quench)).lead(bar);
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
            SectionQuench warming = new SectionQuench(quench.material(), heating, quench.thickness(), LIQUID_NITROGEN);
            return cool(before.grid(), plate, new Heat(SectionGrid.Shape.SLAB, warming));
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

    private QuenchedPlate cool(SectionGrid grid, PlateStress plate, Heat heat) {
        CoolingHistory history = cooling(grid, heat).lead(plate);
        return new QuenchedPlate(grid, plate.stress(), plate.state(), history);
    }

    private Cooling cooling(SectionGrid grid, Heat heat) {
        return coolings.get(heat, Cooling.class,
                () -> Cooling.of(grid, heat.in(grid), resolution.temperatureStep()));
    }

    /** What the temperatures of a section depend on: all of a quench but how the metal strains and yields. */
    private record Heat(SectionGrid.Shape shape, SectionQuench quench) {

        HeatConduction in(SectionGrid grid) {
            return new HeatConduction(grid, quench.material(), quench.film(), quench.solutionTemperature());
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Heat that && shape == that.shape && quench.coolsAs(that.quench);
        }

        @Override
        public int hashCode() {
            return 31 * Double.hashCode(quench.thickness()) + quench.film().coefficient().hashCode();
        }
    }

    private record Uphill(SectionQuench quench, FilmCoefficient heating) {
    }

    private record Stretched(SectionQuench quench, double strain) {
    }

    private record Compressed(SectionQuench quench, double strain) {
    }
}
