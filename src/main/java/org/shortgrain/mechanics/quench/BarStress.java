package org.shortgrain.mechanics.quench;

import java.util.Arrays;

/**
 * Elastic-plastic stress of a long round bar in generalised plane strain, free at its ends.
 *
 * <p>Unknowns: the radial displacement of each node (none on the axis) and one axial strain. Between two nodes
 * e_r = du/dr, e_theta = mean u / mean r, e_z uniform, with one integration point, which cannot lock. J2 yield with
 * radial return and isotropic hardening:
 *
 * <pre>
 * s_trial = 2G dev(e - e_th 1 - e_p)    q = sqrt(3/2 s:s)    Y = Y_W(T) + H(T) kappa
 * dl = (q - Y) / (3G + H phi)    s = s_trial (1 - 3G dl/q)    de_p = 3/2 dl s_trial/q    dkappa = phi dl
 * sigma = s + K tr(e_e) 1
 * </pre>
 *
 * <p>Balance: radial equilibrium at each node and no axial force; Newton's method with the consistent tangent, whose
 * matrix is tridiagonal with one border for the axial strain. Source: classical radial return (textbook, such as Simo
 * and Hughes 1998, from memory).
 */
final class BarStress implements ThermalStress {

    /** Largest force out of balance at which the bar counts as balanced, Pa. */
    private static final double BALANCED = 1e-3;
    private static final int MOST_ITERATIONS = 60;

    private final QuenchMaterial material;
    private final Element[] elements;
    private final double radius;
    private final double[] displacement;
    private double axialStrain;

    private final SymmetricTridiagonal matrix;
    private final double[] border;
    private double corner;
    private final double[] force;
    private double axialForce;
    private final double[] borderSolution;

    /** A bar that is free of stress at a uniform temperature. */
    BarStress(SectionGrid grid, QuenchMaterial material, double startTemperature) {
        this.material = material;
        int n = grid.spacing.length;
        radius = grid.node[n];
        elements = new Element[n];
        displacement = new double[n + 1];
        axialStrain = material.thermalStrain(startTemperature);
        for (int i = 0; i < n; i++) {
            elements[i] = new Element(grid.node[i], grid.node[i + 1]);
            displacement[i + 1] = axialStrain * grid.node[i + 1];
        }
        matrix = new SymmetricTridiagonal(n);
        border = new double[n];
        force = new double[n];
        borderSolution = new double[n];
    }

    @Override
    public void follow(double[] temperature) {
        for (int i = 0; i < elements.length; i++) {
            elements[i].lookUp(0.5 * (temperature[i] + temperature[i + 1]));
        }
        for (int iteration = 0; iteration < MOST_ITERATIONS; iteration++) {
            respond();
            if (largestImbalance() < BALANCED) {
                for (Element element : elements) {
                    element.record();
                }
                return;
            }
            assemble();
            correct();
        }
        throw new IllegalStateException("bar not in balance");
    }

    private void respond() {
        Arrays.fill(force, 0);
        axialForce = 0;
        for (int i = 0; i < elements.length; i++) {
            Element e = elements[i];
            e.respond(displacement[i], displacement[i + 1], axialStrain);
            if (i > 0) {
                force[i - 1] += e.nodalForce(-1);
            }
            force[i] += e.nodalForce(1);
            axialForce += e.volume * e.stress[2];
        }
    }

    /** The tangent of the response; a bar in balance needs none. */
    private void assemble() {
        matrix.clear();
        Arrays.fill(border, 0);
        corner = 0;
        for (int i = 0; i < elements.length; i++) {
            Element e = elements[i];
            e.stiffen();
            int inner = i - 1;
            if (inner >= 0) {
                matrix.diagonal[inner] += e.nodalStiffness(-1, -1);
                matrix.off[inner] += e.nodalStiffness(-1, 1);
                border[inner] += e.borderStiffness(-1);
            }
            matrix.diagonal[i] += e.nodalStiffness(1, 1);
            border[i] += e.borderStiffness(1);
            corner += e.volume * e.axial;
        }
    }

    /** The largest force out of balance, as a stress over the cross-section or over the radius. */
    private double largestImbalance() {
        double largest = Math.abs(axialForce) / (radius * radius);
        for (double f : force) {
            largest = Math.max(largest, Math.abs(f) / radius);
        }
        return largest;
    }

    /** One Newton step: the border is eliminated through the tridiagonal part. */
    private void correct() {
        matrix.factor();
        matrix.solve(force);
        System.arraycopy(border, 0, borderSolution, 0, border.length);
        matrix.solve(borderSolution);
        double left = axialForce;
        double stiffness = corner;
        for (int i = 0; i < border.length; i++) {
            left -= border[i] * force[i];
            stiffness -= border[i] * borderSolution[i];
        }
        double axialStep = left / stiffness;
        for (int i = 0; i < border.length; i++) {
            displacement[i + 1] -= force[i] - borderSolution[i] * axialStep;
        }
        axialStrain -= axialStep;
    }

    @Override
    public double centreStress() {
        return elements[0].stress[2];
    }

    @Override
    public double surfaceStress() {
        return elements[elements.length - 1].stress[2];
    }

    /** Middle radius of each element, m. */
    double[] radii() {
        double[] radii = new double[elements.length];
        for (int i = 0; i < radii.length; i++) {
            radii[i] = elements[i].middle;
        }
        return radii;
    }

    /** Stress of each element in one direction: 0 radial, 1 hoop, 2 axial. */
    double[] stress(int direction) {
        double[] stress = new double[elements.length];
        for (int i = 0; i < stress.length; i++) {
            stress[i] = elements[i].stress[direction];
        }
        return stress;
    }

    /** Share of the cross-section of each element. */
    double[] volumes() {
        return Arrays.stream(elements).mapToDouble(e -> e.volume).toArray();
    }

    /** The ring between two nodes; arrays hold the radial, hoop and axial component. */
    private final class Element {

        private final double middle;
        private final double length;
        private final double volume;
        private final double[] plasticStrain = new double[3];
        private double hardeningStrain;
        private final double[] stress = new double[3];
        private final double[] trial = new double[3];

        private double shear;
        private double bulk;
        private double freeStrain;
        private double yield;
        private double hardening;
        private double kept;

        private double trialNorm;
        private double multiplier;
        /** Share of the trial deviator that is left after the return. */
        private double left;
        /** Factor of the dyad of the flow direction in the tangent. */
        private double dyad;

        /** Consistent tangent: radial, radial with hoop, hoop, and each with axial. */
        private double radial;
        private double radialHoop;
        private double hoop;
        private double radialAxial;
        private double hoopAxial;
        private double axial;

        private Element(double inner, double outer) {
            middle = 0.5 * (inner + outer);
            length = outer - inner;
            volume = middle * length;
        }

        private void lookUp(double temperature) {
            double modulus = material.youngsModulus().at(temperature);
            double nu = material.poissonRatio();
            shear = modulus / (2 * (1 + nu));
            bulk = modulus / (3 * (1 - 2 * nu));
            freeStrain = material.thermalStrain(temperature);
            hardening = material.hardening().at(temperature);
            kept = material.hardeningKept().at(temperature);
            yield = material.wYield().at(temperature) + hardening * hardeningStrain;
        }

        private void respond(double innerDisplacement, double outerDisplacement, double axial) {
            trial[0] = (outerDisplacement - innerDisplacement) / length - freeStrain - plasticStrain[0];
            trial[1] = 0.5 * (innerDisplacement + outerDisplacement) / middle - freeStrain - plasticStrain[1];
            trial[2] = axial - freeStrain - plasticStrain[2];
            double dilatation = trial[0] + trial[1] + trial[2];
            double square = 0;
            for (int k = 0; k < 3; k++) {
                trial[k] = 2 * shear * (trial[k] - dilatation / 3);
                square += trial[k] * trial[k];
            }
            trialNorm = Math.sqrt(1.5 * square);
            returnToYield();
            for (int k = 0; k < 3; k++) {
                stress[k] = left * trial[k] + bulk * dilatation;
            }
        }

        private void returnToYield() {
            multiplier = 0;
            left = 1;
            dyad = 0;
            if (trialNorm > yield) {
                double resistance = 3 * shear + hardening * kept;
                multiplier = (trialNorm - yield) / resistance;
                left = 1 - 3 * shear * multiplier / trialNorm;
                double share = 3 * shear * multiplier / trialNorm - 3 * shear / resistance;
                dyad = 2 * shear * share * 1.5 / (trialNorm * trialNorm);
            }
        }

        /** Consistent tangent of stress i against strain j. */
        private double tangent(int i, int j) {
            double deviator = (i == j ? 2.0 : -1.0) / 3;
            return bulk + 2 * shear * left * deviator + dyad * trial[i] * trial[j];
        }

        private void stiffen() {
            radial = tangent(0, 0);
            radialHoop = tangent(0, 1);
            hoop = tangent(1, 1);
            radialAxial = tangent(0, 2);
            hoopAxial = tangent(1, 2);
            axial = tangent(2, 2);
        }

        /** Force on the inner (-1) or outer (1) node. */
        private double nodalForce(int side) {
            return volume * (side * stress[0] / length + 0.5 * stress[1] / middle);
        }

        private double nodalStiffness(int side, int otherSide) {
            double perLength = 1 / length;
            double perRadius = 0.5 / middle;
            return volume * (side * otherSide * perLength * perLength * radial
                    + (side + otherSide) * perLength * perRadius * radialHoop + perRadius * perRadius * hoop);
        }

        private double borderStiffness(int side) {
            return volume * (side * radialAxial / length + 0.5 * hoopAxial / middle);
        }

        private void record() {
            if (multiplier > 0) {
                for (int k = 0; k < 3; k++) {
                    plasticStrain[k] += 1.5 * multiplier * trial[k] / trialNorm;
                }
                hardeningStrain += multiplier * kept;
            }
        }
    }
}
