package org.shortgrain.remedy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Stream;
import org.shortgrain.part.Drainage;
import org.shortgrain.part.Range;
import org.shortgrain.part.Stated;
import org.shortgrain.reference.StandIns;

/**
 * The drills of a shop that works in the units in which a hollow is dimensioned, and the steps in which its drawing places a
 * hole. The steps of the drills are those of {@code stand-ins.csv}, common practice.
 *
 * @param inch whether the hollow is dimensioned in inches
 * @param step step from one drill to the next (m)
 */
record Drill(boolean inch, double step) {

    private static final double MM = 1e-3;
    private static final double INCH = 25.4e-3;
    /** Steps of the place of a hole on a drawing (m): whole millimetres, or twentieths of an inch; common practice. */
    private static final double PLACE_METRIC = 1 * MM;
    private static final double PLACE_INCH = 0.05 * INCH;
    /** Share of a step that is rounding of the units and no size. */
    private static final double ROUNDING = 1e-6;
    private static final int DECIMALS = 6;

    static Drill of(Drainage drainage, StandIns standIns) {
        Stream<Stated<Range>> sizes = Stream.of(drainage.depth(), drainage.length(), drainage.width());
        boolean inch = sizes.map(Stated::candidates).flatMap(List::stream).anyMatch(size -> size.entered().endsWith(" in"));
        return new Drill(inch, standIns.of(inch ? "drill_step_inch" : "drill_step_metric").value());
    }

    /** The smallest drill that is not below a width (m). */
    double notBelow(double width) {
        return Math.ceil(width / step - ROUNDING) * step;
    }

    /** Step of a place on the drawing (m). */
    double place() {
        return inch ? PLACE_INCH : PLACE_METRIC;
    }

    /** A length as it is entered in the description. */
    String text(double metres) {
        BigDecimal number = BigDecimal.valueOf(metres / (inch ? INCH : MM)).setScale(DECIMALS, RoundingMode.HALF_UP);
        return (number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString()) + (inch ? " in" : " mm");
    }
}
