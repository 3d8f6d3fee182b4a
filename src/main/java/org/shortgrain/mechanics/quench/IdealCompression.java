package org.shortgrain.mechanics.quench;

/**
 * Stress relief by compression through the thickness without friction, over the whole face at once.
 *
 * <p>The pressure is common to all layers, the strain in the plane is common and free of force: s_x = s_y = s(z),
 * s_z = -p, yield at |s - s_z| = Y_W + H q, the equivalent strain is the thickness strain. A lower bound only: die
 * friction, overlapping bites and the shape of the dies leave far more (Olson et al. 2018; compare
 * {@link PublishedRelief#compressedDie()}). Source: classical plasticity (textbook); own algebra.
 */
final class IdealCompression {

    /** The first step of the pressure, as a share of the yield, before anything yields. */
    private static final double FIRST_STEP = 1.0 / 40;
    /** Steps of the pressure once layers yield, as a share of the yield. */
    private static final double STEP = 1.0 / 400;
    /** Pressure over yield that no compression reaches. */
    private static final double HIGHEST_PRESSURE = 30;
    private static final double LARGEST_STRAIN = 0.02;
    /** Mean in-plane stress at which the layers count as balanced, Pa. */
    private static final double BALANCED = 1e-3;
    private static final int MOST_ITERATIONS = 100;

    private final double planeModulus;
    private final double coupling;
    private final double yield;
    private final double hardening;

    IdealCompression(QuenchMaterial material) {
        double t = QuenchMaterial.ROOM_TEMPERATURE;
        planeModulus = material.youngsModulus().at(t) / (1 - material.poissonRatio());
        coupling = material.poissonRatio() / (1 - material.poissonRatio());
        yield = material.wYield().at(t);
        hardening = material.hardening().at(t);
    }

    RelievedPlate relieve(QuenchedPlate plate, double permanentStrain) {
        Press press = new Press(plate.grid(), plate.stress(), plate.state().hardeningStrain());
        double reached = press.squeeze(permanentStrain);
        StressProfile left = StressProfile.symmetric(plate.grid().node, press.unloaded());
        return new RelievedPlate(left, left, reached);
    }

    private final class Press {

        private final SectionGrid grid;
        private final double[] stress;
        private final double[] hardened;
        private final double[] base;
        private double through;

        private Press(SectionGrid grid, double[] stress, double[] hardeningStrain) {
            this.grid = grid;
            this.stress = stress.clone();
            this.hardened = hardeningStrain.clone();
            this.base = new double[stress.length];
        }

        private double squeeze(double permanentStrain) {
            double reached = 0;
            while (reached < permanentStrain && through > -HIGHEST_PRESSURE * yield) {
                double step = -yield * (reached == 0 ? FIRST_STEP : STEP);
                through += step;
                for (int i = 0; i < stress.length; i++) {
                    base[i] = stress[i] + coupling * step;
                }
                reached += advance(balance());
            }
            return reached;
        }

        /** The common in-plane strain that leaves no in-plane force; Newton's method inside a bracket. */
        private double balance() {
            double low = -LARGEST_STRAIN;
            double high = LARGEST_STRAIN;
            double strain = 0;
            for (int iteration = 0; iteration < MOST_ITERATIONS; iteration++) {
                double force = 0;
                double tangent = 0;
                double whole = 0;
                for (int i = 0; i < stress.length; i++) {
                    double trial = base[i] + planeModulus * strain;
                    double plastic = plasticStep(i, trial);
                    force += grid.volume[i] * (trial - Math.copySign(planeModulus * plastic, trial - through));
                    tangent += grid.volume[i] * planeModulus
                            * (plastic > 0 ? 2 * hardening / (planeModulus + 2 * hardening) : 1);
                    whole += grid.volume[i];
                }
                if (Math.abs(force) / whole < BALANCED) {
                    return strain;
                }
                if (force > 0) {
                    high = strain;
                } else {
                    low = strain;
                }
                double next = tangent > 0 ? strain - force / tangent : Double.NaN;
                strain = next > low && next < high ? next : 0.5 * (low + high);
            }
            throw new IllegalStateException("compressed plate not in balance");
        }

        private double plasticStep(int i, double trial) {
            double over = Math.abs(trial - through) - (yield + hardening * hardened[i]);
            return over > 0 ? over / (planeModulus + 2 * hardening) : 0;
        }

        /** Takes the step; the answer is the mean thickness strain that it adds. */
        private double advance(double strain) {
            double added = 0;
            double whole = 0;
            for (int i = 0; i < stress.length; i++) {
                double trial = base[i] + planeModulus * strain;
                double plastic = plasticStep(i, trial);
                stress[i] = trial - Math.copySign(planeModulus * plastic, trial - through);
                hardened[i] += 2 * plastic;
                added += grid.volume[i] * 2 * plastic;
                whole += grid.volume[i];
            }
            return added / whole;
        }

        /** Taking the pressure off is elastic and alike in every layer; what is left is balanced. */
        private double[] unloaded() {
            double mean = grid.mean(stress);
            double[] left = stress.clone();
            for (int i = 0; i < left.length; i++) {
                left[i] -= mean;
            }
            return left;
        }
    }
}
