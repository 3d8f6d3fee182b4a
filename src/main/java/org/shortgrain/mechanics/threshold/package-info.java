/**
 * Threshold stress from own tests: stress-time curves that level off, fitted with and without run-outs.
 *
 * <p>Scope of every fit: one alloy, temper, product form, direction and environment. A threshold read off time to
 * failure of small specimens depends on their size where propagation takes most of the life.
 */
package org.shortgrain.mechanics.threshold;
