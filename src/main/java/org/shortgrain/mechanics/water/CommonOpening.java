package org.shortgrain.mechanics.water;

import java.util.List;
import java.util.Locale;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Computed.Validity;
import org.shortgrain.mechanics.Extremes;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.SiUnit;

/**
 * What is left open of a drain hole that meets the hole of a neighbour off centre:
 * {@code w = min(d1, d2, (d1 + d2)/2 - e)}, not below 0.
 *
 * <p>Range of validity: round holes in parts that lie on one another. Source: own derivation.
 *
 * @param hole      diameter of the drain hole d1 (m)
 * @param neighbour diameter of the hole in the neighbour d2 (m)
 * @param offset    distance of their centres e (m), 0 or more
 */
public record CommonOpening(Given hole, Given neighbour, Given offset) {

    /** {@return the width of the common opening (m)} */
    public Band width() {
        return Extremes.of(v -> Math.max(0, Math.min(Math.min(v[0], v[1]), (v[0] + v[1]) / 2 - v[2])), hole.value(),
                neighbour.value(), offset.value());
    }

    /** {@return the width of the common opening, {@code water.common-opening} (m)} */
    public Computed computed() {
        return new Computed("water.common-opening", "Width left open between a drain hole and the hole of a neighbour",
                SiUnit.METRE, width(), "w = max(0, min(d1, d2, (d1 + d2)/2 - e))",
                List.of(hole.as("d1", "diameter of the drain hole", SiUnit.METRE),
                        neighbour.as("d2", "diameter of the hole in the neighbour", SiUnit.METRE),
                        offset.as("e", "distance of their centres", SiUnit.METRE)),
                List.of(), "limits of every input",
                new Validity(true, "Round holes in parts that lie on one another."),
                List.of(Sources.OFFSET_HOLES, Sources.LEAST_DRAIN),
                List.of(width().low() >= DrainHole.LEAST - DrainHole.METRIC_ALLOWANCE
                        ? "The common opening is not below the least drain hole of the trade."
                        : String.format(Locale.ROOT, "The common opening is below %.3f mm, the least drain hole of the"
                        + " trade.", DrainHole.LEAST * 1e3)), List.of());
    }
}
