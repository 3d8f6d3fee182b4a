/**
 * Concentration of stress at holes, fillets and notches.
 *
 * <p>Thresholds are measured on smooth specimens, where nominal and local stress are the same; so the stress that is
 * judged is the local one at the surface. Every factor says which nominal stress it multiplies: that of the gross or of
 * the net section. Confusing the two is a trap that published pages have fallen into.
 */
package org.shortgrain.mechanics.concentration;
