package org.shortgrain.mechanics.crack;

import java.util.OptionalDouble;

/**
 * How long until a place is to be looked at (again), from the time that a crack takes from a first size to the critical one.
 *
 * <p>{@code interval = time / factor}, no longer than a cap by the calendar: growth that is not computed, or slow, never
 * lengthens it past the practice of the trade. Half of the time is the published practice (EN-SB-12-003, restating
 * JSSG-2006, read). No interval is negative or without end.
 */
public sealed interface InspectionInterval {

    /** Words that every interval without a length bears. */
    String NOT_INSPECTABLE = "not inspectable";

    /** {@return its length (s); 0 where the place is not inspectable} */
    double length();

    /** {@return the time from the first size to the critical one (s); empty if the crack does not grow} */
    OptionalDouble window();

    /** Set by the growth of the crack.
     *
     * @param length the interval (s)
     * @param time   time from the first size to the critical one (s)
     */
    record ByGrowth(double length, double time) implements InspectionInterval {
        @Override
        public OptionalDouble window() {
            return OptionalDouble.of(time);
        }
    }

    /** Set by the cap: the crack grows slowly, or does not grow at its first size as far as K_ISCC tells.
     *
     * @param length the cap (s)
     * @param window time from the first size to the critical one (s); empty if the crack does not grow
     */
    record ByCalendar(double length, OptionalDouble window) implements InspectionInterval {
    }

    /** The first size is already critical. */
    record AlreadyCritical() implements InspectionInterval {
        @Override
        public OptionalDouble window() {
            return OptionalDouble.of(0);
        }

        @Override
        public double length() {
            return 0;
        }
    }

    /** The crack grows faster than anybody inspects.
     *
     * @param wanted the interval that growth asks for (s)
     * @param time   time from the first size to the critical one (s)
     */
    record TooFast(double wanted, double time) implements InspectionInterval {
        @Override
        public OptionalDouble window() {
            return OptionalDouble.of(time);
        }

        @Override
        public double length() {
            return 0;
        }
    }

    /** {@return whether no interval helps} */
    default boolean isNotInspectable() {
        return this instanceof AlreadyCritical || this instanceof TooFast;
    }

    /**
     * What sets an interval beside the growth.
     *
     * @param factor   what the time is divided by, 1 or more
     * @param cap      longest interval (s)
     * @param shortest shortest interval that is kept in practice (s), at most the cap
     */
    record Practice(double factor, double cap, double shortest) {

        /** Refuses a factor that lengthens, and bounds that cross. */
        public Practice {
            if (!(factor >= 1 && shortest > 0 && cap >= shortest)) {
                throw new IllegalArgumentException("factor " + factor + ", cap " + cap + " s, shortest " + shortest + " s");
            }
        }
    }

    /**
     * {@return the interval}
     *
     * @param curve    stress intensity against depth
     * @param law      velocity against stress intensity
     * @param from     first depth (m)
     * @param critical critical depth (m)
     * @param practice factor and bounds
     */
    static InspectionInterval of(IntensityCurve curve, GrowthLaw law, double from, double critical, Practice practice) {
        if (from >= critical) {
            return new AlreadyCritical();
        }
        OptionalDouble window = GrowthLife.between(curve, law, from, critical);
        if (window.isEmpty()) {
            return new ByCalendar(practice.cap(), window);
        }
        double wanted = window.getAsDouble() / practice.factor();
        if (wanted < practice.shortest()) {
            return new TooFast(wanted, window.getAsDouble());
        }
        return wanted < practice.cap() ? new ByGrowth(wanted, window.getAsDouble())
                : new ByCalendar(practice.cap(), window);
    }
}
