package org.shortgrain.review;

import java.util.Optional;
import org.shortgrain.mechanics.Computed;

/**
 * A computed number in its place in the review.
 *
 * @param id       number in this report, such as C-01
 * @param feature  the feature it was computed for; empty if for the whole part
 * @param computed the number with its inputs, method and sources
 */
public record Calculation(String id, Optional<String> feature, Computed computed) {

    /**
     * {@return whether it was computed for a feature}
     *
     * @param name id of the feature
     */
    public boolean isOf(String name) {
        return feature.isPresent() && feature.get().equals(name);
    }
}
