package org.shortgrain.mechanics.threshold;

/**
 * Stress against time to cracking, levelling off at a threshold: {@code sigma = sigma_th + A (t/t_1)^-m}, t_1 one day.
 * Stromeyer's form (memory).
 *
 * @param threshold threshold sigma_th (Pa), 0 or more
 * @param amplitude A, what the stress lies above the threshold at a life of one day (Pa)
 * @param exponent  m, above zero
 */
public record StressTimeCurve(double threshold, double amplitude, double exponent) {

    /** Time at which the amplitude is read: one day (s). */
    public static final double REFERENCE_TIME = 86_400;

    /** Refuses a curve that does not fall with time towards a threshold. */
    public StressTimeCurve {
        if (!(threshold >= 0 && amplitude > 0 && exponent > 0)) {
            throw new IllegalArgumentException("threshold " + threshold + ", A " + amplitude + ", m " + exponent);
        }
    }

    /**
     * {@return the stress that cracks after a time (Pa)}
     *
     * @param time time (s)
     */
    public double stressAt(double time) {
        return threshold + amplitude * Math.pow(time / REFERENCE_TIME, -exponent);
    }

    /**
     * {@return the time to cracking (s); infinite at the threshold and below}
     *
     * @param stress stress (Pa)
     */
    public double timeAt(double stress) {
        return stress <= threshold ? Double.POSITIVE_INFINITY
                : REFERENCE_TIME * Math.pow(amplitude / (stress - threshold), 1 / exponent);
    }
}
