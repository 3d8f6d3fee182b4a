package org.shortgrain.review;

import java.util.Optional;

/**
 * Stress against threshold in one grain direction.
 *
 * @param sustained   the sustained tension
 * @param threshold   what it is compared with; empty if none is published
 * @param utilisation tension over threshold times factor; empty if there is no threshold
 */
public record DirectionReview(SustainedStress sustained, Optional<Threshold> threshold, Optional<Amount> utilisation) {
}
