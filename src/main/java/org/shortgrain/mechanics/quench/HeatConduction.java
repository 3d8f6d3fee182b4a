package org.shortgrain.mechanics.quench;

import java.util.Arrays;

/**
 * Transient conduction in a slab or a long cylinder that is cooled or heated at its surface.
 *
 * <pre>
 * rho cp(T) dT/dt = r^-p d/dr ( r^p k(T) dT/dr )     p = 0 slab, 1 cylinder
 * centre:  dT/dr = 0        surface:  -k dT/dr = h(Ts) (Ts - Tbath)
 * </pre>
 *
 * <p>Finite volumes, backward Euler with every property at the new time, found by fixed-point iteration. Unconditionally
 * stable; first order in time. Basis: heat balance (textbook); checked against the series solution for constant
 * properties.
 */
final class HeatConduction {

    /** Iteration ends when no temperature moves by more, K. */
    private static final double CONVERGED = 1e-7;
    /** A step whose last iteration still moves a temperature by more is no solution, K. */
    private static final double ACCEPTABLE = 1e-4;
    private static final int MOST_ITERATIONS = 30;
    /** From this iteration on old and new are averaged: needed near the boiling peak of the film only. */
    private static final int UNDAMPED_ITERATIONS = 6;

    private final SectionGrid grid;
    private final QuenchMaterial material;
    private final FilmCoefficient film;
    private final SymmetricTridiagonal system;
    private double[] temperature;
    private double[] proposed;
    private final double[] conductivity;
    private final double[] storage;
    private final double[] solution;
    /** Rate of change over the last step taken, K/s: carried on, it is where the next iteration begins. */
    private final double[] rate;
    private double lastStep;

    HeatConduction(SectionGrid grid, QuenchMaterial material, FilmCoefficient film, double startTemperature) {
        this.grid = grid;
        this.material = material;
        this.film = film;
        int n = grid.nodes();
        system = new SymmetricTridiagonal(n);
        temperature = new double[n];
        proposed = new double[n];
        conductivity = new double[n];
        storage = new double[n];
        solution = new double[n];
        rate = new double[n];
        Arrays.fill(temperature, startTemperature);
    }

    /** The temperatures at the nodes; changed by {@link #accept}. */
    double[] temperature() {
        return temperature;
    }

    /**
     * Computes the temperatures after one more step, without taking it.
     *
     * @param dt time step, s
     * @return largest change of any temperature, K; infinite where the iteration did not settle
     */
    double propose(double dt) {
        lastStep = dt;
        for (int i = 0; i < temperature.length; i++) {
            proposed[i] = temperature[i] + dt * rate[i];
        }
        double moved = Double.POSITIVE_INFINITY;
        for (int iteration = 0; iteration < MOST_ITERATIONS && moved >= CONVERGED; iteration++) {
            assemble(dt);
            system.factor();
            system.solve(solution);
            moved = largestDifference(solution, proposed);
            double weight = iteration < UNDAMPED_ITERATIONS ? 1 : 0.5;
            for (int i = 0; i < solution.length; i++) {
                proposed[i] += weight * (solution[i] - proposed[i]);
            }
        }
        return moved < ACCEPTABLE ? largestDifference(proposed, temperature) : Double.POSITIVE_INFINITY;
    }

    /** Takes the proposed step. */
    void accept() {
        for (int i = 0; i < temperature.length; i++) {
            rate[i] = (proposed[i] - temperature[i]) / lastStep;
        }
        double[] old = temperature;
        temperature = proposed;
        proposed = old;
    }

    /** Largest distance of any node from the bath temperature, K. */
    double distanceFromBath() {
        double largest = 0;
        for (double t : temperature) {
            largest = Math.max(largest, Math.abs(t - film.bathTemperature()));
        }
        return largest;
    }

    private void assemble(double dt) {
        int surface = proposed.length - 1;
        double perTime = material.density() / dt;
        material.conductivity().at(proposed, conductivity);
        material.heatCapacity().at(proposed, storage);
        for (int i = 0; i <= surface; i++) {
            storage[i] = perTime * storage[i] * grid.volume[i];
            system.diagonal[i] = storage[i];
            solution[i] = storage[i] * temperature[i];
        }
        for (int i = 0; i < surface; i++) {
            double conductance = 0.5 * (conductivity[i] + conductivity[i + 1]) * grid.edgeArea[i] / grid.spacing[i];
            system.off[i] = -conductance;
            system.diagonal[i] += conductance;
            system.diagonal[i + 1] += conductance;
        }
        double taken = film.coefficient().at(proposed[surface]) * grid.surfaceArea;
        system.diagonal[surface] += taken;
        solution[surface] += taken * film.bathTemperature();
    }

    private static double largestDifference(double[] a, double[] b) {
        double largest = 0;
        for (int i = 0; i < a.length; i++) {
            largest = Math.max(largest, Math.abs(a[i] - b[i]));
        }
        return largest;
    }
}
