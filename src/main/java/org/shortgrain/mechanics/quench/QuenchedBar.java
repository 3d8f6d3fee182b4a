package org.shortgrain.mechanics.quench;

/**
 * A long round bar, or the compact section that it stands for, after the quench, at room temperature.
 *
 * @param radial  radial stress against radius
 * @param hoop    hoop stress against radius
 * @param axial   stress along the bar against radius
 * @param history what happened in the bath
 */
public record QuenchedBar(StressProfile radial, StressProfile hoop, StressProfile axial, CoolingHistory history) {

    static QuenchedBar of(double radius, BarStress bar, CoolingHistory history) {
        double[] radii = bar.radii();
        StressProfile radial = byRadius(radius, radii, bar.stress(0));
        return new QuenchedBar(radial, byRadius(radius, radii, bar.stress(1)), byRadius(radius, radii, bar.stress(2)),
                history);
    }

    /**
     * {@return the bar with every stress multiplied}
     *
     * @param factor the factor
     */
    public QuenchedBar times(double factor) {
        return new QuenchedBar(radial.times(factor), hoop.times(factor), axial.times(factor), history);
    }

    /** {@return outer radius, m} */
    public double radius() {
        return axial.end();
    }

    /**
     * {@return stress along the bar through its diameter, depth counted from its surface}
     */
    public StressProfile alongByDepth() {
        return StressProfile.symmetric(axial.depths(), axial.stresses());
    }

    /**
     * {@return stress across the bar through its diameter: the larger of hoop and radial stress, since a cut may show
     * either}
     */
    public StressProfile acrossByDepth() {
        double[] larger = hoop.stresses();
        double[] other = radial.stresses();
        for (int i = 0; i < larger.length; i++) {
            larger[i] = Math.max(larger[i], other[i]);
        }
        return StressProfile.symmetric(hoop.depths(), larger);
    }

    /** Elements know the stress at their middle; it is held to the axis and to the surface. */
    private static StressProfile byRadius(double radius, double[] radii, double[] stress) {
        int n = radii.length;
        double[] r = new double[n + 2];
        double[] s = new double[n + 2];
        System.arraycopy(radii, 0, r, 1, n);
        System.arraycopy(stress, 0, s, 1, n);
        s[0] = stress[0];
        r[n + 1] = radius;
        s[n + 1] = stress[n - 1];
        return StressProfile.through(r, s);
    }
}
