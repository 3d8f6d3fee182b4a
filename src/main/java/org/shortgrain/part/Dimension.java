package org.shortgrain.part;

/** What kind of quantity a value is. */
public enum Dimension {
    /** Length; SI unit m. */
    LENGTH,
    /** Stress or pressure; SI unit Pa. */
    STRESS,
    /** Temperature on the Celsius scale; unit degC, as every table of the trade has it. */
    TEMPERATURE,
    /** Time; SI unit s. */
    TIME,
    /** Force; SI unit N. */
    FORCE,
    /** Torque; SI unit N m. */
    TORQUE,
    /** Mass; SI unit kg. */
    MASS,
    /** Angle; SI unit rad. */
    ANGLE,
    /** Volume; SI unit m3. */
    VOLUME,
    /** Area; SI unit m2. */
    AREA,
    /** Electrical conductivity in per cent of the International Annealed Copper Standard; unit fraction of it. */
    CONDUCTIVITY,
    /** Stress intensity; SI unit Pa sqrt(m). */
    STRESS_INTENSITY,
    /** A share in per cent or as a plain number; unit 1. */
    SHARE
}
