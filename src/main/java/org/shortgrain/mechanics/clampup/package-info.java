/**
 * Stress from assembly: gaps pulled shut, joggles, bolt preload, and the bent specimens that imitate them.
 *
 * <p>A gap drawn up by fasteners leaves bending stress for life at the place where the strip is held. Formulas of
 * straight elastic beams; judged at the greatest gap.
 */
package org.shortgrain.mechanics.clampup;
