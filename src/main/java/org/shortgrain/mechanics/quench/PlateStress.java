package org.shortgrain.mechanics.quench;

import java.util.Arrays;

/**
 * Elastic-plastic stress of a free wide plate that is quenched alike on both faces.
 *
 * <p>Equi-biaxial: s_x = s_y = s(z), s_z = 0; the in-plane strain e is uniform through the thickness (a plane section
 * stays plane, and symmetry forbids bow).
 *
 * <pre>
 * E' = E(T) / (1 - nu)
 * trial  s = E' (e - e_th(T) - e_p)        yield  Y = Y_W(T) + H(T) q
 * if |s| &gt; Y:  dp = (|s| - Y) / (E' + 2 H phi),  s -= sign(s) E' dp,  e_p += sign(s) dp,  q += 2 dp phi
 * balance:  sum of w s = 0
 * </pre>
 *
 * <p>q is the equivalent plastic strain that still hardens: in an equi-biaxial state the equivalent strain is twice the
 * in-plane one; phi is the share that does not recover while hot. Isotropic hardening, no rate dependence. A change of
 * E(T) acts on the stored elastic strain. The force falls monotonically with e, so Newton's method inside a bracket
 * cannot fail. Source: classical rate-independent plasticity (textbook); own algebra.
 */
final class PlateStress implements ThermalStress {

    /** Mean stress through the thickness at which the plate counts as balanced, Pa. */
    private static final double BALANCED = 1e-3;
    /** No metal strains further in a quench. */
    private static final double LARGEST_STRAIN = 0.05;
    private static final int MOST_ITERATIONS = 100;

    private final QuenchMaterial material;
    private final double[] weight;
    private final double wholeWeight;
    private final double[] plasticStrain;
    private final double[] hardeningStrain;
    private final double[] stress;
    private double strain;

    private final double[] stiffness;
    private final double[] freeStrain;
    private final double[] yield;
    private final double[] hardening;
    private final double[] kept;

    /** A plate that is free of stress at a uniform temperature. */
    PlateStress(SectionGrid grid, QuenchMaterial material, double startTemperature) {
        this(grid, material, new PlateState(new double[grid.nodes()], new double[grid.nodes()],
                material.thermalStrain(startTemperature)));
    }

    /** A plate that was strained before. */
    PlateStress(SectionGrid grid, QuenchMaterial material, PlateState state) {
        this.material = material;
        this.weight = grid.volume;
        this.wholeWeight = Arrays.stream(weight).sum();
        this.plasticStrain = state.plasticStrain().clone();
        this.hardeningStrain = state.hardeningStrain().clone();
        this.strain = state.strain();
        int n = grid.nodes();
        stress = new double[n];
        stiffness = new double[n];
        freeStrain = new double[n];
        yield = new double[n];
        hardening = new double[n];
        kept = new double[n];
    }

    @Override
    public void follow(double[] temperature) {
        lookUp(temperature);
        balance();
        record();
    }

    private void lookUp(double[] temperature) {
        material.youngsModulus().at(temperature, stiffness);
        material.hardening().at(temperature, hardening);
        material.hardeningKept().at(temperature, kept);
        material.wYield().at(temperature, yield);
        for (int i = 0; i < temperature.length; i++) {
            stiffness[i] = stiffness[i] / (1 - material.poissonRatio());
            freeStrain[i] = material.thermalStrain(temperature[i]) + plasticStrain[i];
            yield[i] = yield[i] + hardening[i] * hardeningStrain[i];
        }
    }

    private void balance() {
        double low = -LARGEST_STRAIN;
        double high = LARGEST_STRAIN;
        for (int iteration = 0; iteration < MOST_ITERATIONS; iteration++) {
            double force = 0;
            double tangent = 0;
            for (int i = 0; i < stress.length; i++) {
                double trial = stiffness[i] * (strain - freeStrain[i]);
                double over = Math.abs(trial) - yield[i];
                if (over <= 0) {
                    stress[i] = trial;
                    tangent += weight[i] * stiffness[i];
                } else {
                    double work = 2 * hardening[i] * kept[i];
                    double whole = stiffness[i] + work;
                    stress[i] = trial - Math.copySign(stiffness[i] * over / whole, trial);
                    tangent += weight[i] * stiffness[i] * work / whole;
                }
                force += weight[i] * stress[i];
            }
            if (Math.abs(force) / wholeWeight < BALANCED) {
                return;
            }
            if (force > 0) {
                high = Math.min(high, strain);
            } else {
                low = Math.max(low, strain);
            }
            double next = tangent > 0 ? strain - force / tangent : Double.NaN;
            strain = next > low && next < high ? next : 0.5 * (low + high);
        }
        throw new IllegalStateException("plate not in balance");
    }

    private void record() {
        for (int i = 0; i < stress.length; i++) {
            double trial = stiffness[i] * (strain - freeStrain[i]);
            double over = Math.abs(trial) - yield[i];
            if (over > 0) {
                double added = over / (stiffness[i] + 2 * hardening[i] * kept[i]);
                plasticStrain[i] += Math.copySign(added, trial);
                hardeningStrain[i] += 2 * added * kept[i];
            }
        }
    }

    @Override
    public double centreStress() {
        return stress[0];
    }

    @Override
    public double surfaceStress() {
        return stress[stress.length - 1];
    }

    double[] stress() {
        return stress.clone();
    }

    PlateState state() {
        return new PlateState(plasticStrain.clone(), hardeningStrain.clone(), strain);
    }

    /**
     * What a plate remembers of its straining.
     *
     * @param plasticStrain   in-plane plastic strain at each node
     * @param hardeningStrain equivalent plastic strain that hardens, at each node
     * @param strain          in-plane total strain, counted from room temperature
     */
    record PlateState(double[] plasticStrain, double[] hardeningStrain, double strain) {
    }
}
