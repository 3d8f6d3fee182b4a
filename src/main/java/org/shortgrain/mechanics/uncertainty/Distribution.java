package org.shortgrain.mechanics.uncertainty;

import org.hipparchus.random.RandomGenerator;
import org.shortgrain.mechanics.Band;

/**
 * What is known of an input, as a probability distribution.
 *
 * <p>Which one to assign: JCGM 101:2008 clause 6.4 (clause numbers from memory) for limits only, 6.4.2: rectangular;
 * for the difference of two toleranced sizes of equal tolerance, 6.4.5: triangular; for an estimate with its standard
 * uncertainty, 6.4.7: normal.
 */
public sealed interface Distribution {

    /** {@return the expectation} */
    double mean();

    /** {@return the standard deviation, which is the standard uncertainty of the input} */
    double standardDeviation();

    /**
     * {@return one draw}
     *
     * @param random where the draws come from
     */
    double draw(RandomGenerator random);

    /** {@return what it is over the range of the input, in words; the numbers stand with the input} */
    String describe();

    /** A number without uncertainty. */
    record Exact(double value) implements Distribution {

        @Override
        public double mean() {
            return value;
        }

        @Override
        public double standardDeviation() {
            return 0;
        }

        @Override
        public double draw(RandomGenerator random) {
            return value;
        }

        @Override
        public String describe() {
            return "exact";
        }
    }

    /**
     * Anything between two limits, all equally likely; u = (high - low)/sqrt(12).
     *
     * @param low  lower limit
     * @param high upper limit
     */
    record Rectangular(double low, double high) implements Distribution {

        /** Refuses limits that are out of order. */
        public Rectangular {
            requireOrder(low, high);
        }

        @Override
        public double mean() {
            return (low + high) / 2;
        }

        @Override
        public double standardDeviation() {
            return (high - low) / Math.sqrt(12);
        }

        @Override
        public double draw(RandomGenerator random) {
            return low + (high - low) * random.nextDouble();
        }

        @Override
        public String describe() {
            return "rectangular over its range";
        }
    }

    /**
     * Anything between two limits, most likely at the mode; symmetric u = (high - low)/sqrt(24).
     *
     * @param low  lower limit
     * @param mode most likely value
     * @param high upper limit
     */
    record Triangular(double low, double mode, double high) implements Distribution {

        /** Refuses limits that are out of order. */
        public Triangular {
            requireOrder(low, mode);
            requireOrder(mode, high);
        }

        @Override
        public double mean() {
            return (low + mode + high) / 3;
        }

        @Override
        public double standardDeviation() {
            double a = mode - low;
            double b = high - mode;
            return Math.sqrt((a * a + a * b + b * b) / 18);
        }

        @Override
        public double draw(RandomGenerator random) {
            double width = high - low;
            double u = random.nextDouble();
            return u * width < mode - low ? low + Math.sqrt(u * width * (mode - low))
                    : high - Math.sqrt((1 - u) * width * (high - mode));
        }

        @Override
        public String describe() {
            return "triangular over its range, most likely at its value";
        }
    }

    /**
     * An estimate with its standard uncertainty.
     *
     * @param mean              the estimate
     * @param standardDeviation its standard uncertainty
     */
    record Normal(double mean, double standardDeviation) implements Distribution {

        /** Standard deviations from the mean to either end of the central 95 % of a normal distribution. */
        private static final double TO_95_PERCENT = 1.959963984540054;

        /** Refuses a negative standard deviation. */
        public Normal {
            if (!(standardDeviation >= 0)) {
                throw new IllegalArgumentException("negative standard deviation " + standardDeviation);
            }
        }

        /**
         * {@return the normal distribution whose central 95 % lie between two limits}
         *
         * @param low  lower end
         * @param high upper end
         */
        public static Normal ofCentral95(double low, double high) {
            return new Normal((low + high) / 2, (high - low) / (2 * TO_95_PERCENT));
        }

        @Override
        public double draw(RandomGenerator random) {
            return mean + standardDeviation * random.nextGaussian();
        }

        @Override
        public String describe() {
            return "normal, its range the central 95 %";
        }
    }

    /** Which distribution a band stands for. */
    enum Shape {
        /** Only the limits count; all between are equally likely. JCGM 101 6.4.2. */
        RECTANGULAR,
        /** The best estimate is the most likely value; symmetric: JCGM 101 6.4.5, else common practice. */
        TRIANGULAR,
        /** The limits are the central 95 % of a normal distribution. JCGM 101 6.4.7. */
        NORMAL;

        /**
         * {@return the distribution of a number with this shape}
         *
         * @param band the number and its range
         */
        public Distribution over(Band band) {
            if (band.isExact()) {
                return new Exact(band.value());
            }
            return switch (this) {
                case RECTANGULAR -> new Rectangular(band.low(), band.high());
                case TRIANGULAR -> new Triangular(band.low(), band.value(), band.high());
                case NORMAL -> Normal.ofCentral95(band.low(), band.high());
            };
        }
    }

    private static void requireOrder(double low, double high) {
        if (!(low <= high)) {
            throw new IllegalArgumentException("limits out of order: " + low + ", " + high);
        }
    }
}
