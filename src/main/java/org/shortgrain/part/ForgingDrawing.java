package org.shortgrain.part;

/**
 * The forging drawing and the die.
 *
 * @param drawing forging drawing number
 * @param revision its revision
 * @param supplier forging supplier
 * @param die die number
 * @param origin where the group stands, and its reference
 */
public record ForgingDrawing(
        @Verbatim @Meaning("Forging drawing number.") Stated<String> drawing,
        @Verbatim @Meaning("Its revision.") Stated<String> revision,
        @Verbatim @Meaning("Forging supplier.") Stated<String> supplier,
        @Verbatim @Meaning("Die number.") Stated<String> die,
        Origin origin) {
}
