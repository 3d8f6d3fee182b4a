package org.shortgrain.part;

/**
 * The route or planning card.
 *
 * @param number card number
 * @param revision its revision
 * @param drawingRevisionOnCard drawing revision that the card was written to
 * @param origin where the group stands, and its reference
 */
public record Planning(
        @Minimum(Minimum.Role.IDENTITY) @Verbatim @Meaning("Card number.") Stated<String> number,
        @Minimum(Minimum.Role.IDENTITY) @Verbatim @Meaning("Its revision.") Stated<String> revision,
        @Minimum(Minimum.Role.IDENTITY) @Verbatim @Meaning("Drawing revision that the card was written to.")
        Stated<String> drawingRevisionOnCard,
        Origin origin) {
}
