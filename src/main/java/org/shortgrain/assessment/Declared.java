package org.shortgrain.assessment;

import java.util.Optional;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Given;
import org.shortgrain.part.Range;
import org.shortgrain.part.Stated;
import org.shortgrain.reference.StandIns;

/**
 * Numbers of the description as inputs of a calculation, with the place where they stand as their origin; and what stands in for
 * them.
 */
public final class Declared {

    private Declared() {
    }

    /**
     * {@return a number with its limits; empty if none, or several, are stated}
     *
     * @param stated what the description says
     */
    public static Optional<Given> of(Stated<Range> stated) {
        return stated.single().map(range -> limits(stated, range.lowest(), range.highest()));
    }

    /** {@return limits taken from what is stated} */
    static Given limits(Stated<Range> stated, double min, double max) {
        return Given.limits(min, max, stated.at().path());
    }

    /**
     * {@return a number of the tables that stands in for what is not stated, with its source}
     *
     * @param row the row
     */
    public static Given standIn(StandIns.StandIn row) {
        return new Given(Band.exact(row.value()), row.meaning(), Optional.of(row.source()));
    }

    /** {@return a value taken from what is stated} */
    static Given exact(Stated<?> stated, double value) {
        return Given.exact(value, stated.at().path());
    }
}
