package org.shortgrain.mechanics.quench;

import java.util.Arrays;

/**
 * A material property or film coefficient against temperature: straight lines between the points, constant beyond the
 * ends.
 *
 * <p>Own class rather than a library's linear interpolator, because the quench asks it millions of times, wants the
 * ends held and the exact integral, and uses it as part of the key under which an equal quench is found again.
 */
public final class PropertyCurve {

    private final double[] temperature;
    private final double[] value;
    /** Slope of the segment that begins at the point. */
    private final double[] slope;
    /** Integral from the first point to this one. */
    private final double[] integral;
    private final int hash;

    private PropertyCurve(double[] temperature, double[] value) {
        if (temperature.length == 0 || temperature.length != value.length) {
            throw new IllegalArgumentException(temperature.length + " temperatures but " + value.length + " values");
        }
        this.temperature = temperature.clone();
        this.value = value.clone();
        this.slope = new double[value.length];
        this.integral = new double[value.length];
        for (int i = 1; i < value.length; i++) {
            double width = temperature[i] - temperature[i - 1];
            if (!(width > 0)) {
                throw new IllegalArgumentException("temperatures do not rise at " + temperature[i]);
            }
            slope[i - 1] = (value[i] - value[i - 1]) / width;
            integral[i] = integral[i - 1] + 0.5 * (value[i] + value[i - 1]) * width;
        }
        this.hash = 31 * Arrays.hashCode(temperature) + Arrays.hashCode(value);
    }

    /**
     * {@return the curve through the given points}
     *
     * @param temperature temperatures in degC, strictly rising
     * @param value       the property at each, in the SI unit of the property
     * @throws IllegalArgumentException if there is no point, the lengths differ, or the temperatures do not rise
     */
    public static PropertyCurve through(double[] temperature, double[] value) {
        return new PropertyCurve(temperature, value);
    }

    /**
     * {@return a property that does not change with temperature}
     *
     * @param value the property, in its SI unit
     */
    public static PropertyCurve constant(double value) {
        return new PropertyCurve(new double[] {0}, new double[] {value});
    }

    /**
     * {@return the property at a temperature}
     *
     * @param celsius temperature in degC
     */
    public double at(double celsius) {
        int last = temperature.length - 1;
        if (celsius <= temperature[0]) {
            return value[0];
        }
        if (celsius >= temperature[last]) {
            return value[last];
        }
        int i = segmentOf(celsius);
        return value[i] + slope[i] * (celsius - temperature[i]);
    }

    /**
     * Looks up the property at several temperatures, each of which is found quickly if it lies near the one before.
     *
     * @param celsius  temperatures in degC
     * @param property receives the property at each
     */
    void at(double[] celsius, double[] property) {
        int last = temperature.length - 1;
        int segment = 0;
        for (int i = 0; i < celsius.length; i++) {
            double t = celsius[i];
            if (t <= temperature[0]) {
                property[i] = value[0];
            } else if (t >= temperature[last]) {
                property[i] = value[last];
            } else {
                while (t > temperature[segment + 1]) {
                    segment++;
                }
                while (t <= temperature[segment]) {
                    segment--;
                }
                property[i] = value[segment] + slope[segment] * (t - temperature[segment]);
            }
        }
    }

    /**
     * {@return the integral of the property over temperature, exact for the straight lines}
     *
     * @param from lower limit, degC
     * @param to   upper limit, degC
     */
    public double integral(double from, double to) {
        return integralFromFirst(to) - integralFromFirst(from);
    }

    /**
     * {@return the curve with every value multiplied}
     *
     * @param factor the factor
     */
    public PropertyCurve times(double factor) {
        double[] times = new double[value.length];
        for (int i = 0; i < times.length; i++) {
            times[i] = factor * value[i];
        }
        return new PropertyCurve(temperature, times);
    }

    /**
     * {@return the weighted mean of this curve and another at equal temperatures}
     *
     * @param other  the other curve
     * @param weight weight of the other, 0 to 1
     */
    public PropertyCurve blend(PropertyCurve other, double weight) {
        double[] all = Arrays.stream(new double[][] {temperature, other.temperature}).flatMapToDouble(Arrays::stream)
                .sorted().distinct().toArray();
        double[] mean = Arrays.stream(all).map(t -> (1 - weight) * at(t) + weight * other.at(t)).toArray();
        return new PropertyCurve(all, mean);
    }

    private int segmentOf(double celsius) {
        int i = 0;
        while (celsius > temperature[i + 1]) {
            i++;
        }
        return i;
    }

    private double integralFromFirst(double celsius) {
        int last = temperature.length - 1;
        if (celsius <= temperature[0]) {
            return value[0] * (celsius - temperature[0]);
        }
        if (celsius >= temperature[last]) {
            return integral[last] + value[last] * (celsius - temperature[last]);
        }
        int i = segmentOf(celsius);
        double dt = celsius - temperature[i];
        return integral[i] + (value[i] + 0.5 * slope[i] * dt) * dt;
    }

    @Override
    public boolean equals(Object other) {
        return this == other || other instanceof PropertyCurve curve && hash == curve.hash
                && Arrays.equals(temperature, curve.temperature) && Arrays.equals(value, curve.value);
    }

    @Override
    public int hashCode() {
        return hash;
    }

    @Override
    public String toString() {
        return "PropertyCurve" + Arrays.toString(temperature) + Arrays.toString(value);
    }
}
