package org.shortgrain.mechanics.crack;

/**
 * Depths at which the answer changes, for a crack whose geometry factor Y does not depend on its depth:
 * {@code K = Y S sqrt(pi a)}.
 */
public final class CrackLimits {

    private CrackLimits() {
    }

    /**
     * {@return the depth at which a stress intensity is reached (m): a = (K/(Y S))^2/pi}
     *
     * @param intensity stress intensity (Pa sqrt(m))
     * @param geometry  Y, above zero
     * @param stress    stress (Pa), above zero
     */
    public static double depth(double intensity, double geometry, double stress) {
        double root = intensity / (geometry * stress);
        return root * root / Math.PI;
    }

    /**
     * {@return the crossover depth (m): for smaller cracks the threshold stress of a smooth surface governs, for larger
     * ones K_ISCC}
     *
     * @param kIscc     K_ISCC (Pa sqrt(m))
     * @param geometry  Y, above zero
     * @param threshold threshold stress of smooth specimens (Pa), above zero
     */
    public static double crossover(double kIscc, double geometry, double threshold) {
        return depth(kIscc, geometry, threshold);
    }
}
