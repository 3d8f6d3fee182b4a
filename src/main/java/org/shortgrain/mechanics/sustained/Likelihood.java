package org.shortgrain.mechanics.sustained;

import java.util.List;
import org.shortgrain.mechanics.Computed;

/**
 * What Monte Carlo says of a utilisation.
 *
 * @param utilisation  median and central 95 %, {@code sustained.utilisation-likely}
 * @param aboveOne     probability that the utilisation exceeds 1, {@code sustained.probability-above-one}, with the
 *                     sampling error of the draws as its range
 * @param shares       who causes the spread, the greatest share first
 */
public record Likelihood(Computed utilisation, Computed aboveOne, List<Share> shares) {

    /** Copies the list. */
    public Likelihood {
        shares = List.copyOf(shares);
    }

    /**
     * Share of the variance of the utilisation that one input causes.
     *
     * @param source the input
     * @param share  squared correlation of input and utilisation, 0 to 1
     */
    public record Share(String source, double share) {
    }
}
