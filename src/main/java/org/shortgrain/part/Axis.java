package org.shortgrain.part;

/**
 * A direction in the axes of the part, of unit length.
 *
 * @param x       component along X
 * @param y       component along Y
 * @param z       component along Z
 * @param entered the text in the description, such as {@code Z} or {@code [0, 0.34, 0.94]}
 */
public record Axis(double x, double y, double z, String entered) {
}
