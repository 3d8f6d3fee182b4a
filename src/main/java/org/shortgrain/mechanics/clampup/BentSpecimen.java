package org.shortgrain.mechanics.clampup;

/**
 * Stress in the bent specimens that stand for an assembly stress in a test. The three-point bent beam is a
 * {@link Strip} simply supported; the others are here. Elastic, small deflection. Sources: ASTM G38 and G39 (memory).
 */
public final class BentSpecimen {

    private BentSpecimen() {
    }

    /**
     * {@return the stress between the inner supports of a four-point bent beam, 12 E t y/(3 H^2 - 4 A^2) (Pa)}
     *
     * @param modulus    Young's modulus E (Pa)
     * @param thickness  thickness t (m)
     * @param deflection greatest deflection y between the outer supports (m)
     * @param outerSpan  distance H between the outer supports (m)
     * @param arm        distance A from an inner to the next outer support (m), up to half of H
     * @throws IllegalArgumentException if the arm is longer than half the span
     */
    public static double fourPoint(double modulus, double thickness, double deflection, double outerSpan, double arm) {
        if (!(arm >= 0 && 2 * arm <= outerSpan)) {
            throw new IllegalArgumentException("arm " + arm + " m does not fit into half of " + outerSpan + " m");
        }
        return 12 * modulus * thickness * deflection / (3 * outerSpan * outerSpan - 4 * arm * arm);
    }

    /**
     * {@return how far to close a C-ring for a stress at its outside, pi dm^2 sigma/(4 E t Z), dm = OD - t (m)}
     *
     * @param stress          wanted stress (Pa)
     * @param modulus         Young's modulus (Pa)
     * @param outsideDiameter outside diameter OD (m)
     * @param thickness       wall thickness t (m)
     * @param curvatureFactor correction Z for a curved beam from the chart of ASTM G38, near 1
     */
    public static double ringClosure(double stress, double modulus, double outsideDiameter, double thickness,
            double curvatureFactor) {
        double mean = outsideDiameter - thickness;
        return Math.PI * mean * mean * stress / (4 * modulus * thickness * curvatureFactor);
    }
}
