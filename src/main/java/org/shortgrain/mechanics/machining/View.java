package org.shortgrain.mechanics.machining;

import java.util.Locale;
import java.util.Objects;
import org.shortgrain.mechanics.quench.StressProfile;
import org.shortgrain.terms.GrainDirection;

/**
 * A field and the share of it that counts: what a relief leaves, or one end of the published scatter.
 *
 * @param field the field
 * @param share its share
 */
record View(ResidualField field, double share) {

    View {
        Objects.requireNonNull(field, "field");
        if (!(share >= 0)) {
            throw new IllegalArgumentException("share " + share);
        }
    }

    View times(double factor) {
        return new View(field, share * factor);
    }

    StressProfile in(GrainDirection direction) {
        return field.in(direction).times(share);
    }

    String basis() {
        return share == 1 ? field.basis() : String.format(Locale.ROOT, "%.3g of the %s", share, field.basis());
    }
}
