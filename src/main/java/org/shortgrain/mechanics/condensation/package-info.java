/**
 * Water out of moist air: saturation pressure, dew point, and what condenses in a hollow that is cooled.
 *
 * <p>Moist air alone can carry a crack in the more susceptible alloys (about 60 % relative humidity, DEF STAN 00-970
 * Leaflet 7, 2.3, read), so what condenses is an upper bound of liquid water and not a limit of harm.
 */
package org.shortgrain.mechanics.condensation;
