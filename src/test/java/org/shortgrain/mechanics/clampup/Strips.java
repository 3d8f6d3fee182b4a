package org.shortgrain.mechanics.clampup;

import java.util.Optional;
import org.shortgrain.mechanics.Given;

/** Strips of 7075-like aluminium that the tests of this package share. */
final class Strips {

    static final double MM = 1e-3;
    static final double MPA = 1e6;

    private Strips() {
    }

    /** A strip 25 mm wide or, with width 0, of unknown width; lengths in millimetres. */
    static Strip strip(Support support, double span, double thickness, double width) {
        return new Strip(support, Given.exact(span * MM, "test"), Given.exact(thickness * MM, "test"),
                width == 0 ? Optional.empty() : Optional.of(Given.exact(width * MM, "test")),
                Given.exact(71.7e9, "test"), Given.exact(0.33, "test"), Optional.of(Given.exact(460 * MPA, "test")));
    }

    static PulledShut pulledShut(Strip strip, double gapMillimetres) {
        return new PulledShut(strip, Given.exact(gapMillimetres * MM, "test"), new Shim.None(), Optional.empty());
    }
}
