package org.shortgrain.mechanics.water;

import java.util.OptionalDouble;

/**
 * A hole in the floor of a hollow, as far as it lets water out: down to the lowest point of its edge.
 *
 * @param centre   place of its centre along the length from the rear (m)
 * @param across   place of its centre across the width (m); empty where it is not known, and then the high side is taken
 *                 at every attitude
 * @param diameter diameter (m), 0 or more
 * @param lip      height of its edge over the floor (m), of a boss or a sleeve
 */
public record Outlet(double centre, OptionalDouble across, double diameter, double lip) {

    /** Refuses a negative size. */
    public Outlet {
        if (!(diameter >= 0 && lip >= 0)) {
            throw new IllegalArgumentException("no outlet: diameter " + diameter + " m, lip " + lip + " m");
        }
    }

    /**
     * {@return a hole that lets out whatever lies above one point}
     *
     * @param centre place along the length from the rear (m)
     * @param across place across the width (m)
     */
    public static Outlet point(double centre, double across) {
        return new Outlet(centre, OptionalDouble.of(across), 0, 0);
    }

    private double radius() {
        return diameter / 2;
    }

    /** {@return the rear, middle and front of its edge along the length (m), kept within a floor} */
    double[] places(Floor floor) {
        return new double[] {within(floor, centre - radius()), within(floor, centre),
            within(floor, centre + radius())};
    }

    private static double within(Floor floor, double x) {
        return Math.max(floor.rear(), Math.min(floor.front(), x));
    }

    /**
     * {@return how far over the low side of the floor its edge lies (m), at the rear, middle and front: the edge is known
     * by four points, of which the lowest is not below the lowest of the circle, so that no water is forgotten}
     *
     * @param slope rise over run of the floor across its width
     * @param width width of the floor (m)
     */
    double[] rises(double slope, double width) {
        double fromLow = fromLowSide(slope, width);
        double centreRise = Math.abs(slope) * fromLow;
        double nearRise = Math.abs(slope) * Math.max(0, fromLow - radius());
        return new double[] {lip + centreRise, lip + nearRise, lip + centreRise};
    }

    private double fromLowSide(double slope, double width) {
        if (across.isEmpty()) {
            return Math.max(width - radius(), width / 2);
        }
        return slope >= 0 ? across.getAsDouble() : width - across.getAsDouble();
    }
}
