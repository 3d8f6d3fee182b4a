package org.shortgrain.review;

import java.util.List;
import org.shortgrain.terms.GrainDirection;

/**
 * Sustained tension in one grain direction at a feature, and what it is made of.
 *
 * @param direction grain direction
 * @param total     the sum
 * @param parts     its contributions, the largest upper end first
 */
public record SustainedStress(GrainDirection direction, Amount total, List<Contribution> parts) {

    /** Copies the list. */
    public SustainedStress {
        parts = List.copyOf(parts);
    }
}
