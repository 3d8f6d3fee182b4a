package org.shortgrain.mechanics.condensation;

/**
 * Air that holds water vapour.
 *
 * <p>Relative humidity counts against liquid water at every temperature, below 0 degC too, as meteorology has it. Range
 * of validity: that of {@link Saturation#MAGNUS_WATER}. Source: WMO-No. 8, annex 4.B (secondary).
 *
 * @param celsius  temperature (degC), above -200
 * @param humidity relative humidity as a share, 0 to 1
 */
public record MoistAir(double celsius, double humidity) {

    /**
     * Density of water vapour times temperature over pressure, the inverse of its gas constant (kg K/(m3 Pa)): 216.679
     * g K/(m3 hPa), the figure that goes with the Magnus form.
     */
    private static final double INVERSE_GAS_CONSTANT = 2.16679e-3;

    /** Refuses a humidity below 0 or above 1. */
    public MoistAir {
        if (!(humidity >= 0 && humidity <= 1)) {
            throw new IllegalArgumentException("relative humidity is a share from 0 to 1: " + humidity);
        }
    }

    /** {@return pressure of its vapour (Pa)} */
    public double vapourPressure() {
        return humidity * Saturation.MAGNUS_WATER.pressure(celsius);
    }

    /** {@return mass of vapour in a volume of it (kg/m3)} */
    public double vapourDensity() {
        return density(vapourPressure(), celsius);
    }

    /**
     * {@return the dew point (degC): the temperature at which the vapour is saturated over water, the pressure kept;
     * minus infinity for air without vapour}
     */
    public double dewPoint() {
        return temperature(Saturation.WATER_FACTOR, Saturation.WATER_OFFSET);
    }

    /** {@return the frost point (degC): the same over ice; of use below 0 degC} */
    public double frostPoint() {
        return temperature(Saturation.ICE_FACTOR, Saturation.ICE_OFFSET);
    }

    /** The Magnus form solved for the temperature: t = b x/(a - x), x = ln(e/e0). */
    private double temperature(double factor, double offset) {
        if (humidity == 0) {
            return Double.NEGATIVE_INFINITY;
        }
        double logarithm = Math.log(vapourPressure() / Saturation.AT_ZERO);
        return offset * logarithm / (factor - logarithm);
    }

    /**
     * {@return the most vapour that a volume can hold at a temperature (kg/m3), over ice below 0 degC}
     *
     * @param celsius temperature (degC)
     */
    public static double saturatedDensity(double celsius) {
        return density(Saturation.of(celsius).pressure(celsius), celsius);
    }

    private static double density(double pressure, double celsius) {
        return INVERSE_GAS_CONSTANT * pressure / (celsius + Saturation.ZERO_CELSIUS);
    }
}
