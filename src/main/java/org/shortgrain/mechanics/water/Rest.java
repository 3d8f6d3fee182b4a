package org.shortgrain.mechanics.water;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.shortgrain.mechanics.Band;

/**
 * A way in which a part rests for long, with the tilts that it takes there.
 *
 * @param name  in words, such as "on the ground"
 * @param tilts the tilts looked at, at least one
 */
public record Rest(String name, List<Tilt> tilts) {

    /** Steepest tilt of the grid that stands for any attitude, and its step (degrees). */
    private static final int STEEPEST = 85;
    private static final int STEP = 5;

    /** Copies the list and refuses a rest without a tilt. */
    public Rest {
        tilts = List.copyOf(tilts);
        if (tilts.isEmpty()) {
            throw new IllegalArgumentException("no tilt " + name);
        }
    }

    /**
     * {@return a rest with ranges of pitch and roll: looked at are their ends, their best values, and level where a range
     * passes through it}
     *
     * @param name  in words
     * @param pitch pitch (rad)
     * @param roll  roll (rad)
     */
    public static Rest of(String name, Band pitch, Band roll) {
        List<Tilt> tilts = new ArrayList<>();
        for (double one : points(pitch)) {
            for (double other : points(roll)) {
                tilts.add(new Tilt(one, other));
            }
        }
        return new Rest(name, tilts);
    }

    private static TreeSet<Double> points(Band band) {
        TreeSet<Double> points = new TreeSet<>(List.of(band.low(), band.value(), band.high()));
        if (band.low() < 0 && band.high() > 0) {
            points.add(0.0);
        }
        return points;
    }

    /** {@return what stands for an attitude that is not declared: every way in which an opening can face up, on a grid of 5
     * degrees} */
    public static Rest any() {
        List<Tilt> tilts = new ArrayList<>();
        for (int pitch = -STEEPEST; pitch <= STEEPEST; pitch += STEP) {
            for (int roll = -STEEPEST; roll <= STEEPEST; roll += STEP) {
                tilts.add(new Tilt(Math.toRadians(pitch), Math.toRadians(roll)));
            }
        }
        return new Rest("in any attitude", tilts);
    }

    /** {@return the range of its pitch (rad)} */
    Band pitch() {
        return range(tilts.stream().mapToDouble(Tilt::pitch).toArray());
    }

    /** {@return the range of its roll (rad)} */
    Band roll() {
        return range(tilts.stream().mapToDouble(Tilt::roll).toArray());
    }

    private static Band range(double... values) {
        double low = java.util.Arrays.stream(values).min().orElseThrow();
        double high = java.util.Arrays.stream(values).max().orElseThrow();
        return new Band((low + high) / 2, low, high);
    }

    // written out: what the compiler leaves to the runtime costs a cold start several milliseconds
    @Override
    public int hashCode() {
        return 31 * name.hashCode() + tilts.hashCode();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Rest that && name.equals(that.name) && tilts.equals(that.tilts);
    }
}
