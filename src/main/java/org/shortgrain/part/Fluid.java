package org.shortgrain.part;

/**
 * A fluid that wets the part.
 *
 * @param name name, a word of the fluid list
 * @param composition composition
 * @param origin where the group stands, and its reference
 */
public record Fluid(
        @InShort @Vocabulary(Vocabulary.List.FLUIDS) @Meaning("Name, a word of the fluid list.") Stated<String> name,
        @Meaning("Composition.") Stated<String> composition,
        Origin origin) {
}
