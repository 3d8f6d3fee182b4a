package org.shortgrain.mechanics.quench;

/**
 * How finely a quench is computed.
 *
 * @param intervals       number of intervals from the centre to the surface
 * @param temperatureStep largest wanted change of any temperature in a time step, K
 */
public record QuenchResolution(int intervals, double temperatureStep) {

    /** For reviews: skin and core of the reference case lie within 0.1 MPa of the finest grid tried. */
    public static final QuenchResolution NORMAL = new QuenchResolution(60, 2);
    /** For regression. */
    public static final QuenchResolution FINE = new QuenchResolution(120, 1);
    /** For maps: within about 1 MPa. */
    public static final QuenchResolution COARSE = new QuenchResolution(40, 4);

    /** Refuses a grid without intervals and a step that is not positive. */
    public QuenchResolution {
        if (intervals < 2 || !(temperatureStep > 0)) {
            throw new IllegalArgumentException(intervals + " intervals, " + temperatureStep + " K");
        }
    }
}
