package org.shortgrain.mechanics.fit;

/**
 * Two concentric elastic rings, one pressed into the other: contact pressure and stresses after Lam&eacute;.
 *
 * <p>Diametral interference delta at interface diameter d, outer part to diameter do, inner part from bore di:
 * <pre>
 * p = (delta/d) / { (co + nu_o)/Eo + (ci - nu_i)/Ei }
 * co = (do^2 + d^2)/(do^2 - d^2),   ci = (d^2 + di^2)/(d^2 - di^2)
 * </pre>
 * Range of validity: plane stress with free ends, contact over the full length, concentric, elastic throughout.
 * Sources: Shigley's Mechanical Engineering Design, 9th ed., 3-16, eqs 3-56 and 3-57 (read); Brown, Marks' Calculations
 * for Machine Design, 2005, eqs 3.11 to 3.15 (read).
 *
 * @param diameter      interface diameter d (m)
 * @param outerDiameter outside diameter do of the outer part (m); positive infinity for a hole in a wide plate
 * @param bore          bore di of the inner part (m); 0 for a solid pin
 * @param outerModulus  Young's modulus of the outer part (Pa)
 * @param outerPoisson  Poisson's ratio of the outer part
 * @param innerModulus  Young's modulus of the inner part (Pa)
 * @param innerPoisson  Poisson's ratio of the inner part
 */
public record LamePair(double diameter, double outerDiameter, double bore, double outerModulus, double outerPoisson,
        double innerModulus, double innerPoisson) {

    /** Refuses rings that do not fit into one another: 0 &lt;= di &lt; d &lt; do must hold. */
    public LamePair {
        if (!(0 <= bore && bore < diameter && diameter < outerDiameter)) {
            throw new IllegalArgumentException("not two rings, one in the other: bore " + bore + " m, interface "
                    + diameter + " m, outside " + outerDiameter + " m");
        }
        if (!(outerModulus > 0 && innerModulus > 0)) {
            throw new IllegalArgumentException("modulus must be above zero: " + outerModulus + ", " + innerModulus);
        }
    }

    /**
     * {@return the contact pressure p (Pa); zero for a clearance}
     *
     * @param interference diametral interference delta (m); negative for a clearance
     */
    public double pressure(double interference) {
        double outerCompliance = (outerShape() + outerPoisson) / outerModulus;
        double innerCompliance = (innerShape() - innerPoisson) / innerModulus;
        return Math.max(0, interference) / diameter / (outerCompliance + innerCompliance);
    }

    /**
     * {@return the hoop stress in the outer part at its bore (Pa), the largest tension of the pair}
     *
     * @param interference diametral interference (m)
     */
    public double boreHoop(double interference) {
        return pressure(interference) * outerShape();
    }

    /**
     * {@return the hoop stress in the outer part at its outside (Pa)}
     *
     * @param interference diametral interference (m)
     */
    public double outsideHoop(double interference) {
        return pressure(interference) * (outerShape() - 1);
    }

    /**
     * {@return the hoop stress in the outer part at a radius (Pa): p d^2/(do^2 - d^2) [1 + do^2/(2r)^2]}
     *
     * @param interference diametral interference (m)
     * @param radius       radius r (m), from d/2 to do/2
     */
    public double outerHoopAt(double interference, double radius) {
        if (!(2 * radius >= diameter && 2 * radius <= outerDiameter)) {
            throw new IllegalArgumentException("radius " + radius + " m is outside the outer part");
        }
        double wall = square(diameter / outerDiameter);
        double place = square(diameter / (2 * radius));
        return pressure(interference) * (wall + place) / (1 - wall);
    }

    /**
     * {@return the hoop stress in the inner part at the interface (Pa), compressive}
     *
     * @param interference diametral interference (m)
     */
    public double innerInterfaceHoop(double interference) {
        return -pressure(interference) * innerShape();
    }

    /**
     * {@return the hoop stress in the inner part at its bore (Pa), compressive; for a solid pin that at any point}
     *
     * @param interference diametral interference (m)
     */
    public double innerBoreHoop(double interference) {
        return -pressure(interference) * (bore == 0 ? 1 : innerShape() + 1);
    }

    /**
     * {@return the equivalent stress after von Mises at the bore of the outer part (Pa)}
     *
     * @param interference diametral interference (m)
     */
    public double outerEquivalent(double interference) {
        double hoop = boreHoop(interference);
        double radial = -pressure(interference);
        return Math.sqrt(hoop * hoop - hoop * radial + radial * radial);
    }

    /**
     * {@return the largest equivalent stress after von Mises in the inner part (Pa): at its bore, where only hoop acts}
     *
     * @param interference diametral interference (m)
     */
    public double innerEquivalent(double interference) {
        return Math.abs(innerBoreHoop(interference));
    }

    /** {@return co, the bore hoop of the outer part per unit pressure; 1 in a wide plate} */
    double outerShape() {
        double wall = square(diameter / outerDiameter);
        return (1 + wall) / (1 - wall);
    }

    private double innerShape() {
        double hollow = square(bore / diameter);
        return (1 + hollow) / (1 - hollow);
    }

    private static double square(double x) {
        return x * x;
    }
}
