package org.shortgrain.part;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A quantity between two limits; a single value has equal limits.
 *
 * @param min lower limit; empty if only the upper one is stated
 * @param max upper limit; empty if only the lower one is stated
 */
public record Range(Optional<Quantity> min, Optional<Quantity> max) {

    /** Refuses a range without limits or with crossed limits. */
    public Range {
        if (min.isEmpty() && max.isEmpty()) {
            throw new IllegalArgumentException("a range needs at least one limit");
        }
        if (min.isPresent() && max.isPresent() && min.get().si() > max.get().si()) {
            throw new IllegalArgumentException("lower limit " + min.get().entered() + " is above upper limit "
                    + max.get().entered());
        }
    }

    /**
     * {@return a single value}
     *
     * @param quantity the value
     */
    public static Range of(Quantity quantity) {
        return new Range(Optional.of(quantity), Optional.of(quantity));
    }

    /** {@return whether both limits are the same} */
    public boolean isSingle() {
        return min.isPresent() && min.equals(max);
    }

    /** {@return the lower limit in SI, or the only one stated} */
    public double lowest() {
        return min.or(() -> max).orElseThrow().si();
    }

    /** {@return the upper limit in SI, or the only one stated} */
    public double highest() {
        return max.or(() -> min).orElseThrow().si();
    }

    /**
     * {@return the greatest value that is stated, in SI, of all that may hold; empty if none is}
     *
     * @param stated what is stated
     */
    public static OptionalDouble greatest(Stated<Range> stated) {
        OptionalDouble greatest = OptionalDouble.empty();
        for (Range one : stated.candidates()) {
            greatest = OptionalDouble.of(Math.max(greatest.orElse(Double.NEGATIVE_INFINITY), one.highest()));
        }
        return greatest;
    }

    /**
     * {@return the least value that is stated, in SI, of all that may hold; empty if none is}
     *
     * @param stated what is stated
     */
    public static OptionalDouble least(Stated<Range> stated) {
        OptionalDouble least = OptionalDouble.empty();
        for (Range one : stated.candidates()) {
            least = OptionalDouble.of(Math.min(least.orElse(Double.POSITIVE_INFINITY), one.lowest()));
        }
        return least;
    }

    /** {@return the middle of the range in SI} */
    public double middle() {
        return (lowest() + highest()) / 2;
    }

    /** {@return the text as entered, limits joined by a dash} */
    public String entered() {
        if (isSingle()) {
            return min.orElseThrow().entered();
        }
        if (max.isEmpty()) {
            return "at least " + min.orElseThrow().entered();
        }
        return min.map(low -> low.entered() + " - ").orElse("at most ") + max.get().entered();
    }
}
