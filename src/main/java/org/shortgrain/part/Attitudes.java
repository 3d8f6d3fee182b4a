package org.shortgrain.part;

/**
 * Attitudes in which the part rests.
 *
 * @param ground standing on the ground
 * @param flight in level flight or service
 * @param parked parked, folded or stowed
 * @param transport in transport or storage
 * @param origin where the group stands, and its reference
 */
public record Attitudes(
        @Meaning("Standing on the ground.") Stated<Attitude> ground,
        @Meaning("In level flight or service.") Stated<Attitude> flight,
        @Meaning("Parked, folded or stowed.") Stated<Attitude> parked,
        @Meaning("In transport or storage.") Stated<Attitude> transport,
        Origin origin) {
}
