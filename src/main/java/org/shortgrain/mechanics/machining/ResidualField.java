package org.shortgrain.mechanics.machining;

import java.util.Objects;
import org.shortgrain.mechanics.quench.StressProfile;
import org.shortgrain.terms.GrainDirection;

/**
 * One view of the residual stress in the blank before it is machined: three profiles through the thickness, one for
 * each grain direction.
 *
 * @param basis     where the view comes from, in words
 * @param along     stress along L
 * @param across    stress along LT
 * @param through   stress along ST
 * @param balanced  whether the profiles carry no net force through the thickness, so that the release by cutting can be
 *                  computed; a bound or a bar's diameter does not
 */
record ResidualField(String basis, StressProfile along, StressProfile across, StressProfile through,
        boolean balanced) {

    ResidualField {
        Objects.requireNonNull(basis, "basis");
        Objects.requireNonNull(along, "along");
        Objects.requireNonNull(across, "across");
        Objects.requireNonNull(through, "through");
    }

    StressProfile in(GrainDirection direction) {
        return switch (direction) {
            case L -> along;
            case LT -> across;
            case ST -> through;
        };
    }

    double thickness() {
        return along.thickness();
    }

    ResidualField times(double share, String why) {
        return new ResidualField(why, along.times(share), across.times(share), through.times(share), balanced);
    }
}
