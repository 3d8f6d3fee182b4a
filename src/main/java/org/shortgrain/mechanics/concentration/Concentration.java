package org.shortgrain.mechanics.concentration;

import java.util.List;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Computed.Input;
import org.shortgrain.mechanics.Computed.Validity;
import org.shortgrain.mechanics.Extremes;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.terms.Citation;

/**
 * A shape that raises the stress at its surface above the nominal one.
 *
 * <p>The range of a factor is that of the limits of its dimensions, searched on a grid through them, since a factor on
 * the net section turns with the depth of a step: none for no step, none again where little is left of the section.
 */
public sealed interface Concentration permits HoleInWidePlate, EllipticHole, HoleInStrip, CrossHoleInRoundBar,
        ShoulderFillet, EdgeNotches {

    /** Points across the limits of each dimension; over a tolerance of 10 % a turn is met to better than 0.1 %. */
    int GRID_POINTS = 9;

    /** {@return what it is, in the words of the trade} */
    String name();

    /** {@return the section whose nominal stress the factor multiplies} */
    Section nominal();

    /** {@return the equation in plain symbols} */
    String equation();

    /** {@return the dimensions that go in, in the order that {@link #factor} takes them} */
    List<Given> dimensions();

    /** {@return the same dimensions as inputs of a result} */
    List<Input> inputs();

    /**
     * {@return the factor for given dimensions}
     *
     * @param dimensions in the order of {@link #dimensions} (m)
     */
    double factor(double... dimensions);

    /** {@return whether the dimensions lie in the range of the equation} */
    Validity validity();

    /** {@return where the equation comes from} */
    List<Citation> sources();

    /** {@return the factor with its range, {@code concentration.factor}} */
    default Computed compute() {
        Band[] bands = dimensions().stream().map(Given::value).toArray(Band[]::new);
        return new Computed("concentration.factor", "Concentration factor of " + name() + ", on the " + nominal().word()
                + " section", SiUnit.ONE, Extremes.onGrid(this::factor, GRID_POINTS, bands), equation(), inputs(), List.of(),
                "limits of the dimensions", validity(), sources(), List.of(), List.of());
    }
}
