/**
 * Stress-corrosion cracks as fracture mechanics sees them: stress intensity, growth, critical size, and how long a crack
 * can be watched.
 *
 * <p>Solutions hold for an elastic body with one crack in mode I. Two cautions bind every number: cracks are known to
 * start at smooth surfaces below K_ISCC, so that nothing here speaks for cracks smaller than the crossover depth
 * ({@link org.shortgrain.mechanics.crack.CrackLimits}); and corrosion product wedges a crack open without any load
 * (DEF STAN 00-970 Part 1 Section 4 Leaflet 7 2.1, read), which no stress given here contains.
 */
package org.shortgrain.mechanics.crack;
