package org.shortgrain.report.pdf.figure;

/** How an area is filled. */
public sealed interface Fill {

    /**
     * One even tone.
     *
     * @param ink the tone
     */
    record Even(Ink ink) implements Fill {
    }

    /**
     * Parallel lines on a white ground, which stay distinct in grey and in a copy.
     *
     * @param ink     ink of the lines
     * @param degrees direction of the lines, anticlockwise from the horizontal
     * @param spacing distance of the lines, points
     */
    record Hatch(Ink ink, double degrees, double spacing) implements Fill {
        /** Refuses lines that coincide. */
        public Hatch {
            if (!(spacing > 0)) {
                throw new IllegalArgumentException("hatch spacing " + spacing);
            }
        }
    }
}
