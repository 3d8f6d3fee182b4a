package org.shortgrain.report.pdf.figure;

/**
 * How letters of a figure are set.
 *
 * @param size their size, points
 * @param bold whether they are bold
 * @param ink  their ink
 */
public record Lettering(double size, boolean bold, Ink ink) {

    /** Labels in a figure. */
    public static final Lettering LABEL = new Lettering(7, false, Ink.BLACK);
    /** Labels that carry the conclusion. */
    public static final Lettering STRONG = new Lettering(7, true, Ink.BLACK);
    /** Ticks and notes. */
    public static final Lettering SMALL = new Lettering(6.2, false, Ink.GREY);

    /**
     * {@return the same letters in another ink}
     *
     * @param other the ink
     */
    public Lettering in(Ink other) {
        return new Lettering(size, bold, other);
    }
}
