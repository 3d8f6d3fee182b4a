/**
 * The mechanics of sustained tension: residual, fit, clamp-up and service stress at a point of a part.
 *
 * <p>Pure functions of numbers in SI base units (Pa, m, s, kg, N); temperatures are in degrees Celsius, as every table
 * of the trade has them. Knows the maths library and the shared words of {@code terms}, nothing else of the tool.
 */
package org.shortgrain.mechanics;
