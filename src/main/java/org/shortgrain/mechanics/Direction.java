package org.shortgrain.mechanics;

/**
 * A direction in the axes of the part: a unit vector. Opposite directions are the same line to a normal stress.
 *
 * @param x component along X
 * @param y component along Y
 * @param z component along Z
 */
public record Direction(double x, double y, double z) {

    /** Part axis X. */
    public static final Direction X = new Direction(1, 0, 0);
    /** Part axis Y. */
    public static final Direction Y = new Direction(0, 1, 0);
    /** Part axis Z. */
    public static final Direction Z = new Direction(0, 0, 1);

    /** Rounding that a product of unit vectors may carry. */
    private static final double UNIT_ROUNDING = 1e-9;

    /** Refuses anything but unit length; {@link #along} makes it. */
    public Direction {
        double length = Math.sqrt(x * x + y * y + z * z);
        if (!(Math.abs(length - 1) <= UNIT_ROUNDING)) {
            throw new IllegalArgumentException("not a unit vector, length " + length);
        }
    }

    /**
     * {@return the direction of a vector of any length}
     *
     * @param x component along X
     * @param y component along Y
     * @param z component along Z
     * @throws IllegalArgumentException if the vector has no length
     */
    public static Direction along(double x, double y, double z) {
        double length = Math.sqrt(x * x + y * y + z * z);
        if (!(length > 0 && length < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("no direction: (" + x + ", " + y + ", " + z + ")");
        }
        return new Direction(x / length, y / length, z / length);
    }

    /**
     * {@return the cosine of the angle to another direction}
     *
     * @param other the other direction
     */
    public double dot(Direction other) {
        return x * other.x + y * other.y + z * other.z;
    }

    /**
     * {@return the angle (rad) between the two lines, from 0 to pi/2}
     *
     * @param other the other direction
     */
    public double angleTo(Direction other) {
        double cosine = Math.abs(dot(other));
        return cosine < 1 ? Math.acos(cosine) : 0;
    }

    /**
     * {@return the direction at right angles to both, right-handed}
     *
     * @param other a direction that is not parallel to this one
     * @throws IllegalArgumentException if both are parallel
     */
    public Direction normalTo(Direction other) {
        return along(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    /** {@return some direction at right angles to this one} */
    public Direction anyNormal() {
        double ax = Math.abs(x);
        double ay = Math.abs(y);
        double az = Math.abs(z);
        Direction farthest = ax <= ay && ax <= az ? X : ay <= az ? Y : Z;
        return normalTo(farthest);
    }

    /**
     * {@return this direction turned towards another}
     *
     * @param other a direction at right angles to this one
     * @param angle angle of the turn (rad)
     */
    public Direction turnedTowards(Direction other, double angle) {
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        return along(c * x + s * other.x, c * y + s * other.y, c * z + s * other.z);
    }
}
