package org.shortgrain.mechanics.water;

/**
 * How a part rests: pitched about its width, nose up positive, so that the rear end of a length is low; then rolled about
 * its length.
 *
 * @param pitch pitch (rad)
 * @param roll  roll (rad); positive: the side from which the width is counted is low
 */
public record Tilt(double pitch, double roll) {

    /** The drawn position. */
    public static final Tilt LEVEL = new Tilt(0, 0);
    /** Below this share of gravity across the floor an opening lies on edge: rounding of a right angle. */
    private static final double ON_EDGE = 1e-9;

    /** {@return whether what opens upwards in the drawn position still opens upwards, however askew} */
    public boolean facesUp() {
        return Math.cos(pitch) * Math.cos(roll) > ON_EDGE;
    }

    /** {@return rise over run of the drawn floor along its length, from the rear} */
    public double along() {
        return Math.tan(pitch) / Math.cos(roll);
    }

    /** {@return rise over run of the drawn floor across its width} */
    public double across() {
        return Math.tan(roll);
    }

    /** {@return the same position upside down} */
    public Tilt inverted() {
        return new Tilt(pitch, roll + Math.PI);
    }

    /** {@return the angle between the drawn floor and the horizontal (rad), 0 to pi} */
    public double steepness() {
        return Math.acos(Math.cos(pitch) * Math.cos(roll));
    }

    // written out: what the compiler leaves to the runtime costs a cold start several milliseconds
    @Override
    public int hashCode() {
        return 31 * Double.hashCode(pitch) + Double.hashCode(roll);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Tilt that && Double.compare(pitch, that.pitch) == 0 && Double.compare(roll, that.roll) == 0;
    }
}
