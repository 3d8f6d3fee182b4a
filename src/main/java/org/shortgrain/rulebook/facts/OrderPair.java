package org.shortgrain.rulebook.facts;

import java.util.Collections;
import org.shortgrain.reference.RouteOrder;

/**
 * Two operations in the order in which they belong on a card.
 *
 * @param row row of the table of pairs
 */
public record OrderPair(RouteOrder.Pair row) {

    /** {@return id of the row, such as {@code O15}} */
    public String id() {
        return row.id();
    }

    /**
     * {@return whether the pair holds for a material}
     *
     * @param metal the material
     */
    public boolean isFor(Metal metal) {
        return row.concerns(metal.family());
    }

    /** {@return whether it depends on nothing but the order, so that a walk along the card can judge it} */
    public boolean isPlain() {
        return row.condition().isEmpty();
    }

    /** {@return why the order matters, in words} */
    public String reason() {
        return row.reason();
    }

    /** {@return where the pair comes from, for texts} */
    public String say() {
        String clause = row.source().clause().isEmpty() ? "" : ", " + row.source().clause();
        return "pair " + id() + ": " + row.source().id() + clause + " (" + row.source().status().word() + ")";
    }

    boolean isFirst(Step step) {
        return isOn(row.first(), step);
    }

    boolean isSecond(Step step) {
        return isOn(row.second(), step);
    }

    private static boolean isOn(RouteOrder.Side side, Step step) {
        boolean named = step.operation().isPresent() && side.operations().contains(step.operation().get());
        return named || !Collections.disjoint(side.kinds(), step.kinds());
    }
}
