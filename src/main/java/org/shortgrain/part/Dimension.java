package org.shortgrain.part;

/**
 * What kind of quantity a value is, and the values beyond which it is a slip of the pen.
 *
 * <p>The outer limits are deliberately wide: each lies beyond anything a part of metal can be or meet, so that only a
 * wrong unit or a misplaced point falls outside. Narrower limits of a single key are given by {@link Limits}.
 */
public enum Dimension {
    /** Length; SI unit m. Up to 1 km. */
    LENGTH("length", 0, 1e3),
    /** Stress or pressure; SI unit Pa. Up to 10 GPa, which no metal bears. */
    STRESS("stress", -10e9, 10e9),
    /** Temperature on the Celsius scale; unit degC, as every table of the trade has it. From absolute zero. */
    TEMPERATURE("temperature", -273.15, 2000),
    /** Time; SI unit s. Up to about 300 years. */
    TIME("time", 0, 1e10),
    /** Force; SI unit N. */
    FORCE("force", -1e9, 1e9),
    /** Torque; SI unit N m. */
    TORQUE("torque", 0, 1e7),
    /** Mass; SI unit kg. */
    MASS("mass", 0, 1e6),
    /** Angle; SI unit rad. One turn either way. */
    ANGLE("angle", -2 * Math.PI, 2 * Math.PI),
    /** Volume; SI unit m3. */
    VOLUME("volume", 0, 1e6),
    /** Area; SI unit m2. */
    AREA("area", 0, 1e6),
    /**
     * Electrical conductivity in per cent of the International Annealed Copper Standard; unit fraction of it. Silver,
     * the best conductor, has about 1.06.
     */
    CONDUCTIVITY("conductivity", 0, 1.1),
    /** Stress intensity; SI unit Pa sqrt(m). Up to 1 GPa sqrt(m). */
    STRESS_INTENSITY("stress intensity", 0, 1e9),
    /** A share in per cent or as a plain number; unit 1. */
    SHARE("share", 0, 1);

    private final String noun;
    private final double least;
    private final double greatest;

    Dimension(String noun, double least, double greatest) {
        this.noun = noun;
        this.least = least;
        this.greatest = greatest;
    }

    /** {@return the name in a message: length, stress} */
    public String noun() {
        return noun;
    }

    /** {@return the least value in the SI unit that a description may state} */
    public double least() {
        return least;
    }

    /** {@return the greatest value in the SI unit that a description may state} */
    public double greatest() {
        return greatest;
    }
}
