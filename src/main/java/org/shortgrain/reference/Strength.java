package org.shortgrain.reference;

import java.util.OptionalDouble;
import org.shortgrain.terms.Citation;

/**
 * Published strengths of a product.
 *
 * @param basis     A, B, S, typical or none, as the handbook means them
 * @param ftu       tensile strength (Pa)
 * @param fty       yield strength (Pa)
 * @param elongation elongation (share of 1)
 * @param direction direction as printed: L, LT, ST, T (any across the flow) or all
 * @param mayApply  whether the row only may apply: a datum is open, or it is for a near relative
 * @param row       the row's key in words
 * @param citation  source
 * @param remark    remark of the row
 */
public record Strength(Basis basis, OptionalDouble ftu, OptionalDouble fty, OptionalDouble elongation,
        String direction, boolean mayApply, String row, Citation citation, String remark) {

    /** What stands behind a strength. */
    public enum Basis {
        /** At least 99 % of the product exceed it, with 95 % confidence. */
        A(true),
        /** At least 90 % of the product exceed it, with 95 % confidence. */
        B(false),
        /** Minimum of a specification. */
        S(true),
        /** Typical, not a minimum. */
        TYPICAL(false),
        /** The handbook states that no statistical or specification basis stands behind it. */
        NONE(true);

        private final boolean minimum;

        Basis(boolean minimum) {
            this.minimum = minimum;
        }

        /** {@return whether a design check may rest on it} */
        public boolean minimum() {
            return minimum;
        }
    }
}
