package org.shortgrain.reference;

import org.shortgrain.terms.GrainDirection;

/**
 * What the tables say of a material in one grain direction.
 *
 * @param direction grain direction
 * @param level     resistance by the rating schemes
 * @param stress    stresses to compare the sustained tension with
 * @param strength  minimum strengths
 */
public record DirectionAnswer(GrainDirection direction, LevelAnswer level, StressAnswer stress,
        StrengthAnswer strength) {
}
