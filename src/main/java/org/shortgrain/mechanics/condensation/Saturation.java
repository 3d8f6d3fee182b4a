package org.shortgrain.mechanics.condensation;

import java.util.function.DoubleUnaryOperator;
import org.shortgrain.terms.Citation;

/**
 * Pressure of saturated water vapour as a function of temperature, in three published formulas.
 *
 * <p>With t in degC, T in K and e in hPa:
 * <pre>
 * Magnus, over water   e = 6.112 exp[17.62 t/(243.12 + t)],  -45 to 60 degC
 * Magnus, over ice     e = 6.112 exp[22.46 t/(272.62 + t)],  -65 to 0 degC
 * Sonntag, over water  e = exp[-6096.9385/T + 16.635794 - 2.711193e-2 T + 1.673952e-5 T^2 + 2.433502 ln T],
 *                      -100 to 100 degC
 * </pre>
 * Against the table of the ASHRAE Handbook, Fundamentals 2017, chapter 1 (secondary), Magnus over water is up to 0.3 %
 * low near 25 degC, Magnus over ice within 0.02 %, and Sonntag within 0.02 %. The Magnus forms can be solved for the
 * temperature, so that dew points are taken from them. Pure vapour: air raises the pressure by about 0.4 % (the
 * enhancement factor), which is left out.
 */
public enum Saturation {
    /** Magnus form over liquid water, also when it is undercooled. */
    MAGNUS_WATER(Saturation::magnusWater, -45, 60, Sources.MAGNUS_WATER),
    /** Magnus form over ice. */
    MAGNUS_ICE(Saturation::magnusIce, -65, 0, Sources.MAGNUS_ICE),
    /** Sonntag's form over liquid water: the most exact of the three. */
    SONNTAG_WATER(Saturation::sonntag, -100, 100, Sources.SONNTAG);

    /** Absolute zero is this far below 0 degC (K): exact by definition. */
    static final double ZERO_CELSIUS = 273.15;
    /** Saturation pressure at 0 degC in the Magnus forms (Pa). */
    static final double AT_ZERO = 611.2;
    /** Magnus over water, factor of the exponent. */
    static final double WATER_FACTOR = 17.62;
    /** Magnus over water, temperature of the exponent (degC). */
    static final double WATER_OFFSET = 243.12;
    /** Magnus over ice, factor of the exponent. */
    static final double ICE_FACTOR = 22.46;
    /** Magnus over ice, temperature of the exponent (degC). */
    static final double ICE_OFFSET = 272.62;

    private static final double PASCALS_PER_HECTOPASCAL = 100;
    /** Below this nothing is left of the equations: both Magnus forms have their pole here or lower (degC). */
    private static final double COLDEST = -200;

    private final DoubleUnaryOperator pressure;
    private final double coldest;
    private final double warmest;
    private final Citation source;

    Saturation(DoubleUnaryOperator pressure, double coldest, double warmest, Citation source) {
        this.pressure = pressure;
        this.coldest = coldest;
        this.warmest = warmest;
        this.source = source;
    }

    /**
     * {@return the pressure of saturated vapour (Pa)}
     *
     * @param celsius temperature (degC), above -200; beyond {@link #holdsAt} the formula is extended
     * @throws IllegalArgumentException if the temperature is -200 degC or less
     */
    public double pressure(double celsius) {
        if (!(celsius > COLDEST)) {
            throw new IllegalArgumentException("no saturation pressure at " + celsius + " degC");
        }
        return pressure.applyAsDouble(celsius);
    }

    /**
     * {@return whether a temperature lies in the range for which the formula was published}
     *
     * @param celsius temperature (degC)
     */
    public boolean holdsAt(double celsius) {
        return celsius >= coldest && celsius <= warmest;
    }

    /** {@return lowest temperature for which the formula was published (degC)} */
    public double coldest() {
        return coldest;
    }

    /** {@return highest temperature for which the formula was published (degC)} */
    public double warmest() {
        return warmest;
    }

    /** {@return the document behind the formula} */
    public Citation source() {
        return source;
    }

    /**
     * {@return the formula for what condenses at a temperature: water at 0 degC and above, ice below}
     *
     * @param celsius temperature (degC)
     */
    public static Saturation of(double celsius) {
        return celsius < 0 ? MAGNUS_ICE : MAGNUS_WATER;
    }

    private static double magnusWater(double celsius) {
        return AT_ZERO * Math.exp(WATER_FACTOR * celsius / (WATER_OFFSET + celsius));
    }

    private static double magnusIce(double celsius) {
        return AT_ZERO * Math.exp(ICE_FACTOR * celsius / (ICE_OFFSET + celsius));
    }

    private static double sonntag(double celsius) {
        double kelvin = celsius + ZERO_CELSIUS;
        return PASCALS_PER_HECTOPASCAL * Math.exp(-6096.9385 / kelvin + 16.635794 - 2.711193e-2 * kelvin
                + 1.673952e-5 * kelvin * kelvin + 2.433502 * Math.log(kelvin));
    }
}
