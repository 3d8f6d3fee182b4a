package org.shortgrain.mechanics.water;

/**
 * What surface tension does to a liquid at holes and in gaps.
 *
 * <p>Range of validity: a liquid at rest under gravity, hole in a thin sheet with a clean rim, gaps and tubes narrow
 * against the capillary length. Source: own derivation from the pressure under a curved surface; the height of rise is
 * Jurin's (from memory).
 *
 * @param tension surface tension gamma (N/m), above 0
 * @param density density rho, less that of the gas (kg/m3), above 0
 * @param gravity gravity g (m/s2), above 0
 */
public record Capillarity(double tension, double density, double gravity) {

    /** {@return capillary length (m): {@code sqrt(gamma/(rho g))}, 2.7 mm for water} */
    public double length() {
        return Math.sqrt(tension / (density * gravity));
    }

    /**
     * {@return Bond number of a size (1): {@code rho g L^2/gamma}, weight against surface tension}
     *
     * @param size size L (m)
     */
    public double bond(double size) {
        return density * gravity * size * size / tension;
    }

    /**
     * {@return the head that a drop as wide as the hole holds back (m): {@code 4 gamma/(rho g d)}}
     *
     * @param diameter diameter of the hole d (m), above 0
     */
    public double holdUp(double diameter) {
        return 4 * tension / (density * gravity * diameter);
    }

    /**
     * {@return the height to which a gap between parallel faces draws the liquid (m):
     * {@code 2 gamma cos(theta)/(rho g w)}}
     *
     * @param gap     width of the gap w (m), above 0
     * @param contact contact angle theta (rad), 0 for a face that wets fully
     */
    public double riseInGap(double gap, double contact) {
        return 2 * tension * Math.cos(contact) / (density * gravity * gap);
    }

    /**
     * {@return the height to which a round tube draws the liquid (m): {@code 2 gamma cos(theta)/(rho g r)}}
     *
     * @param radius  inner radius r (m), above 0
     * @param contact contact angle theta (rad)
     */
    public double riseInTube(double radius, double contact) {
        return 2 * tension * Math.cos(contact) / (density * gravity * radius);
    }
}
