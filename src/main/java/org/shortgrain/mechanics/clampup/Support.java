package org.shortgrain.mechanics.clampup;

/**
 * How a strip is held while a gap is pulled shut.
 *
 * <p>Force {@code P = c E I g / L^3} and peak surface stress {@code sigma = k E t g / L^2} follow from standard beam
 * cases (own derivation; the cantilever deflection F L^3/(3 E I) is in Brown, Marks' Calculations for Machine Design,
 * 2005, eq. 2.62, read). The simply supported row equals the three-point bent beam of ASTM G39, 6 E t y/H^2 (memory).
 */
public enum Support {
    /** Held at one end, the free end pulled by the gap; peak at the root. */
    CANTILEVER(3, 1.5, "at the root"),
    /** Both ends clamped and kept parallel, one offset by the gap, as at a joggle or step; peak at both ends. */
    STEP(12, 3, "at both ends"),
    /** Simply supported over the span, pulled at midspan; peak at midspan. */
    SIMPLY_SUPPORTED(48, 6, "at midspan"),
    /** Both ends clamped, pulled at midspan; peak at ends and midspan. */
    CLAMPED(192, 12, "at the ends and at midspan");

    private final double forceFactor;
    private final double stressFactor;
    private final String peak;

    Support(double forceFactor, double stressFactor, String peak) {
        this.forceFactor = forceFactor;
        this.stressFactor = stressFactor;
        this.peak = peak;
    }

    /** {@return c in P = c E I g / L^3} */
    public double forceFactor() {
        return forceFactor;
    }

    /** {@return k in sigma = k E t g / L^2} */
    public double stressFactor() {
        return stressFactor;
    }

    /** {@return where the peak stress lies} */
    public String peak() {
        return peak;
    }
}
