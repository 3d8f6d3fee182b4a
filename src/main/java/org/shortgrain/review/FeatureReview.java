package org.shortgrain.review;

import java.util.List;
import java.util.Optional;

/**
 * What the review says of one feature.
 *
 * @param id          name of the feature
 * @param what        what kind of place it is
 * @param material    the material factor
 * @param stress      the stress factor
 * @param environment the environment factor
 * @param directions  stress against threshold, the governing direction first; empty if no stress could be computed
 */
public record FeatureReview(String id, String what, FactorJudgement material, FactorJudgement stress,
        FactorJudgement environment, List<DirectionReview> directions) {

    /** Copies the list. */
    public FeatureReview {
        directions = List.copyOf(directions);
    }

    /** {@return the governing direction, if a stress could be computed} */
    public Optional<DirectionReview> governing() {
        return directions.stream().findFirst();
    }

    /** {@return the three judgements in the order material, stress, environment} */
    public List<FactorJudgement> factors() {
        return List.of(material, stress, environment);
    }
}
