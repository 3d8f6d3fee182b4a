package org.shortgrain.part;

/**
 * A crack that was found.
 *
 * @param feature feature it was found at
 * @param found month or date it was found
 * @param direction how it runs
 * @param length length on the surface
 * @param depth depth
 * @param observed what the laboratory saw
 * @param origin where the group stands, and its reference
 */
public record Crack(
        @Meaning("Feature it was found at.") Stated<String> feature,
        @IsoDate @Meaning("Month or date it was found.") Stated<String> found,
        @Meaning("How it runs.") Stated<String> direction,
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Length on the surface.") Stated<Range> length,
        @In(Dimension.LENGTH) @Meaning("Depth.") Stated<Range> depth,
        @Meaning("What the laboratory saw.") Stated<String> observed,
        Origin origin) {
}
