package org.shortgrain.mechanics.water;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Computed.Step;
import org.shortgrain.mechanics.Computed.Validity;
import org.shortgrain.mechanics.Extremes;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;

/**
 * Time in which a hollow empties through its holes:
 * {@code t = 2 A (sqrt(h1) - sqrt(h2))/(Cd a sqrt(2 g))}, outflow under its own falling head.
 *
 * <p>Range of validity: upright walls (for a hollow that narrows downwards this is an upper bound), air free to come in,
 * free fall below the hole, head above two hole diameters, Reynolds number of the jet above 10,000. Below that the flow is
 * slower than computed, and surface tension ends it at the head h2.
 *
 * @param plan  area of the water surface A (m2), above 0
 * @param holes area of all holes that count a (m2), above 0
 * @param full  head over the holes at first h1 (m), 0 or more
 * @param left  head at which surface tension stops the flow h2 (m), 0 or more
 */
public record DrainTime(Given plan, Given holes, Given full, Given left) {

    /** Discharge coefficient of a plain sharp-edged hole: a page on process engineering, quoting Midoux (secondary). */
    static final double SHARP_EDGE = 0.60;
    /** Least head, in hole diameters, at which the coefficient holds. */
    private static final double LEAST_HEAD = 2;
    /** Least Reynolds number of the jet at which the coefficient holds. */
    private static final double LEAST_REYNOLDS = 1e4;
    /** Kinematic viscosity of water at 20 degC (m2/s); handbooks, from memory. */
    private static final double VISCOSITY = 1.004e-6;

    /** Refuses sizes that cannot be. */
    public DrainTime {
        if (!(plan.value().low() > 0 && holes.value().low() > 0 && full.value().low() >= 0 && left.value().low() >= 0)) {
            throw new IllegalArgumentException("no outflow: plan " + plan.value() + ", holes " + holes.value()
                    + ", heads " + full.value() + ", " + left.value());
        }
    }

    /**
     * {@return time in which the head falls (s)}
     *
     * @param plan        area of the water surface (m2)
     * @param hole        area of the hole (m2)
     * @param coefficient discharge coefficient; 1 without losses
     * @param gravity     gravity (m/s2)
     * @param from        head at first (m)
     * @param to          head at last (m); not above the first, or nothing flows
     */
    public static double seconds(double plan, double hole, double coefficient, double gravity, double from, double to) {
        return from <= to ? 0
                : 2 * plan * (Math.sqrt(from) - Math.sqrt(to)) / (coefficient * hole * Math.sqrt(2 * gravity));
    }

    /** {@return the time from full to where surface tension stops the flow, {@code water.drain-time} (s)} */
    public Computed computed() {
        Given coefficient = new Given(Band.exact(SHARP_EDGE), "plain sharp-edged hole", Optional.of(Sources.DISCHARGE));
        return new Computed("water.drain-time", "Time in which the hollow empties through its holes",
                SiUnit.SECOND, time(left.value()), "t = 2 A (sqrt(h1) - sqrt(h2))/(Cd a sqrt(2 g))",
                List.of(plan.as("A", "area of the water surface", SiUnit.SQUARE_METRE),
                        full.as("h1", "head when full", SiUnit.METRE),
                        left.as("h2", "head at which surface tension stops the flow", SiUnit.METRE),
                        coefficient.as("Cd", "discharge coefficient", SiUnit.ONE),
                        holes.as("a", "area of the holes that count", SiUnit.SQUARE_METRE), Liquid.gravity()),
                List.of(new Step("t0", "time to the last drop, were there no surface tension", SiUnit.SECOND,
                        time(Band.exact(0)))),
                "limits of every input", validity(), List.of(Sources.TORRICELLI, Sources.DISCHARGE),
                List.of("Upright walls, so that a hollow that narrows downwards empties sooner; free entry of air; the last"
                        + " millimetres run slower."), List.of());
    }

    private Band time(Band last) {
        return Extremes.of(v -> seconds(v[0], v[1], SHARP_EDGE, Liquid.GRAVITY, v[2], v[3]), plan.value(), holes.value(),
                full.value(), last);
    }

    private Validity validity() {
        double diameter = Math.sqrt(4 * holes.value().high() / Math.PI);
        double head = full.value().low();
        double reynolds = diameter * Math.sqrt(2 * Liquid.GRAVITY * head) / VISCOSITY;
        boolean inside = head >= LEAST_HEAD * diameter && reynolds >= LEAST_REYNOLDS;
        return new Validity(inside, String.format(Locale.ROOT, "At the start: head %.1f diameters of one hole of the whole"
                + " area (from %.0f), Reynolds number %.0f (from %.0f); near the end the flow is slower than computed.",
                head / diameter, LEAST_HEAD, reynolds, LEAST_REYNOLDS));
    }
}
