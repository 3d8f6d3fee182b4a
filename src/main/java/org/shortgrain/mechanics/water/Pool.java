package org.shortgrain.mechanics.water;

/**
 * Water that stays in a hollow at one attitude.
 *
 * @param depth   greatest depth, square to the floor as drawn (m)
 * @param volume  volume (m3)
 * @param deepest where along the length it is deepest, from the rear (m); without water the lowest place
 */
public record Pool(double depth, double volume, double deepest) {
}
