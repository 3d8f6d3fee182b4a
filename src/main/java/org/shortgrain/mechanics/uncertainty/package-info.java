/**
 * Uncertainty of a computed number: the law of propagation (JCGM 100, the GUM) and Monte Carlo (JCGM 101).
 *
 * <p>Monte Carlo is the one to report where the model has a threshold or one input dominates that is not normal, which
 * a utilisation against stress corrosion usually has; the law of propagation stands beside it as a check.
 */
package org.shortgrain.mechanics.uncertainty;
