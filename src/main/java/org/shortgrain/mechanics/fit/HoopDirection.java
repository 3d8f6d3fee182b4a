package org.shortgrain.mechanics.fit;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Computed;
import org.shortgrain.mechanics.Computed.Input;
import org.shortgrain.mechanics.Direction;
import org.shortgrain.mechanics.GrainAxes;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.mechanics.StressTensor;
import org.shortgrain.terms.GrainDirection;

/**
 * Which grain direction the hoop stress round a bore loads, and at which clock position.
 *
 * <p>Hoop acts along the tangent, so every direction in the plane of the hole is loaded somewhere round it. A grain
 * direction at the angle psi to the axis of the bore is loaded most where the tangent lies along its projection into
 * that plane, by {@code hoop x sin^2 psi}; the radial pressure has no part in it there. If ST lies in the plane of the
 * hole, the full hoop acts along ST at two opposite clock positions; if ST is the axis of the bore, none does.
 * Geometry of a tangent; own derivation.
 *
 * @param bore  axis of the bore, in part axes
 * @param grain how the grain lies, in part axes
 */
public record HoopDirection(Direction bore, GrainAxes grain) {

    /** Below this angle (rad) to the bore a projection into the plane of the hole has no meaning. */
    private static final double PARALLEL = 1e-6;

    /**
     * {@return the greatest share of the hoop stress that acts along a grain direction anywhere round the bore: sin^2
     * psi}
     *
     * @param along the grain direction
     */
    public double share(GrainDirection along) {
        double sine = Math.sin(bore.angleTo(grain.of(along)));
        return sine * sine;
    }

    /**
     * {@return where round the bore a grain direction is loaded most: the radius that points there, and as well the
     * opposite one; empty when the grain direction is the axis of the bore}
     *
     * @param along the grain direction
     */
    public Optional<Direction> clockPosition(GrainDirection along) {
        Direction loaded = grain.of(along);
        return bore.angleTo(loaded) < PARALLEL ? Optional.empty() : Optional.of(bore.normalTo(loaded));
    }

    /**
     * {@return state of stress at the bore surface per unit hoop stress}
     *
     * @param radius        radius from the axis of the bore to the point, at right angles to the axis
     * @param radialPerHoop radial stress per unit hoop stress, see {@link FitStress#radialPerHoop()}
     */
    public StressTensor at(Direction radius, double radialPerHoop) {
        return StressTensor.uniaxial(bore.normalTo(radius), 1).plus(StressTensor.uniaxial(radius, radialPerHoop));
    }

    /**
     * {@return the hoop stress of a fit resolved to a grain direction at its worst clock position,
     * {@code fit.hoop-along-grain} (Pa)}
     *
     * @param boreHoop hoop stress at the bore
     * @param along    the grain direction
     */
    public Computed resolve(Computed boreHoop, GrainDirection along) {
        double psi = bore.angleTo(grain.of(along));
        String where = clockPosition(along)
                .map(r -> String.format(Locale.ROOT, "Acts most along %s at the bore surface towards (%.3f, %.3f, %.3f) in part"
                        + " axes and at the opposite side.", along, r.x(), r.y(), r.z()))
                .orElse("The axis of the bore is " + along + ": the hoop stress does not act along it.");
        return new Computed("fit.hoop-along-grain", "Hoop stress of the fit along " + along, SiUnit.PASCAL,
                boreHoop.value().times(share(along)), "sigma = hoop sin^2(psi)",
                List.of(new Input("hoop", boreHoop.title(), SiUnit.PASCAL, boreHoop.value(), boreHoop.id(), Optional.empty()),
                        new Input("psi", "angle between the axis of the bore and " + along, SiUnit.RADIAN, Band.exact(psi),
                                "axis of the bore and grain directions", Optional.empty())),
                List.of(), boreHoop.rangeBasis(), boreHoop.validity(), List.of(Sources.HOOP_DIRECTION), List.of(where),
                List.of());
    }
}
