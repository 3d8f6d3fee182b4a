package org.shortgrain.part;

/** Method of inspection. */
public enum InspectionMethod implements Word {
    /** Visual. */
    VISUAL,
    /** Penetrant. */
    PENETRANT,
    /** Eddy current. */
    EDDY_CURRENT,
    /** Ultrasonic. */
    ULTRASONIC,
    /** Magnetic particle. */
    MAGNETIC_PARTICLE,
    /** Radiography. */
    RADIOGRAPHY
}
