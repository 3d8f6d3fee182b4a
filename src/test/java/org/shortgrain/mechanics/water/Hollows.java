package org.shortgrain.mechanics.water;

import java.util.List;
import java.util.OptionalDouble;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Given;

/** Hollows that the tests of this package share; lengths in millimetres, angles in degrees, volumes in millilitres. */
final class Hollows {

    static final double MM = 1e-3;
    static final double ML = 1e-6;

    private Hollows() {
    }

    static Given given(double millimetres) {
        return Given.exact(millimetres * MM, "test");
    }

    static Basin box(double length, double width, double depth) {
        return new Basin(Floor.box(length * MM, depth * MM), width * MM, OptionalDouble.of(depth * MM), true);
    }

    static Tilt tilt(double pitch, double roll) {
        return new Tilt(Math.toRadians(pitch), Math.toRadians(roll));
    }

    static Rest rest(String name, double pitch, double roll) {
        return Rest.of(name, Band.exact(Math.toRadians(pitch)), Band.exact(Math.toRadians(roll)));
    }

    /** A hole whose nearest point to the rear lies at a distance from the rear. */
    static List<Outlet> holeAt(double millimetres) {
        return List.of(Outlet.point(millimetres * MM, 0));
    }
}
