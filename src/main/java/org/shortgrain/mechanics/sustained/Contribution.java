package org.shortgrain.mechanics.sustained;

import java.util.Optional;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Computed.Validity;
import org.shortgrain.mechanics.Direction;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.StressTensor;
import org.shortgrain.mechanics.uncertainty.Distribution;

/**
 * One source of stress at the point judged: a state of stress of known shape and uncertain size.
 *
 * @param source   what causes it, in the words of the trade
 * @param standing whether it counts
 * @param shape    state of stress per unit of size, in part axes
 * @param size     its size and range (Pa)
 * @param spread   the distribution that the range stands for
 * @param validity whether the size was computed inside the range of its method
 */
public record Contribution(String source, Standing standing, StressTensor shape, Given size, Distribution.Shape spread,
        Validity validity) {

    private static final Validity STATED = new Validity(true, "Stated.");

    /**
     * {@return a lasting contribution whose size was computed}
     *
     * @param source what causes it
     * @param shape  state of stress per unit of size, in part axes
     * @param size   the computed size (Pa)
     * @param spread the distribution that its range stands for
     */
    public static Contribution computed(String source, StressTensor shape, Computed size, Distribution.Shape spread) {
        return new Contribution(source, Standing.SUSTAINED, shape, new Given(size.value(), size.id(), Optional.empty()),
                spread, size.validity());
    }

    /**
     * {@return a lasting contribution whose size is stated}
     *
     * @param source what causes it
     * @param shape  state of stress per unit of size, in part axes
     * @param size   the stated size (Pa)
     * @param spread the distribution that its range stands for
     */
    public static Contribution stated(String source, StressTensor shape, Given size, Distribution.Shape spread) {
        return new Contribution(source, Standing.SUSTAINED, shape, size, spread, STATED);
    }

    /**
     * {@return the shape of a stress that acts along one direction only, for {@link #computed} and {@link #stated}}
     *
     * @param direction the direction, in part axes
     */
    public static StressTensor along(Direction direction) {
        return StressTensor.uniaxial(direction, 1);
    }

    /**
     * {@return the same contribution with another standing}
     *
     * @param standing the standing
     */
    public Contribution as(Standing standing) {
        return new Contribution(source, standing, shape, size, spread, validity);
    }

    /** {@return whether it counts} */
    public boolean counts() {
        return standing == Standing.SUSTAINED;
    }

    /**
     * {@return its normal stress along a direction (Pa)}
     *
     * @param direction the direction, in part axes
     */
    public Band stressAlong(Direction direction) {
        double factor = shape.normal(direction);
        Band s = size.value();
        return factor >= 0 ? s.times(factor)
                : new Band(factor * s.value(), factor * s.high(), factor * s.low());
    }

    /** {@return its size as a distribution (Pa)} */
    public Distribution distribution() {
        return spread.over(size.value());
    }
}
