package org.shortgrain.mechanics;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * State of stress at a point (Pa), symmetric, in one set of axes; tension is positive.
 *
 * <p>Contributions at the same point add as tensors in the same axes (linear superposition); their principal stresses
 * do not.
 *
 * @param xx normal stress along x
 * @param yy normal stress along y
 * @param zz normal stress along z
 * @param xy shear stress
 * @param yz shear stress
 * @param zx shear stress
 */
public record StressTensor(double xx, double yy, double zz, double xy, double yz, double zx) {

    /** No stress. */
    public static final StressTensor ZERO = new StressTensor(0, 0, 0, 0, 0, 0);

    /**
     * {@return normal stress along one direction only}
     *
     * @param direction where it acts
     * @param stress    its size (Pa)
     */
    public static StressTensor uniaxial(Direction direction, double stress) {
        double x = direction.x();
        double y = direction.y();
        double z = direction.z();
        return new StressTensor(stress * x * x, stress * y * y, stress * z * z, stress * x * y, stress * y * z,
                stress * z * x);
    }

    /**
     * {@return the same normal stress in every direction along a surface}
     *
     * @param normal direction across the surface
     * @param stress its size (Pa)
     */
    public static StressTensor alongSurface(Direction normal, double stress) {
        return new StressTensor(stress, stress, stress, 0, 0, 0).plus(uniaxial(normal, -stress));
    }

    /**
     * {@return the sum}
     *
     * @param other another state of stress at the same point, in the same axes
     */
    public StressTensor plus(StressTensor other) {
        return new StressTensor(xx + other.xx, yy + other.yy, zz + other.zz, xy + other.xy, yz + other.yz,
                zx + other.zx);
    }

    /**
     * {@return this state of stress scaled}
     *
     * @param factor the scale
     */
    public StressTensor times(double factor) {
        return new StressTensor(factor * xx, factor * yy, factor * zz, factor * xy, factor * yz, factor * zx);
    }

    /**
     * {@return the normal stress n . sigma . n on the plane across a direction (Pa)}
     *
     * @param n the direction
     */
    public double normal(Direction n) {
        return xx * n.x() * n.x() + yy * n.y() * n.y() + zz * n.z() * n.z()
                + 2 * (xy * n.x() * n.y() + yz * n.y() * n.z() + zx * n.z() * n.x());
    }

    /** {@return the largest of its components, without their signs (Pa)} */
    public double largestComponent() {
        return Math.max(Math.max(Math.max(Math.abs(xx), Math.abs(yy)), Math.max(Math.abs(zz), Math.abs(xy))),
                Math.max(Math.abs(yz), Math.abs(zx)));
    }

    /**
     * {@return the component of the traction sigma . n along another direction (Pa)}
     *
     * @param n     direction across the plane
     * @param along direction of the component; with n itself this is the normal stress
     */
    public double traction(Direction n, Direction along) {
        double tx = xx * n.x() + xy * n.y() + zx * n.z();
        double ty = xy * n.x() + yy * n.y() + yz * n.z();
        double tz = zx * n.x() + yz * n.y() + zz * n.z();
        return tx * along.x() + ty * along.y() + tz * along.z();
    }

    /**
     * {@return the size of the whole traction on the plane across a direction (Pa)}
     *
     * @param n the direction
     */
    public double traction(Direction n) {
        double tx = traction(n, Direction.X);
        double ty = traction(n, Direction.Y);
        double tz = traction(n, Direction.Z);
        return Math.sqrt(tx * tx + ty * ty + tz * tz);
    }

    /**
     * {@return the shear stress on the plane across a direction (Pa)}
     *
     * @param n the direction
     */
    public double shear(Direction n) {
        double whole = traction(n);
        double normal = normal(n);
        return Math.sqrt(Math.max(0, whole * whole - normal * normal));
    }

    /**
     * {@return this state of stress with L, LT and ST as its x, y and z}
     *
     * @param grain how the grain lies in the present axes
     */
    public StressTensor in(GrainAxes grain) {
        return new StressTensor(normal(grain.l()), normal(grain.lt()), normal(grain.st()),
                traction(grain.l(), grain.lt()), traction(grain.lt(), grain.st()), traction(grain.st(), grain.l()));
    }

    /** {@return the sum of the three normal stresses (Pa), the same in all axes} */
    public double trace() {
        return xx + yy + zz;
    }

    /** {@return the principal stresses with their directions, the largest tension first} */
    public List<Principal> principal() {
        RealMatrix matrix = new Array2DRowRealMatrix(new double[][] {{xx, xy, zx}, {xy, yy, yz}, {zx, yz, zz}}, false);
        EigenDecompositionSymmetric eigen = new EigenDecompositionSymmetric(matrix);
        List<Principal> principal = new ArrayList<>(3);
        for (int i = 0; i < 3; i++) {
            RealVector v = eigen.getEigenvector(i);
            Direction direction = Direction.along(v.getEntry(0), v.getEntry(1), v.getEntry(2));
            principal.add(new Principal(eigen.getEigenvalue(i), direction));
        }
        return List.copyOf(principal);
    }

    /**
     * A principal stress.
     *
     * @param stress    its size (Pa)
     * @param direction where it acts
     */
    public record Principal(double stress, Direction direction) {
    }
}
