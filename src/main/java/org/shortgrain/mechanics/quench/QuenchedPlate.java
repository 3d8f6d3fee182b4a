package org.shortgrain.mechanics.quench;

import java.util.OptionalDouble;

/**
 * A wide plate after the quench, at room temperature. The stress is the same in every direction of its plane.
 */
public final class QuenchedPlate {

    private final SectionGrid grid;
    private final double[] stress;
    private final PlateStress.PlateState state;
    private final CoolingHistory history;

    QuenchedPlate(SectionGrid grid, double[] stress, PlateStress.PlateState state, CoolingHistory history) {
        this.grid = grid;
        this.stress = stress;
        this.state = state;
        this.history = history;
    }

    /** {@return in-plane stress through the whole thickness, depth counted from one quenched face} */
    public StressProfile profile() {
        return StressProfile.symmetric(grid.node, stress);
    }

    /** {@return equivalent plastic strain that hardens, through the whole thickness, as a plain number} */
    public StressProfile hardeningStrain() {
        return StressProfile.symmetric(grid.node, state.hardeningStrain());
    }

    /** {@return stress at the quenched faces, Pa} */
    public double skin() {
        return stress[stress.length - 1];
    }

    /** {@return stress at mid-thickness, Pa} */
    public double core() {
        return stress[0];
    }

    /** {@return depth at which compression turns into tension, m; empty where the stress never changes sign} */
    public OptionalDouble zeroCrossing() {
        for (int i = stress.length - 1; i > 0; i--) {
            if (stress[i] < 0 && stress[i - 1] >= 0) {
                double share = stress[i] / (stress[i] - stress[i - 1]);
                double fromCentre = grid.node[i] - share * grid.spacing[i - 1];
                return OptionalDouble.of(grid.node[grid.nodes() - 1] - fromCentre);
            }
        }
        return OptionalDouble.empty();
    }

    /** {@return what happened in the bath} */
    public CoolingHistory history() {
        return history;
    }

    SectionGrid grid() {
        return grid;
    }

    double[] stress() {
        return stress;
    }

    PlateStress.PlateState state() {
        return state;
    }
}
