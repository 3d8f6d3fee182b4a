package org.shortgrain.part;

/**
 * Room that the neighbours leave.
 *
 * @param height greatest height
 * @param width greatest width
 * @param length greatest length
 * @param origin where the group stands, and its reference
 */
public record Envelope(
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Greatest height.") Stated<Range> height,
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Greatest width.") Stated<Range> width,
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Greatest length.") Stated<Range> length,
        Origin origin) {
}
