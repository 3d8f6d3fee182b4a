package org.shortgrain.mechanics.concentration;

/**
 * A fitted chart of a step or notch: {@code Kt = C1 + C2 q + C3 q^2 + C4 q^3}, each {@code C = a + b sqrt(h/r) + c
 * h/r}, q = 2h/D, on the net section, over one range of h/r.
 *
 * <p>As q goes to 1 nothing is left of the section and Kt must go to 1, so that C1 + C2 + C3 + C4 = 1 whatever
 * h/r: a check on the transcription of each row.
 *
 * @param fromRatio    lowest h/r of the fit
 * @param toRatio      highest h/r of the fit
 * @param coefficients for C1 to C4 the triple a, b, c
 */
record StepFit(double fromRatio, double toRatio, double[][] coefficients) {

    /**
     * Kt for a step.
     *
     * @param ratio depth over radius, h/r
     * @param depth q = 2h/D
     */
    double factor(double ratio, double depth) {
        double factor = 0;
        for (int power = 3; power >= 0; power--) {
            factor = factor * depth + coefficient(power, ratio);
        }
        return factor;
    }

    private double coefficient(int power, double ratio) {
        double[] c = coefficients[power];
        return c[0] + c[1] * Math.sqrt(ratio) + c[2] * ratio;
    }
}
