package org.shortgrain.mechanics.machining;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.SourceStatus;

/**
 * Whether the allowance left by rough machining before heat treatment is small enough for the finished faces to stay in
 * the compressed skin.
 *
 * <p>The stress changes sign at 0.21 thicknesses below the surface for a parabola (exact) and at 0.24 for the computed
 * profile of a thick plate; an allowance under a fifth of the rough thickness stays outside both. It holds only if the
 * quenchant reaches the face, so not in a closed pocket. Basis: own algebra and computation.
 */
public final class MachiningAllowance {

    /** Allowance over rough thickness from which the cut reaches the stretched core. */
    public static final double LARGEST_SHARE = 0.2;

    private static final Citation BASIS = new Citation("quench-method", "allowance after heat treatment",
            SourceStatus.DERIVED);

    private MachiningAllowance() {
    }

    /**
     * {@return allowance over rough thickness; valid below 0.2}
     *
     * @param allowance      stock left on one face for after the heat treatment, m
     * @param roughThickness thickness at heat treatment, m
     */
    public static Computed share(double allowance, double roughThickness) {
        if (!(allowance >= 0 && roughThickness > 0)) {
            throw new IllegalArgumentException("allowance " + allowance + " on " + roughThickness);
        }
        double share = allowance / roughThickness;
        boolean inside = share < LARGEST_SHARE;
        return new Computed("residual.allowance", "Allowance over thickness at heat treatment", SiUnit.ONE,
                Band.exact(share), "allowance / rough thickness < " + LARGEST_SHARE,
                List.of(input("c", "allowance on the face", allowance),
                        input("t", "thickness at heat treatment", roughThickness)),
                List.of(), "no range: a ratio of stated lengths",
                new Computed.Validity(inside, String.format(Locale.ROOT, inside
                        ? "%.2f lies below %.2f: the finished face stays in the compressed skin"
                        : "%.2f is not below %.2f: the cut reaches the stretched core", share, LARGEST_SHARE)),
                List.of(BASIS), List.of("holds only where the quenchant reaches the face"), List.of());
    }

    private static Computed.Input input(String symbol, String meaning, double length) {
        return new Computed.Input(symbol, meaning, SiUnit.METRE, Band.exact(length), "stated", Optional.empty());
    }
}
