package org.shortgrain.mechanics.quench;

/** A section that strains and yields as its temperature changes. */
interface ThermalStress {

    /**
     * Brings the section into balance at new temperatures and records the plastic strain.
     *
     * @param temperature temperature at each node, degC
     */
    void follow(double[] temperature);

    /** Stress along the section at its centre, Pa. */
    double centreStress();

    /** Stress along the section at its surface, Pa. */
    double surfaceStress();
}
