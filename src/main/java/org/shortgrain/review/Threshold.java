package org.shortgrain.review;

import org.shortgrain.terms.Citation;

/**
 * The stress that the sustained tension is compared with.
 *
 * @param amount the threshold before the project's factor; its lower end governs
 * @param factor the project's factor on it
 * @param kind   what kind of number it is: threshold of a test, stress level of a qualification test, share of yield
 * @param source where it comes from
 */
public record Threshold(Amount amount, double factor, String kind, Citation source) {
}
