package org.shortgrain.mechanics.machining;

import java.util.OptionalDouble;
import org.shortgrain.mechanics.quench.QuenchedSection;

/**
 * Stress near the quenched edges (narrow faces) of a wide section, which the plate model does not see.
 *
 * <p>Along the thickness the middle of a plate carries none; inside each edge it reaches 0.41 to 0.45 of the W-temper
 * yield, largest 0.4 thicknesses in, above a quarter and below 0.7 thicknesses. Along L it reaches 1.35 of the yield
 * there. Trimming the edge after heat treatment lays both bare. Basis: own two-dimensional computation of bars 75 mm
 * thick and two to four times as wide in cold water; for other quenches the ratio to the round bar is carried over.
 */
final class EdgeBand {

    /** Stress along the thickness over the W-temper yield. */
    static final double THROUGH = 0.45;
    /** Stress along L over the W-temper yield. */
    static final double ALONG = 1.35;
    /** Stress along the thickness over the core stress across a round bar of the same thickness: 65 against 87 MPa. */
    static final double THROUGH_OF_BAR = 0.75;
    /** Stress along L over the core stress along a round bar of the same thickness: 200 against 225 MPa. */
    static final double ALONG_OF_BAR = 0.9;
    /** Distance from the edge, over the thickness, beyond which the edge is no longer felt. */
    private static final double REACH = 0.7;

    private EdgeBand() {
    }

    /** Whether the band may reach the surface: only a stated distance beyond its reach says no. */
    static boolean mayReach(QuenchedSection section, OptionalDouble edgeDistance) {
        return edgeDistance.isEmpty() || section.rulingThickness().isEmpty()
                || edgeDistance.getAsDouble() <= REACH * section.rulingThickness().getAsDouble();
    }

    /** Whether the surface is known to lie in the band. */
    static boolean reaches(QuenchedSection section, OptionalDouble edgeDistance) {
        return edgeDistance.isPresent() && mayReach(section, edgeDistance);
    }
}
