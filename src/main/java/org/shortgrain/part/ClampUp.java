package org.shortgrain.part;

/**
 * A gap that assembly pulls shut.
 *
 * @param gap gap before clamping
 * @param span free span that bends
 * @param thickness thickness that bends
 * @param width width that bends
 * @param held how the strip is held
 * @param shim shim, or none
 * @param maxGapWithoutShim largest gap allowed without shim
 * @param preload preload available to close the gap
 * @param otherThickness thickness of the other flexible part
 * @param otherSpan span of the other flexible part
 * @param otherWidth width of the other flexible part
 * @param origin where the group stands, and its reference
 */
public record ClampUp(
        @In(Dimension.LENGTH) @Meaning("Gap before clamping.") Stated<Range> gap,
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Free span that bends.") Stated<Range> span,
        @In(Dimension.LENGTH) @Limits(positive = true, usualMin = Limits.THIN, usualMax = Limits.THICK)
        @Meaning("Thickness that bends.") Stated<Range> thickness,
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Width that bends.") Stated<Range> width,
        @Meaning("How the strip is held.") Stated<Support> held,
        @Meaning("Shim, or none.") Stated<Shim> shim,
        @In(Dimension.LENGTH) @Meaning("Largest gap allowed without shim.") Stated<Range> maxGapWithoutShim,
        @In(Dimension.FORCE) @Limits(min = 0) @Meaning("Preload available to close the gap.") Stated<Range> preload,
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Thickness of the other flexible part.")
        Stated<Range> otherThickness,
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Span of the other flexible part.")
        Stated<Range> otherSpan,
        @In(Dimension.LENGTH) @Limits(positive = true) @Meaning("Width of the other flexible part.")
        Stated<Range> otherWidth,
        Origin origin) {
}
