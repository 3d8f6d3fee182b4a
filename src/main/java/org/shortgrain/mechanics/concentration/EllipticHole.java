package org.shortgrain.mechanics.concentration;

import java.util.List;
import org.shortgrain.mechanics.Computed.Input;
import org.shortgrain.mechanics.Computed.Validity;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.terms.Citation;

/**
 * Elliptic hole far from any edge: {@code Kt = 1 + 2 a/b}. Exact (memory). Serves slots and pits by their tip radius as
 * well, since a/b = sqrt(a/rho).
 *
 * @param across semi-axis a across the load (m)
 * @param along  semi-axis b along the load (m)
 */
public record EllipticHole(Given across, Given along) implements Concentration {

    /** Refuses an axis without length. */
    public EllipticHole {
        if (!(across.value().low() > 0 && along.value().low() > 0)) {
            throw new IllegalArgumentException("both semi-axes must be above zero");
        }
    }

    @Override
    public String name() {
        return "an elliptic hole in a wide plate";
    }

    @Override
    public Section nominal() {
        return Section.GROSS;
    }

    @Override
    public String equation() {
        return "Kt = 1 + 2 a/b";
    }

    @Override
    public List<Given> dimensions() {
        return List.of(across, along);
    }

    @Override
    public List<Input> inputs() {
        return List.of(across.as("a", "semi-axis across the load", SiUnit.METRE),
                along.as("b", "semi-axis along the load", SiUnit.METRE));
    }

    @Override
    public double factor(double... dimensions) {
        return 1 + 2 * dimensions[0] / dimensions[1];
    }

    @Override
    public Validity validity() {
        return new Validity(true, "Plate wide against the hole, tension one way, elastic.");
    }

    @Override
    public List<Citation> sources() {
        return List.of(Sources.INGLIS);
    }
}
