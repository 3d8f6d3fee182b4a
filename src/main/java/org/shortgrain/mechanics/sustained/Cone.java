package org.shortgrain.mechanics.sustained;

import java.util.List;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.shortgrain.mechanics.Direction;
import org.shortgrain.mechanics.StressTensor;
import org.shortgrain.mechanics.StressTensor.Principal;

/**
 * All directions within an angle of an axis: where a grain direction may lie if the flow lines are known only so well.
 *
 * <p>Half-angle 0 means that the direction is known. Opposite directions are the same to a normal stress, so the widest
 * cone, pi/2, holds every direction.
 *
 * @param axis      the grain direction as stated
 * @param halfAngle largest angle to it (rad), 0 to pi/2
 */
public record Cone(Direction axis, double halfAngle) {

    /** Relative difference within which principal stresses count as equal; rounding of their computation. */
    private static final double EQUAL_PRINCIPAL = 1e-9;
    /** Components below this share of the largest count as none in the search on the rim. */
    private static final double NONE = 1e-12;
    private static final int MOST_STEPS = 200;

    /** Refuses an angle outside 0 to pi/2. */
    public Cone {
        if (!(halfAngle >= 0 && halfAngle <= Math.PI / 2)) {
            throw new IllegalArgumentException("half-angle " + halfAngle + " rad");
        }
    }

    /**
     * {@return the largest normal stress over the cone, and where it acts}
     *
     * <p>Closed form but for one root: the first principal stress if its direction lies in the cone, else the largest
     * on the rim, since a normal stress has no other peak.
     *
     * @param stress state of stress, in the axes of the cone
     */
    public Principal worst(StressTensor stress) {
        double scale = stress.largestComponent();
        if (halfAngle == 0 || scale == 0) {
            return new Principal(stress.normal(axis), axis);
        }
        StressTensor unit = stress.times(1 / scale);
        List<Principal> principal = unit.principal();
        Direction first = nearestPrincipal(principal);
        Direction worst = axis.angleTo(first) <= halfAngle ? first : onRim(unit);
        return new Principal(stress.normal(worst), worst);
    }

    /**
     * {@return the smallest normal stress over the cone (Pa)}
     *
     * @param stress state of stress, in the axes of the cone
     */
    public double least(StressTensor stress) {
        return -worst(stress.times(-1)).stress();
    }

    /**
     * Direction of the first principal stress that lies nearest to the axis; several if principal stresses are equal.
     */
    private Direction nearestPrincipal(List<Principal> principal) {
        double x = 0;
        double y = 0;
        double z = 0;
        for (Principal p : principal) {
            if (principal.get(0).stress() - p.stress() <= EQUAL_PRINCIPAL) {
                double c = axis.dot(p.direction());
                x += c * p.direction().x();
                y += c * p.direction().y();
                z += c * p.direction().z();
            }
        }
        boolean atRightAngles = x * x + y * y + z * z < NONE;
        return atRightAngles ? principal.get(0).direction() : Direction.along(x, y, z);
    }

    /**
     * Direction on the rim with the largest normal stress. With n = cos(b) e + sin(b) u, u across the axis e, it makes
     * {@code 2 cos sin (t . u) + sin^2 (u . M u)} largest over unit u, t the shear on the plane across the axis and M
     * the stress along that plane. Along the principal directions of M, u = (cos b t_i/(mu + d_i)) with d_1 = 0,
     * d_2 = sin b (m_1 - m_2), and mu is the one root of |u| = 1 from |cos b t_1| up.
     */
    private Direction onRim(StressTensor stress) {
        Direction a = axis.anyNormal();
        Direction b = axis.normalTo(a);
        double turn = Math.atan2(2 * stress.traction(a, b), stress.normal(a) - stress.normal(b)) / 2;
        Direction major = a.turnedTowards(b, turn);
        Direction minor = axis.normalTo(major);
        double cosine = Math.cos(halfAngle);
        double sine = Math.sin(halfAngle);
        double p = cosine * stress.traction(axis, major);
        double q = cosine * stress.traction(axis, minor);
        double d = sine * Math.max(0, stress.normal(major) - stress.normal(minor));
        double mu = multiplier(Math.abs(p), Math.abs(q), d);
        double alongMinor = mu + d > NONE ? clamp(q / (mu + d)) : 0;
        double alongMajor = Math.copySign(Math.sqrt(1 - alongMinor * alongMinor), p);
        Direction across = Direction.along(alongMajor * major.x() + alongMinor * minor.x(),
                alongMajor * major.y() + alongMinor * minor.y(), alongMajor * major.z() + alongMinor * minor.z());
        return axis.turnedTowards(across, halfAngle);
    }

    /** The root mu of (p/mu)^2 + (q/(mu + d))^2 = 1; 0 where even mu = 0 leaves the sum below 1. */
    private static double multiplier(double p, double q, double d) {
        if (p <= NONE) {
            return Math.max(0, q - d);
        }
        double from = Math.max(p, q - d);
        double to = p + q;
        if (to - from <= NONE) {
            return from;
        }
        return new BracketingNthOrderBrentSolver(NONE, 5).solve(MOST_STEPS,
                mu -> square(p / mu) + square(q / (mu + d)) - 1, from, to);
    }

    private static double clamp(double cosine) {
        return Math.max(-1, Math.min(1, cosine));
    }

    private static double square(double x) {
        return x * x;
    }
}
