/**
 * Stress from interference fits: bushes, pins, tapered fasteners, pipe threads and staked lips.
 *
 * <p>An interference fit holds the bore of the outer part in hoop tension for life, in a crevice, often across end
 * grain. Judged for stress corrosion at the greatest interference, for retention at the smallest.
 */
package org.shortgrain.mechanics.fit;
