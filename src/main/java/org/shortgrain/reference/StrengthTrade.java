package org.shortgrain.reference;

import java.util.OptionalDouble;
import org.shortgrain.terms.GrainDirection;

/**
 * What a change of material does to the minimum strengths in one direction.
 *
 * @param from      minimum strengths before
 * @param to        minimum strengths after
 * @param direction grain direction
 * @param ftu       change of the tensile strength (share of 1; negative is a loss), if both are published
 * @param fty       change of the yield strength (share of 1; negative is a loss), if both are published
 */
public record StrengthTrade(StrengthAnswer from, StrengthAnswer to, GrainDirection direction, OptionalDouble ftu,
        OptionalDouble fty) {

    /**
     * {@return the trade between two answers of the look-up}
     *
     * <p>Both sides must be published at the size asked about: nothing is carried over from another size or direction.
     *
     * @param from      material now
     * @param to        material proposed
     * @param direction grain direction
     */
    public static StrengthTrade between(MaterialAnswer from, MaterialAnswer to, GrainDirection direction) {
        StrengthAnswer a = from.in(direction).strength();
        StrengthAnswer b = to.in(direction).strength();
        return new StrengthTrade(a, b, direction, change(a.ftu(), b.ftu()), change(a.fty(), b.fty()));
    }

    private static OptionalDouble change(OptionalDouble from, OptionalDouble to) {
        return from.isEmpty() || to.isEmpty() ? OptionalDouble.empty()
                : OptionalDouble.of(to.getAsDouble() / from.getAsDouble() - 1);
    }
}
