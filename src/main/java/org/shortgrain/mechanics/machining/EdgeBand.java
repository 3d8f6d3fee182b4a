package org.shortgrain.mechanics.machining;

import java.util.OptionalDouble;
import org.shortgrain.mechanics.quench.QuenchedSection;

/**
 * Stress along the thickness of a wide section, near its quenched edges.
 *
 * <p>The middle of a plate carries none. Inside each as-quenched edge (narrow face) it reaches 0.41 to 0.45 of the W-temper
 * yield, largest 0.4 thicknesses in, above a quarter and below 0.7 thicknesses. Trimming the edge after heat treatment
 * lays it bare. Basis: own two-dimensional computation of bars 75 mm thick and two to four times as wide in cold water.
 */
final class EdgeBand {

    /** Share of the W-temper yield in the band. */
    static final double SHARE = 0.45;
    /** Share of the transverse core stress of a round bar of the same thickness: 62 to 67 against 87 MPa. */
    static final double SHARE_OF_BAR = 0.75;
    /** Distance from the edge, over the thickness, beyond which the stress along the thickness has died away. */
    static final double REACH = 0.7;

    private EdgeBand() {
    }

    /** The largest stress along the thickness, given its value in the band; nothing where the edge is known to be far. */
    static double shortTransverse(double yield, QuenchedSection section, OptionalDouble edgeDistance) {
        return reaches(section, edgeDistance) ? SHARE * yield : 0;
    }

    /** Whether the band may reach the surface: only a stated distance beyond its reach says no. */
    static boolean reaches(QuenchedSection section, OptionalDouble edgeDistance) {
        return edgeDistance.isEmpty() || section.rulingThickness().isEmpty()
                || edgeDistance.getAsDouble() <= REACH * section.rulingThickness().getAsDouble();
    }
}
