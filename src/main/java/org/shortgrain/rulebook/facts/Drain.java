package org.shortgrain.rulebook.facts;

import java.util.ArrayList;
import java.util.List;
import org.shortgrain.part.DrainHole;
import org.shortgrain.part.Location;
import org.shortgrain.part.Range;

/**
 * A drain hole as stated.
 *
 * @param stated what is stated of it
 */
public record Drain(DrainHole stated) {

    private static final double PER_METRE = 1000;

    /** {@return its least diameter (mm); NaN if not stated, which no comparison holds for} */
    public double millimetres() {
        return Range.least(stated.diameter()).orElse(Double.NaN) * PER_METRE;
    }

    /** {@return whether a written acceptance of its size is named} */
    public boolean isAccepted() {
        return stated.waiver().isKnown();
    }

    /** {@return whether it certainly does not lie at the lowest point} */
    public boolean isTooHigh() {
        return stated.atLowestPoint().is(false);
    }

    /** {@return whether the way out certainly ends at a neighbour} */
    public boolean isBlind() {
        return stated.pathContinues().is(false);
    }

    /** {@return what is not stated of it, in words; empty if it is described in full} */
    public List<String> open() {
        List<String> open = new ArrayList<>();
        if (stated.diameter().isMissing()) {
            open.add("its diameter");
        }
        if (stated.atLowestPoint().isMissing() && stated.fromLowEnd().isMissing()) {
            open.add("whether it lies at the lowest point");
        }
        if (stated.pathContinues().isMissing()) {
            open.add("whether the way out goes on through the neighbours");
        }
        return open;
    }

    /** {@return its diameter as entered, for texts} */
    public String say() {
        return stated.diameter().single().map(Range::entered).map(text -> "diameter " + text)
                .orElse("diameter not stated");
    }

    /** {@return where it stands in the description} */
    public Location at() {
        return stated.origin().at();
    }
}
