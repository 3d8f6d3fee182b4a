package org.shortgrain.mechanics;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.shortgrain.terms.Citation;

/**
 * One computed number with all that a sceptical reader needs to compute it again.
 *
 * @param id         stable name of the kind of number, such as {@code fit.bore-hoop}
 * @param title      what it is, in the words of the trade
 * @param unit       unit of {@code value}
 * @param value      the result and its range
 * @param equation   the equation in plain symbols
 * @param inputs     every number that went in, in the order of the equation
 * @param steps      intermediate results worth showing
 * @param rangeBasis how the range was obtained: tolerance extremes, interval, Monte Carlo percentiles, published scatter
 * @param validity   whether the inputs lie where the equation holds
 * @param sources    where the equation and its constants come from
 * @param notes      what else a reader should know
 * @param profiles   curves that belong to the result, for figures
 */
public record Computed(String id, String title, SiUnit unit, Band value, String equation, List<Input> inputs,
        List<Step> steps, String rangeBasis, Validity validity, List<Citation> sources, List<String> notes,
        List<Profile> profiles) {

    /** Copies the lists and refuses missing parts. */
    public Computed {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(equation, "equation");
        Objects.requireNonNull(rangeBasis, "rangeBasis");
        Objects.requireNonNull(validity, "validity");
        inputs = List.copyOf(inputs);
        steps = List.copyOf(steps);
        sources = List.copyOf(sources);
        notes = List.copyOf(notes);
        profiles = List.copyOf(profiles);
    }

    /**
     * {@return the same result, with the origins of its inputs named more closely}
     *
     * @param origin where an input came from
     */
    public Computed withOrigins(Function<Input, String> origin) {
        List<Input> traced = inputs.stream().map(input -> new Input(input.symbol(), input.meaning(), input.unit(),
                input.value(), origin.apply(input), input.source())).toList();
        return new Computed(id, title, unit, value, equation, traced, steps, rangeBasis, validity, sources, notes,
                profiles);
    }

    /**
     * A number that went into a computation.
     *
     * @param symbol  symbol in the equation
     * @param meaning what it is
     * @param unit    its unit
     * @param value   its value and range
     * @param origin  where it came from: a place in the description, a table row, an assumption
     * @param source  the document behind a table value; empty for what the user stated
     */
    public record Input(String symbol, String meaning, SiUnit unit, Band value, String origin,
            Optional<Citation> source) {
        // written out: what the compiler leaves to the runtime costs a cold start several milliseconds
        @Override
        public boolean equals(Object other) {
            return other instanceof Input that && symbol.equals(that.symbol) && meaning.equals(that.meaning)
                    && unit == that.unit && value.equals(that.value) && origin.equals(that.origin)
                    && source.equals(that.source);
        }

        @Override
        public int hashCode() {
            return 31 * (31 * symbol.hashCode() + value.hashCode()) + origin.hashCode();
        }
    }

    /**
     * An intermediate result.
     *
     * @param symbol  symbol in the equation
     * @param meaning what it is
     * @param unit    its unit
     * @param value   its value and range
     */
    public record Step(String symbol, String meaning, SiUnit unit, Band value) {
    }

    /**
     * Whether the inputs lie inside the range of the method.
     *
     * @param inside    true when they do
     * @param statement the range, and where it is left, what leaves it
     */
    public record Validity(boolean inside, String statement) {
        // written out: what the compiler leaves to the runtime costs a cold start several milliseconds
        @Override
        public boolean equals(Object other) {
            return other instanceof Validity that && inside == that.inside && statement.equals(that.statement);
        }

        @Override
        public int hashCode() {
            return 31 * Boolean.hashCode(inside) + statement.hashCode();
        }
    }

    /**
     * A curve of pairs.
     *
     * @param name  what is drawn, such as "as quenched" or "after machining"
     * @param xUnit unit of x
     * @param yUnit unit of y
     * @param x     abscissae, rising
     * @param y     ordinates, one for each abscissa
     */
    public record Profile(String name, SiUnit xUnit, SiUnit yUnit, List<Double> x, List<Double> y) {

        /** Copies the lists and refuses unequal lengths. */
        public Profile {
            x = List.copyOf(x);
            y = List.copyOf(y);
            if (x.size() != y.size()) {
                throw new IllegalArgumentException(x.size() + " abscissae but " + y.size() + " ordinates");
            }
        }
    }
}
