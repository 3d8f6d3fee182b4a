package org.shortgrain.mechanics;

/** Unit of a computed number or of one of its inputs. */
public enum SiUnit {
    /** Stress, pressure, modulus. */
    PASCAL("Pa"),
    /** Stress gradient. */
    PASCAL_PER_METRE("Pa/m"),
    /** Stress intensity. */
    PASCAL_SQRT_METRE("Pa sqrt(m)"),
    /** Length. */
    METRE("m"),
    /** Curvature. */
    PER_METRE("1/m"),
    /** Area. */
    SQUARE_METRE("m2"),
    /** Volume. */
    CUBIC_METRE("m3"),
    /** Force. */
    NEWTON("N"),
    /** Moment or torque. */
    NEWTON_METRE("N m"),
    /** Stiffness; surface tension. */
    NEWTON_PER_METRE("N/m"),
    /** Temperature on the Celsius scale. */
    DEGREE_CELSIUS("degC"),
    /** Thermal expansion. */
    PER_KELVIN("1/K"),
    /** Time. */
    SECOND("s"),
    /** Mass. */
    KILOGRAM("kg"),
    /** Mass density. */
    KILOGRAM_PER_CUBIC_METRE("kg/m3"),
    /** Crack velocity. */
    METRE_PER_SECOND("m/s"),
    /** Acceleration. */
    METRE_PER_SECOND_SQUARED("m/s2"),
    /** Thermal conductivity. */
    WATT_PER_METRE_KELVIN("W/(m K)"),
    /** Heat capacity. */
    JOULE_PER_KILOGRAM_KELVIN("J/(kg K)"),
    /** Film coefficient. */
    WATT_PER_SQUARE_METRE_KELVIN("W/(m2 K)"),
    /** Electric potential. */
    VOLT("V"),
    /** Angle. */
    RADIAN("rad"),
    /** Ratio, factor, fraction. */
    ONE("1");

    private final String symbol;

    SiUnit(String symbol) {
        this.symbol = symbol;
    }

    /** {@return the symbol of the unit} */
    public String symbol() {
        return symbol;
    }
}
