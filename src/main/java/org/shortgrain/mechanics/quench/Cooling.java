package org.shortgrain.mechanics.quench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Leads a section through the bath and then to room temperature, one time step after another.
 *
 * <p>The step is chosen so that no temperature changes by much more than a target; a step that overshoots twice the
 * target is halved and repeated. The bath ends when every temperature is within half a kelvin of it; then the section
 * goes uniformly to room temperature, which matters for hot baths only.
 */
final class Cooling {

    private static final double FIRST_STEP = 1e-4;
    private static final double SHORTEST_STEP = 1e-7;
    private static final double LARGEST_GROWTH = 1.5;
    private static final double LARGEST_CUT = 0.5;
    /** Distance from the bath at which the quench has ended, K. */
    private static final double AT_BATH = 0.5;
    /** No section within the range of validity needs longer, s. */
    private static final double LONGEST = 1e5;
    /** Uniform steps from the bath to room temperature, K. */
    private static final double UNIFORM_STEP = 5;

    private final SectionGrid grid;
    private final HeatConduction heat;
    private final ThermalStress section;
    private final double temperatureStep;

    Cooling(SectionGrid grid, HeatConduction heat, ThermalStress section, double temperatureStep) {
        this.grid = grid;
        this.heat = heat;
        this.section = section;
        this.temperatureStep = temperatureStep;
    }

    CoolingHistory run() {
        List<CoolingHistory.Moment> moments = new ArrayList<>();
        double time = 0;
        double dt = FIRST_STEP;
        while (heat.distanceFromBath() >= AT_BATH && time <= LONGEST) {
            double change = heat.propose(dt);
            if (change > 2 * temperatureStep && dt > SHORTEST_STEP) {
                dt *= 0.5;
                continue;
            }
            heat.accept();
            time += dt;
            section.follow(heat.temperature());
            moments.add(moment(time));
            dt *= Math.min(LARGEST_GROWTH, Math.max(LARGEST_CUT, temperatureStep / Math.max(change, 1e-9)));
        }
        toRoomTemperature();
        return new CoolingHistory(moments);
    }

    private CoolingHistory.Moment moment(double time) {
        double[] t = heat.temperature();
        return new CoolingHistory.Moment(time, t[0], t[t.length - 1], section.centreStress(),
                section.surfaceStress());
    }

    private void toRoomTemperature() {
        double from = grid.mean(heat.temperature());
        double distance = QuenchMaterial.ROOM_TEMPERATURE - from;
        int steps = (int) (Math.abs(distance) / UNIFORM_STEP) + 1;
        double[] uniform = new double[grid.nodes()];
        for (int i = 1; i <= steps; i++) {
            Arrays.fill(uniform, from + distance * i / steps);
            section.follow(uniform);
        }
    }
}
