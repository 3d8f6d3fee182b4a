package org.shortgrain.mechanics.quench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The temperatures of a section through the bath and then to room temperature, one time step after another. They do not
 * depend on how strong the metal is, so that the usual and the strongest metal of a case share them.
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

    private final int nodes;
    private final List<Instant> inBath;
    /** Mean temperature of the section as it leaves the bath, degC. */
    private final double leaving;

    private Cooling(int nodes, List<Instant> inBath, double leaving) {
        this.nodes = nodes;
        this.inBath = inBath;
        this.leaving = leaving;
    }

    /** Time since immersion (s) and the temperature at each node (degC). */
    private record Instant(double time, double[] temperature) {
    }

    static Cooling of(SectionGrid grid, HeatConduction heat, double temperatureStep) {
        List<Instant> inBath = new ArrayList<>();
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
            inBath.add(new Instant(time, heat.temperature().clone()));
            dt *= Math.min(LARGEST_GROWTH, Math.max(LARGEST_CUT, temperatureStep / Math.max(change, 1e-9)));
        }
        return new Cooling(grid.nodes(), inBath, grid.mean(heat.temperature()));
    }

    /** Leads a section through these temperatures. */
    CoolingHistory lead(ThermalStress section) {
        List<CoolingHistory.Moment> moments = new ArrayList<>(inBath.size());
        for (Instant instant : inBath) {
            double[] t = instant.temperature();
            section.follow(t);
            moments.add(new CoolingHistory.Moment(instant.time(), t[0], t[t.length - 1], section.centreStress(),
                    section.surfaceStress()));
        }
        toRoomTemperature(section);
        return new CoolingHistory(moments);
    }

    private void toRoomTemperature(ThermalStress section) {
        double distance = QuenchMaterial.ROOM_TEMPERATURE - leaving;
        int steps = (int) (Math.abs(distance) / UNIFORM_STEP) + 1;
        double[] uniform = new double[nodes];
        for (int i = 1; i <= steps; i++) {
            Arrays.fill(uniform, leaving + distance * i / steps);
            section.follow(uniform);
        }
    }
}
