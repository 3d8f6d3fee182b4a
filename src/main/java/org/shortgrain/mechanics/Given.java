package org.shortgrain.mechanics;

import java.util.Objects;
import java.util.Optional;
import org.shortgrain.terms.Citation;

/**
 * A number that a computation is given, with where it came from.
 *
 * @param value  the number and its range, in the SI unit that the computation names
 * @param origin where it came from: a place in the description, a table row, an assumption
 * @param source the document behind a table value; empty for what the user stated
 */
public record Given(Band value, String origin, Optional<Citation> source) {

    /** Refuses missing parts. */
    public Given {
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(origin, "origin");
        Objects.requireNonNull(source, "source");
    }

    /**
     * {@return a number without a range}
     *
     * @param value  the number, in the SI unit that the computation names
     * @param origin where it came from
     */
    public static Given exact(double value, String origin) {
        return new Given(Band.exact(value), origin, Optional.empty());
    }

    /**
     * {@return a number known by its limits, with the middle of them as the best estimate}
     *
     * @param min    lower limit, in the SI unit that the computation names
     * @param max    upper limit, same unit
     * @param origin where they came from
     */
    public static Given limits(double min, double max, String origin) {
        return new Given(new Band((min + max) / 2, min, max), origin, Optional.empty());
    }

    /**
     * {@return the number as an input of a result}
     *
     * @param symbol  symbol in the equation of the result
     * @param meaning what it is, in the words of the trade
     * @param unit    its unit
     */
    public Computed.Input as(String symbol, String meaning, SiUnit unit) {
        return new Computed.Input(symbol, meaning, unit, value, origin, source);
    }

    // written out: what the compiler leaves to the runtime costs a cold start several milliseconds
    @Override
    public int hashCode() {
        return 31 * (31 * value.hashCode() + origin.hashCode()) + source.hashCode();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Given that && value.equals(that.value) && origin.equals(that.origin)
                && source.equals(that.source);
    }
}
