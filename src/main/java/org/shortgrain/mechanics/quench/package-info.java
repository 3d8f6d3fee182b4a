/**
 * The stress that quenching from the solution heat treatment leaves in an aluminium section, and its relief.
 *
 * <p>The order of the work: {@code QuenchSolver} cools a plate or a round bar from the
 * furnace to the bath and follows its yielding; {@link org.shortgrain.mechanics.quench.StressRelief} says what was done
 * to relieve it; {@link org.shortgrain.mechanics.quench.QuenchBound} answers where the quench is not known. Lengths in
 * m, stress in Pa, temperatures in degrees Celsius; tension is positive.
 */
package org.shortgrain.mechanics.quench;
