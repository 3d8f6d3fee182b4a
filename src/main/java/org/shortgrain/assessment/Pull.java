package org.shortgrain.assessment;

import java.util.Optional;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.uncertainty.Distribution;
import org.shortgrain.terms.GrainDirection;

/**
 * One contribution to the sustained stress at a place, along one grain direction.
 *
 * @param source      what causes it, in the words of the trade
 * @param direction   grain direction
 * @param stress      the stress, tension positive (Pa)
 * @param spread      what its range means: limits of which any value is as likely, or a best estimate with its ends
 * @param nominal     whether a stress concentration at the place multiplies it
 * @param calculation number of the calculation behind it; empty for a declared value
 */
record Pull(String source, GrainDirection direction, Band stress, Distribution.Shape spread, boolean nominal,
        Optional<String> calculation) {

    /** {@return the same contribution with compression counted as nothing} */
    Pull tensionOnly() {
        Band tension = new Band(Math.max(0, stress.value()), Math.max(0, stress.low()), Math.max(0, stress.high()));
        return new Pull(source, direction, tension, spread, nominal, calculation);
    }
}
