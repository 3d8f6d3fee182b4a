package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A range of a size for which a row holds.
 *
 * @param from      lower end; minus infinity when the row names none
 * @param fromTaken whether the lower end belongs to the band
 * @param to        upper end; infinity when the row names none
 * @param toTaken   whether the upper end belongs to the band
 */
record ThicknessBand(double from, boolean fromTaken, double to, boolean toTaken) {
    static final ThicknessBand ALL = new ThicknessBand(Double.NEGATIVE_INFINITY, true, Double.POSITIVE_INFINITY, true);

    static ThicknessBand of(OptionalDouble from, OptionalDouble to, boolean toTaken) {
        return from.isEmpty() && to.isEmpty() ? ALL : new ThicknessBand(from.orElse(Double.NEGATIVE_INFINITY), true,
                to.orElse(Double.POSITIVE_INFINITY), toTaken);
    }

    /** {@return a band of section areas: a lower end means "over", an upper end "up to"} */
    static ThicknessBand ofArea(OptionalDouble over, OptionalDouble upTo) {
        return over.isEmpty() && upTo.isEmpty() ? ALL : new ThicknessBand(over.orElse(Double.NEGATIVE_INFINITY), false,
                upTo.orElse(Double.POSITIVE_INFINITY), true);
    }

    boolean isAll() {
        return from == Double.NEGATIVE_INFINITY && to == Double.POSITIVE_INFINITY;
    }

    Match match(OptionalDouble size) {
        if (isAll()) {
            return Match.YES;
        }
        return size.isEmpty() ? Match.MAYBE : Match.of(contains(size.getAsDouble()));
    }

    private boolean contains(double size) {
        boolean above = fromTaken ? size >= from : size > from;
        boolean below = toTaken ? size <= to : size < to;
        return above && below;
    }

    ThicknessBand startingAfter(double end) {
        return new ThicknessBand(end, false, to, toTaken);
    }

    boolean overlaps(ThicknessBand other) {
        ThicknessBand low = from <= other.from ? this : other;
        ThicknessBand high = low == this ? other : this;
        return low.to > high.from || (low.to == high.from && low.toTaken && high.fromTaken);
    }

    /** {@return whether bands leave no size out} */
    static boolean coverAll(List<ThicknessBand> bands) {
        List<ThicknessBand> rising = new ArrayList<>(bands);
        rising.sort(Comparator.comparingDouble(ThicknessBand::from));
        double covered = Double.NEGATIVE_INFINITY;
        for (ThicknessBand band : rising) {
            if (band.from > covered) {
                return false;
            }
            covered = Math.max(covered, band.to);
        }
        return covered == Double.POSITIVE_INFINITY;
    }
}
