package org.shortgrain.mechanics.quench;

import java.util.Objects;
import org.shortgrain.terms.Citation;

/**
 * What published measurements found left of the as-quenched stress after a treatment.
 *
 * @param treatment what was done
 * @param low       smallest share left
 * @param high      largest share left; the computed relief is given no credit below it
 * @param atLeast   stress that is always taken to remain, Pa; zero where there is none
 * @param source    where the figures come from
 */
public record RetainedShare(String treatment, double low, double high, double atLeast, Citation source) {

    /** Refuses missing parts and shares out of order. */
    public RetainedShare {
        Objects.requireNonNull(treatment, "treatment");
        Objects.requireNonNull(source, "source");
        if (!(0 <= low && low <= high && atLeast >= 0)) {
            throw new IllegalArgumentException(treatment + ": " + low + " to " + high + ", at least " + atLeast);
        }
    }
}
