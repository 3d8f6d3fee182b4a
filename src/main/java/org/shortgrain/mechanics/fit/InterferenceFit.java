package org.shortgrain.mechanics.fit;

import java.util.List;
import java.util.Optional;
import org.shortgrain.mechanics.Given;

/**
 * A ring or pin held in a hole by interference, as the drawing gives it.
 *
 * @param interference  the interference as assembled
 * @param outerDiameter outside diameter of the outer part (m): for a lug twice the smallest distance from the hole
 *                      centre to an edge, since a thinner wall gives the higher hoop stress; empty for a hole far from
 *                      any edge (wide plate)
 * @param bore          bore of the inner part (m); exactly 0 for a solid pin
 * @param outer         material of the outer part
 * @param inner         material of the inner part
 * @param assembly      temperature at which the diameters were measured (degC)
 * @param lasting       every temperature at which the part stays for long, such as cold parking (degC); the worst
 *                      counts
 */
public record InterferenceFit(Interference interference, Optional<Given> outerDiameter, Given bore, FitMaterial outer,
        FitMaterial inner, Given assembly, List<Given> lasting) {

    /**
     * Copies the list and refuses rings that do not fit into one another over the whole of their ranges.
     *
     * @throws IllegalArgumentException if not 0 &lt;= bore &lt; interface &lt; outside
     */
    public InterferenceFit {
        lasting = List.copyOf(lasting);
        double d = interference.diameter();
        boolean nested = bore.value().low() >= 0 && bore.value().high() < d
                && outerDiameter.map(o -> o.value().low() > d).orElse(true);
        if (!nested) {
            throw new IllegalArgumentException("the bore " + bore.value() + " m, the interface " + d
                    + " m and the outside " + outerDiameter.map(Given::value) + " m are not one within the other");
        }
    }
}
