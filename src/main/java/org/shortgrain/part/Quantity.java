package org.shortgrain.part;

/**
 * A number with its unit, as entered and in SI.
 *
 * @param si      value in the SI unit of its dimension
 * @param entered the text in the description, such as {@code 0.1 in}
 */
public record Quantity(double si, String entered) {
}
