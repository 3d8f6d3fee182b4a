package org.shortgrain.part;

/**
 * A time in storage.
 *
 * @param where place
 * @param time duration
 * @param isProtected whether the part is protected there
 * @param origin where the group stands, and its reference
 */
public record Storage(
        @InShort @Meaning("Place.") Stated<String> where,
        @In(Dimension.TIME) @Meaning("Duration.") Stated<Range> time,
        @Key("protected") @Meaning("Whether the part is protected there.") Stated<Boolean> isProtected,
        Origin origin) {
}
