package org.shortgrain.mechanics.section;

import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Given;

/**
 * One strength of the old and of the new metal, in the same direction and product form.
 *
 * @param name   which strength, such as Ftu, Fty or the permitted sustained stress
 * @param before that of the old metal (Pa)
 * @param after  that of the new metal (Pa)
 */
public record StrengthChange(String name, Given before, Given after) {

    /** Refuses strengths that are not above zero. */
    public StrengthChange {
        if (!(before.value().low() > 0 && after.value().low() > 0)) {
            throw new IllegalArgumentException(name + ": " + before.value() + " and " + after.value());
        }
    }

    /** {@return r = old strength / new strength} */
    public Band ratio() {
        Band b = before.value();
        Band a = after.value();
        return new Band(b.value() / a.value(), b.low() / a.high(), b.high() / a.low());
    }
}
