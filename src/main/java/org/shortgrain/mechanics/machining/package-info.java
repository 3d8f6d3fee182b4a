/**
 * What machining does to the stress that is already in the blank: which tension it lays bare, and how far the part bows.
 *
 * <p>{@link org.shortgrain.mechanics.machining.ResidualStress} is the entrance: from the section at quench, the quench,
 * its relief and the position of the finished surface to the tension at that surface.
 */
package org.shortgrain.mechanics.machining;
