package org.shortgrain.mechanics.threshold;

/**
 * Life that falls exponentially with stress and knows no threshold: {@code t = B exp(-k sigma)}. As austenitic steels
 * in hot chloride are reported. Never use it to argue for a stress below those tested.
 *
 * @param scale B, the life at no stress, in the unit of time of its source
 * @param rate  k, per unit of stress of its source
 */
public record ExponentialLife(double scale, double rate) {

    /**
     * {@return the life, in the unit of B}
     *
     * @param stress stress, in the reciprocal of the unit of k
     */
    public double timeAt(double stress) {
        return scale * Math.exp(-rate * stress);
    }
}
