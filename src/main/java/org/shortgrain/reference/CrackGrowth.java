package org.shortgrain.reference;

import java.util.OptionalDouble;
import org.shortgrain.terms.Citation;
import java.util.Optional;

/**
 * Threshold stress intensity and plateau rate of stress-corrosion cracks.
 *
 * @param kisccLow  lower end of the threshold stress intensity (Pa sqrt(m))
 * @param kisccHigh upper end (Pa sqrt(m)); empty when the source says "at least"
 * @param rateLow   lower end of the plateau rate (m/s)
 * @param rateHigh  upper end of the plateau rate (m/s)
 * @param statement what the source says
 * @param mayApply  whether the row only may apply
 * @param row       the row's key in words
 * @param citation  source
 * @param confidence how sure a row from memory is, if it is one
 * @param remark    remark of the row
 */
public record CrackGrowth(OptionalDouble kisccLow, OptionalDouble kisccHigh, OptionalDouble rateLow,
        OptionalDouble rateHigh, String statement, boolean mayApply, String row, Citation citation,
        Optional<String> confidence, String remark) {
}
