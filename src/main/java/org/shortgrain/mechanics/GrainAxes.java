package org.shortgrain.mechanics;

import org.shortgrain.terms.GrainDirection;

/**
 * How the grain lies in the part: three directions at right angles, in part axes.
 *
 * @param l  longitudinal
 * @param lt long transverse
 * @param st short transverse
 */
public record GrainAxes(Direction l, Direction lt, Direction st) {

    /** Grain along the part axes: L along X, LT along Y, ST along Z. */
    public static final GrainAxes ALONG_PART_AXES = new GrainAxes(Direction.X, Direction.Y, Direction.Z);

    /** Rounding that directions worked out from angles may carry. */
    private static final double RIGHT_ANGLE_ROUNDING = 1e-6;

    /** Refuses axes that are not at right angles to one another. */
    public GrainAxes {
        if (Math.abs(l.dot(lt)) > RIGHT_ANGLE_ROUNDING || Math.abs(lt.dot(st)) > RIGHT_ANGLE_ROUNDING
                || Math.abs(st.dot(l)) > RIGHT_ANGLE_ROUNDING) {
            throw new IllegalArgumentException("grain directions are not at right angles: " + l + ", " + lt + ", " + st);
        }
    }

    /**
     * {@return the direction in part axes of a grain direction}
     *
     * @param grain the grain direction
     */
    public Direction of(GrainDirection grain) {
        return switch (grain) {
            case L -> l;
            case LT -> lt;
            case ST -> st;
        };
    }

    /**
     * {@return these axes where the flow lines are tilted: turned about one of them}
     *
     * <p>About L, LT turns towards ST; about LT, ST turns towards L; about ST, L turns towards LT.
     *
     * @param about the grain direction that stays
     * @param angle the tilt (rad)
     */
    public GrainAxes tilted(GrainDirection about, double angle) {
        return switch (about) {
            case L -> new GrainAxes(l, lt.turnedTowards(st, angle), st.turnedTowards(lt, -angle));
            case LT -> new GrainAxes(l.turnedTowards(st, -angle), lt, st.turnedTowards(l, angle));
            case ST -> new GrainAxes(l.turnedTowards(lt, angle), lt.turnedTowards(l, -angle), st);
        };
    }
}
