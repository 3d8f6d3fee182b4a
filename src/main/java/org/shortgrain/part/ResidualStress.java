package org.shortgrain.part;

import org.shortgrain.terms.GrainDirection;

/**
 * Residual stress as measured, stated or described in words.
 *
 * @param value stress at the surface, tension positive
 * @param state in words, when no number is known
 * @param kind how the value is known
 * @param method method of measurement
 * @param depth depth it was measured at
 * @param uncertainty uncertainty of the value
 * @param direction grain direction it was measured in
 * @param origin where the group stands, and its reference
 */
public record ResidualStress(
        @InShort @In(Dimension.STRESS) @Meaning("Stress at the surface, tension positive.") Stated<Range> value,
        @Meaning("In words, when no number is known.") Stated<ResidualState> state,
        @Meaning("How the value is known.") Stated<Provenance.Kind> kind,
        @Meaning("Method of measurement.") Stated<String> method,
        @In(Dimension.LENGTH) @Meaning("Depth it was measured at.") Stated<Range> depth,
        @In(Dimension.STRESS) @Limits(min = 0) @Meaning("Uncertainty of the value.") Stated<Range> uncertainty,
        @Meaning("Grain direction it was measured in.") Stated<GrainDirection> direction,
        Origin origin) {
}
