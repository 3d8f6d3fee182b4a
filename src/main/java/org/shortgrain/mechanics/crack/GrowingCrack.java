package org.shortgrain.mechanics.crack;

import java.util.Objects;

/**
 * A crack at a place on a part that keeps its shape as it grows.
 *
 * @param kind      where it sits
 * @param aspect    a/c, above 0, at most 1
 * @param thickness section that it grows through (m)
 * @param halfWidth half the width of the section (m); positive infinity where it is wide
 */
public record GrowingCrack(Kind kind, double aspect, double thickness, double halfWidth) {

    /** Where a crack sits. */
    public enum Kind {
        /** On a face: a half-ellipse, {@link SurfaceCrack}. */
        SURFACE,
        /** At an edge or the mouth of a hole: a quarter-ellipse, {@link CornerCrack}, under the greatest stress down to its
         * depth. */
        CORNER
    }

    /** Refuses what is outside of the equations for any depth. */
    public GrowingCrack {
        Objects.requireNonNull(kind, "kind");
        if (!(aspect > 0 && aspect <= 1 && thickness > 0 && halfWidth > 0)) {
            throw new IllegalArgumentException("a/c " + aspect + ", section " + thickness + " m x " + halfWidth + " m");
        }
    }

    /** {@return the greatest depth that the equations allow (m): 80 % of the section, or less where the width limits it} */
    public double greatestDepth() {
        double byThickness = SurfaceCrack.GREATEST_DEPTH * thickness;
        return Math.min(byThickness, SurfaceCrack.GREATEST_WIDTH * halfWidth * aspect);
    }

    /**
     * {@return the stress intensity at the worst point of the front (Pa sqrt(m))}
     *
     * @param depth  a (m), up to the greatest depth
     * @param stress sustained stress against depth
     */
    public double intensity(double depth, StressAlongDepth stress) {
        if (kind == Kind.CORNER || stress.isUniform()) {
            return Math.max(atDepth(depth, stress), atSurface(depth, stress));
        }
        WeightFunction weight = new WeightFunction(surface(depth));
        return Math.max(0, Math.max(weight.atDepth(stress::at), weight.atSurface(stress::at)));
    }

    /**
     * {@return the stress intensity at the deepest point (Pa sqrt(m))}
     *
     * @param depth  a (m)
     * @param stress sustained stress against depth
     */
    public double atDepth(double depth, StressAlongDepth stress) {
        if (kind == Kind.CORNER) {
            return corner(depth).intensity(stress.greatestDownTo(depth), SurfaceCrack.DEEPEST);
        }
        SurfaceCrack crack = surface(depth);
        return stress.isUniform() ? crack.intensity(stress.at(0), 0, SurfaceCrack.DEEPEST)
                : Math.max(0, new WeightFunction(crack).atDepth(stress::at));
    }

    /**
     * {@return the stress intensity at the surface (Pa sqrt(m))}
     *
     * @param depth  a (m)
     * @param stress sustained stress against depth
     */
    public double atSurface(double depth, StressAlongDepth stress) {
        if (kind == Kind.CORNER) {
            return corner(depth).intensity(stress.greatestDownTo(depth), SurfaceCrack.AT_SURFACE);
        }
        SurfaceCrack crack = surface(depth);
        return stress.isUniform() ? crack.intensity(stress.at(0), 0, SurfaceCrack.AT_SURFACE)
                : Math.max(0, new WeightFunction(crack).atSurface(stress::at));
    }

    /**
     * {@return the stress intensity against depth}
     *
     * @param stress sustained stress against depth
     */
    public IntensityCurve curve(StressAlongDepth stress) {
        return IntensityCurve.of(greatestDepth(), depth -> intensity(depth, stress));
    }

    /** {@return the geometry factor of a shallow crack, K/(S sqrt(pi a)), at the worst point} */
    public double shallowGeometry() {
        double depth = IntensityCurve.LEAST_DEPTH;
        return intensity(depth, StressAlongDepth.uniform(1)) / Math.sqrt(Math.PI * depth);
    }

    private SurfaceCrack surface(double depth) {
        return new SurfaceCrack(depth, depth / aspect, thickness, halfWidth);
    }

    private CornerCrack corner(double depth) {
        return new CornerCrack(depth, depth / aspect, thickness, 2 * halfWidth);
    }
}
