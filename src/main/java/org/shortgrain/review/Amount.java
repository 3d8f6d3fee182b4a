package org.shortgrain.review;

/**
 * A number with its range, in the unit in which it is shown.
 *
 * @param unit  unit, such as MPa; {@code 1} for a ratio
 * @param value best estimate
 * @param low   lower end
 * @param high  upper end
 */
public record Amount(String unit, double value, double low, double high) {
}
