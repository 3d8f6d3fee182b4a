package org.shortgrain.mechanics;

/**
 * A number with the range that it may truly have.
 *
 * @param value best estimate
 * @param low   lower end of the range
 * @param high  upper end of the range
 */
public record Band(double value, double low, double high) {

    /** Refuses anything but low &lt;= value &lt;= high. */
    public Band {
        if (!(low <= value && value <= high)) {
            throw new IllegalArgumentException("not a band: " + low + " <= " + value + " <= " + high);
        }
    }

    /**
     * {@return a number that is known exactly}
     *
     * @param value the number
     */
    public static Band exact(double value) {
        return new Band(value, value, value);
    }

    /**
     * {@return the sum with another band, as if both reached their ends together}
     *
     * @param other the other band
     */
    public Band plus(Band other) {
        return new Band(value + other.value, low + other.low, high + other.high);
    }

    /**
     * {@return the band multiplied by a factor that is not negative}
     *
     * @param factor a factor, zero or more
     */
    public Band times(double factor) {
        if (factor < 0) {
            throw new IllegalArgumentException("negative factor " + factor);
        }
        return new Band(value * factor, low * factor, high * factor);
    }

    /** {@return whether the range has no width} */
    public boolean isExact() {
        return low == high;
    }

    // written out: what the compiler leaves to the runtime costs a cold start several milliseconds
    @Override
    public boolean equals(Object other) {
        return other instanceof Band that && Double.compare(value, that.value) == 0 && Double.compare(low, that.low) == 0
                && Double.compare(high, that.high) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * (31 * Double.hashCode(value) + Double.hashCode(low)) + Double.hashCode(high);
    }
}
