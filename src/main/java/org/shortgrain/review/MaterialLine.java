package org.shortgrain.review;

import org.shortgrain.terms.Citation;

/**
 * One thing that the tables say of the material as declared.
 *
 * @param subject what it is about, such as a scheme and a grain direction, or a strength
 * @param word    what the source says, in the source's own word and unit
 * @param meaning what that means for the review
 * @param governs whether it decided
 * @param source  the source
 */
public record MaterialLine(String subject, String word, String meaning, boolean governs, Citation source) {
}
