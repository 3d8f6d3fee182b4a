package org.shortgrain.mechanics.sustained;

import java.util.List;
import java.util.Optional;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Direction;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.GrainAxes;
import org.shortgrain.mechanics.uncertainty.Distribution.Shape;

/** Contributions and points that the tests of this package share; stresses in MPa, ST along Z. */
final class Points {

    static final double MPA = 1e6;

    private Points() {
    }

    static Given mpa(double value, double low, double high) {
        return new Given(new Band(value * MPA, low * MPA, high * MPA), "test", Optional.empty());
    }

    static Given mpa(double value) {
        return mpa(value, value, value);
    }

    static Contribution shortTransverse(String source, double value, double low, double high) {
        return Contribution.stated(source, Contribution.along(Direction.Z), mpa(value, low, high), Shape.RECTANGULAR);
    }

    static SustainedPoint point(double uncertainty, Contribution... contributions) {
        return new SustainedPoint(GrainAxes.ALONG_PART_AXES, uncertainty, List.of(contributions));
    }
}
