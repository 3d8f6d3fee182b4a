package org.shortgrain.part;

/**
 * One step of an ageing or tempering treatment.
 *
 * @param temperature temperature
 * @param time time
 * @param origin where the group stands, and its reference
 */
public record AgeStep(
        @In(Dimension.TEMPERATURE) @Meaning("Temperature.") Stated<Range> temperature,
        @In(Dimension.TIME) @Meaning("Time.") Stated<Range> time,
        Origin origin) {
}
