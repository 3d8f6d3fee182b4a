package org.shortgrain.mechanics.quench;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Stress relief by stretching: the plate is pulled along x to a permanent set, y stays free.
 *
 * <p>Plane stress, J2, isotropic linear hardening. With s = sx + sy and d = sx - sy the radial return is
 *
 * <pre>
 * s = s_trial / (1 + g E / (3 (1 - nu)))    d = d_trial / (1 + g E / (1 + nu))
 * q = sqrt(s^2 / 4 + 3 d^2 / 4) = Y + H dq,  dq = 2/3 g q
 * </pre>
 *
 * <p>Small steps of e_x, each with the e_y that leaves no force across; then elastic unloading. Ideal: real stretched
 * plate keeps about twice as much (Prime and Hill 2002; compare {@link PublishedRelief#stretched()}). Source: classical
 * plasticity (textbook); own algebra.
 */
final class Stretching {

    private static final int STEPS = 60;
    /** The first yield adds this much elastic strain, as a factor on yield over modulus. */
    private static final double ELASTIC_MARGIN = 1.3;
    private static final double STRAIN_ACCURACY = 1e-13;
    private static final int MOST_ITERATIONS = 100;

    private final double modulus;
    private final double poisson;
    private final double yield;
    private final double hardening;

    Stretching(QuenchMaterial material) {
        double t = QuenchMaterial.ROOM_TEMPERATURE;
        modulus = material.youngsModulus().at(t);
        poisson = material.poissonRatio();
        yield = material.wYield().at(t);
        hardening = material.hardening().at(t);
    }

    RelievedPlate relieve(QuenchedPlate plate, double permanentStrain) {
        Layers layers = new Layers(plate.grid().volume, plate.stress(), plate.state().hardeningStrain());
        double reached = layers.stretch(permanentStrain, STEPS);
        double[] node = plate.grid().node;
        return new RelievedPlate(StressProfile.symmetric(node, layers.along),
                StressProfile.symmetric(node, layers.across), reached);
    }

    /** The layers of the plate, each in plane stress, all with the same strain. */
    final class Layers {

        private final double[] weight;
        private final double[] along;
        private final double[] across;
        private final double[] hardened;
        private final PlaneStressReturn point = new PlaneStressReturn();

        Layers(double[] weight, double[] stress, double[] hardeningStrain) {
            this.weight = weight;
            this.along = stress.clone();
            this.across = stress.clone();
            this.hardened = hardeningStrain.clone();
        }

        double[] along() {
            return along;
        }

        double[] across() {
            return across;
        }

        /** Stretches to a permanent set and unloads. */
        double stretch(double permanentStrain, int steps) {
            double furthest = permanentStrain + ELASTIC_MARGIN * (yield + hardening * permanentStrain) / modulus;
            double step = furthest / steps;
            double strain = 0;
            double pull = 0;
            for (int i = 0; i < steps && strain - pull / modulus < permanentStrain; i++) {
                advance(step, sideways(step));
                strain += step;
                pull = mean(along);
            }
            unload(along, pull);
            unload(across, mean(across));
            return strain - pull / modulus;
        }

        /** The strain across that leaves no force across; it lies between full contraction and as much expansion. */
        private double sideways(double step) {
            return new BracketingNthOrderBrentSolver(STRAIN_ACCURACY, 5).solve(MOST_ITERATIONS,
                    across -> forceAcross(step, across), -1.5 * step, 1.5 * step);
        }

        private double forceAcross(double stepAlong, double stepAcross) {
            double force = 0;
            for (int i = 0; i < weight.length; i++) {
                point.strain(along[i], across[i], hardened[i], stepAlong, stepAcross);
                force += weight[i] * point.across();
            }
            return force;
        }

        private void advance(double stepAlong, double stepAcross) {
            for (int i = 0; i < weight.length; i++) {
                point.strain(along[i], across[i], hardened[i], stepAlong, stepAcross);
                along[i] = point.along();
                across[i] = point.across();
                hardened[i] += point.plasticStrain();
            }
        }

        private double mean(double[] stress) {
            double sum = 0;
            double whole = 0;
            for (int i = 0; i < weight.length; i++) {
                sum += weight[i] * stress[i];
                whole += weight[i];
            }
            return sum / whole;
        }

        private static void unload(double[] stress, double mean) {
            for (int i = 0; i < stress.length; i++) {
                stress[i] -= mean;
            }
        }
    }

    /** One point in plane stress without shear. */
    private final class PlaneStressReturn {

        private static final double ACCURACY = 1e-14;

        private double sum;
        private double difference;
        private double plasticStrain;

        void strain(double along, double across, double hardened, double stepAlong, double stepAcross) {
            double trialSum = along + across + modulus / (1 - poisson) * (stepAlong + stepAcross);
            double trialDifference = along - across + modulus / (1 + poisson) * (stepAlong - stepAcross);
            double flow = yield + hardening * hardened;
            sum = trialSum;
            difference = trialDifference;
            plasticStrain = 0;
            if (equivalent() > flow) {
                returnToYield(trialSum, trialDifference, flow);
            }
        }

        /**
         * Newton's method for g from zero: q(g) - Y - 2/3 H g q falls and is convex, so every step stays on the near side.
         */
        private void returnToYield(double trialSum, double trialDifference, double flow) {
            double a = modulus / (3 * (1 - poisson));
            double b = modulus / (1 + poisson);
            double g = 0;
            for (int i = 0; i < MOST_ITERATIONS; i++) {
                sum = trialSum / (1 + a * g);
                difference = trialDifference / (1 + b * g);
                double q = equivalent();
                double residual = q - flow - 2.0 / 3 * hardening * g * q;
                plasticStrain = 2.0 / 3 * g * q;
                if (residual <= ACCURACY * flow) {
                    return;
                }
                double slopeOfQ = -(sum * sum * a / (1 + a * g) + 3 * difference * difference * b / (1 + b * g))
                        / (4 * q);
                g -= residual / (slopeOfQ * (1 - 2.0 / 3 * hardening * g) - 2.0 / 3 * hardening * q);
            }
        }

        private double equivalent() {
            return Math.sqrt(sum * sum / 4 + 3 * difference * difference / 4);
        }

        double along() {
            return 0.5 * (sum + difference);
        }

        double across() {
            return 0.5 * (sum - difference);
        }

        double plasticStrain() {
            return plasticStrain;
        }
    }
}
