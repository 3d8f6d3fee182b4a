package org.shortgrain.report.pdf.figure;

/**
 * The few inks of the report (sRGB, 0 to 1). The two colours differ in grey as well and never carry meaning alone.
 */
public enum Ink {
    /** Text and outlines. */
    BLACK(0.10, 0.11, 0.12),
    /** Headings, the part itself. */
    DEEP(0.09, 0.24, 0.31),
    /** What pulls: tension, overload. */
    RUST(0.60, 0.21, 0.10),
    /** Labels and secondary lines. */
    GREY(0.38, 0.39, 0.40),
    /** Hairlines and grids. */
    RULE(0.72, 0.73, 0.74),
    /** Bands. */
    TINT(0.85, 0.86, 0.87),
    /** Backgrounds. */
    PALE(0.945, 0.948, 0.95),
    /** Paper. */
    WHITE(1, 1, 1);

    private final float red;
    private final float green;
    private final float blue;

    Ink(double red, double green, double blue) {
        this.red = (float) red;
        this.green = (float) green;
        this.blue = (float) blue;
    }

    /** {@return the red share, 0 to 1} */
    public float red() {
        return red;
    }

    /** {@return the green share, 0 to 1} */
    public float green() {
        return green;
    }

    /** {@return the blue share, 0 to 1} */
    public float blue() {
        return blue;
    }
}
