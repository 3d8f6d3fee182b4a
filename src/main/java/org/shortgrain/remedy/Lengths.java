package org.shortgrain.remedy;

import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import org.shortgrain.part.Quantity;
import org.shortgrain.part.Range;
import org.shortgrain.part.Stated;

/** Lengths of a description, written with their unit. */
final class Lengths {

    private static final double MILLI = 1e-3;

    private Lengths() {
    }

    /** {@return a length for a description, to a micrometre} */
    static String exact(double metres) {
        return String.format(Locale.ROOT, "%.3f mm", metres / MILLI);
    }

    /** {@return a length for a reader, to a tenth of a millimetre} */
    static String said(double metres) {
        return String.format(Locale.ROOT, "%.1f mm", metres / MILLI);
    }

    /**
     * {@return a length and what becomes of it, as YAML: limits stay limits, alternatives stay alternatives}
     *
     * @param stated what stands, known
     * @param change turns the old length into the new one (m)
     */
    static String changed(Stated<Range> stated, DoubleUnaryOperator change) {
        String joined = stated.candidates().stream().map(range -> changed(range, change)).collect(Collectors.joining(", "));
        return stated.candidates().size() == 1 ? joined : "[" + joined + "]";
    }

    private static String changed(Range range, DoubleUnaryOperator change) {
        if (range.isSingle()) {
            return Subject.quoted(exact(change.applyAsDouble(range.highest())));
        }
        return "{" + range.min().map(low -> "min: " + changed(low, change)).orElse("")
                + (range.min().isPresent() && range.max().isPresent() ? ", " : "")
                + range.max().map(high -> "max: " + changed(high, change)).orElse("") + "}";
    }

    private static String changed(Quantity limit, DoubleUnaryOperator change) {
        return Subject.quoted(exact(change.applyAsDouble(limit.si())));
    }
}
