package org.shortgrain.report.pdf.tagged;

import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Size of the sheet, upright. */
public enum Paper {
    /** 210 mm x 297 mm (ISO 216). */
    A4(PDRectangle.A4),
    /** 8.5 in x 11 in. */
    LETTER(PDRectangle.LETTER);

    /** Room for holes and a binder's clamp. */
    private static final double LEFT = millimetres(22);
    private static final double RIGHT = millimetres(16);
    private static final double TOP = millimetres(21);
    private static final double BOTTOM = millimetres(18);
    private static final double POINTS_PER_INCH = 72;
    private static final double MILLIMETRES_PER_INCH = 25.4;

    private final double width;
    private final double height;

    Paper(PDRectangle size) {
        this.width = size.getWidth();
        this.height = size.getHeight();
    }

    /**
     * {@return a length in points}
     *
     * @param length a length in mm
     */
    static double millimetres(double length) {
        return length * POINTS_PER_INCH / MILLIMETRES_PER_INCH;
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }

    /** {@return the left edge of the text, from the left edge of the sheet} */
    double textLeft() {
        return LEFT;
    }

    double textWidth() {
        return width - LEFT - RIGHT;
    }

    /** {@return the upper edge of the text, from the upper edge of the sheet} */
    double textTop() {
        return TOP;
    }

    double textHeight() {
        return height - TOP - BOTTOM;
    }
}
