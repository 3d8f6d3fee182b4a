package org.shortgrain.mechanics.quench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shortgrain.mechanics.Computed;

/**
 * The range in which the quench models hold: sections of 10 to 250 mm and solution temperatures of 460 to 540 degC, by
 * free immersion. Basis: the range over which the models were run and their tables reach.
 */
public final class QuenchRange {

    /** Thinnest section, m. */
    public static final double THINNEST = 0.010;
    /** Thickest section, m. */
    public static final double THICKEST = 0.250;
    /** Lowest solution temperature, degC. */
    public static final double COOLEST = 460;
    /** Highest solution temperature, degC. */
    public static final double HOTTEST = 540;

    private static final double PER_MILLIMETRE = 1000;

    private QuenchRange() {
    }

    /**
     * {@return whether a section and a temperature lie inside the range, and what leaves it}
     *
     * @param thickness           thickness or diameter at quench, m
     * @param solutionTemperature temperature at immersion, degC
     */
    public static Computed.Validity of(double thickness, double solutionTemperature) {
        List<String> outside = new ArrayList<>();
        if (thickness < THINNEST || thickness > THICKEST) {
            outside.add(String.format(Locale.ROOT, "section %.4g mm", thickness * PER_MILLIMETRE));
        }
        if (solutionTemperature < COOLEST || solutionTemperature > HOTTEST) {
            outside.add(String.format(Locale.ROOT, "solution temperature %.4g degC", solutionTemperature));
        }
        String range = String.format(Locale.ROOT, "free immersion, every face wet, sections of %.0f to %.0f mm,"
                + " solution temperature %.0f to %.0f degC", THINNEST * PER_MILLIMETRE, THICKEST * PER_MILLIMETRE,
                COOLEST, HOTTEST);
        return outside.isEmpty() ? new Computed.Validity(true, range)
                : new Computed.Validity(false, range + "; outside it: " + String.join(", ", outside));
    }
}
