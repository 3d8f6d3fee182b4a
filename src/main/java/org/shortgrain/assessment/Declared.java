package org.shortgrain.assessment;

import java.util.Optional;
import org.shortgrain.mechanics.Given;
import org.shortgrain.part.Range;
import org.shortgrain.part.Stated;

/** Numbers of the description as inputs of a calculation; their origin is the place where they stand. */
final class Declared {

    private Declared() {
    }

    /** {@return a number with its limits; empty if none, or several, are stated} */
    static Optional<Given> of(Stated<Range> stated) {
        return stated.single().map(range -> limits(stated, range.lowest(), range.highest()));
    }

    /** {@return limits taken from what is stated} */
    static Given limits(Stated<Range> stated, double min, double max) {
        return Given.limits(min, max, stated.at().path());
    }

    /** {@return a value taken from what is stated} */
    static Given exact(Stated<?> stated, double value) {
        return Given.exact(value, stated.at().path());
    }
}
