package org.shortgrain.part;

/**
 * A metallic plating.
 *
 * @param kind metal and specification
 * @param thickness thickness
 * @param baked whether it is baked after plating
 * @param origin where the group stands, and its reference
 */
public record Plating(
        @InShort @Meaning("Metal and specification.") Stated<String> kind,
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Thickness.") Stated<Range> thickness,
        @Meaning("Whether it is baked after plating.") Stated<Boolean> baked,
        Origin origin) {
}
