package org.shortgrain.part;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The units that a description may use, each with its exact factor to the SI unit of its {@link Dimension}.
 *
 * <p>Own table, although the rule of the house is "a library first": the reference implementation of JSR 385 cannot
 * convert ksi sqrt(in) and keeps its labels in process-wide state. Factors follow from the definitions of the inch
 * (25.4 mm), the pound (0.453 592 37 kg) and standard gravity (9.806 65 m/s2) in NIST SP 811 (2008), appendix B
 * (status: memory); decimal arithmetic keeps an entered 14.018 mm from becoming 14.018 000 000 000 001 mm.
 */
public enum Unit {
    /** Millimetre. */
    MILLIMETRE(Dimension.LENGTH, "0.001", "mm"),
    /** Metre. */
    METRE(Dimension.LENGTH, "1", "m"),
    /** Centimetre. */
    CENTIMETRE(Dimension.LENGTH, "0.01", "cm"),
    /** Micrometre. */
    MICROMETRE(Dimension.LENGTH, "0.000001", "um", "\u00b5m", "\u03bcm"),
    /** Inch. */
    INCH(Dimension.LENGTH, "0.0254", "in", "inch", "\""),
    /** Foot. */
    FOOT(Dimension.LENGTH, "0.3048", "ft"),

    /** Megapascal. */
    MEGAPASCAL(Dimension.STRESS, "1000000", "MPa", "N/mm2", "N/mm\u00b2"),
    /** Pascal. */
    PASCAL(Dimension.STRESS, "1", "Pa"),
    /** Kilopascal. */
    KILOPASCAL(Dimension.STRESS, "1000", "kPa"),
    /** Gigapascal. */
    GIGAPASCAL(Dimension.STRESS, "1000000000", "GPa"),
    /** Bar. */
    BAR(Dimension.STRESS, "100000", "bar"),
    /** Thousand pounds-force per square inch. */
    KSI(Dimension.STRESS, Factor.PSI.multiply(Factor.THOUSAND), "ksi"),
    /** Pound-force per square inch. */
    PSI(Dimension.STRESS, Factor.PSI, "psi"),

    /** Degree Celsius. */
    CELSIUS(Dimension.TEMPERATURE, "1", "degC", "\u00b0C"),
    /** Degree Fahrenheit: 32 degF is 0 degC, and 9 degF are 5 degC. */
    FAHRENHEIT(Dimension.TEMPERATURE, Factor.FIVE_NINTHS, "degF", "\u00b0F"),
    /** Kelvin: 273.15 K is 0 degC. */
    KELVIN(Dimension.TEMPERATURE, "1", "K"),

    /** Hour. */
    HOUR(Dimension.TIME, "3600", "h", "hour", "hours"),
    /** Second. */
    SECOND(Dimension.TIME, "1", "s"),
    /** Minute. */
    MINUTE(Dimension.TIME, "60", "min", "minute", "minutes"),
    /** Day. */
    DAY(Dimension.TIME, "86400", "d", "day", "days"),
    /** Week. */
    WEEK(Dimension.TIME, "604800", "week", "weeks"),
    /** Month: a twelfth of the year below. */
    MONTH(Dimension.TIME, "2629800", "month", "months"),
    /** Year of 365.25 days. */
    YEAR(Dimension.TIME, "31557600", "years", "year", "a"),

    /** Newton. */
    NEWTON(Dimension.FORCE, "1", "N"),
    /** Kilonewton. */
    KILONEWTON(Dimension.FORCE, "1000", "kN"),
    /** Pound-force. */
    POUND_FORCE(Dimension.FORCE, Factor.LBF, "lbf"),

    /** Newton metre. */
    NEWTON_METRE(Dimension.TORQUE, "1", "Nm", "N m", "N\u00b7m"),
    /** Inch pound-force. */
    INCH_POUND(Dimension.TORQUE, Factor.LBF.multiply(Factor.INCH), "in lbf", "in-lbf", "lbf in", "in-lb", "in lb"),
    /** Foot pound-force. */
    FOOT_POUND(Dimension.TORQUE, Factor.LBF.multiply(new BigDecimal("0.3048")), "ft lbf", "ft-lbf", "lbf ft", "ft-lb",
            "ft lb"),

    /** Kilogram. */
    KILOGRAM(Dimension.MASS, "1", "kg"),
    /** Gram. */
    GRAM(Dimension.MASS, "0.001", "g"),
    /** Pound. */
    POUND(Dimension.MASS, "0.45359237", "lb"),

    /** Degree of angle. */
    DEGREE(Dimension.ANGLE, new BigDecimal(Math.PI).divide(new BigDecimal(180), MathContext.DECIMAL128), "deg",
            "\u00b0"),
    /** Radian. */
    RADIAN(Dimension.ANGLE, "1", "rad"),

    /** Millilitre. */
    MILLILITRE(Dimension.VOLUME, "0.000001", "ml", "mL", "cm3", "cm\u00b3"),
    /** Litre. */
    LITRE(Dimension.VOLUME, "0.001", "L", "l"),
    /** Cubic metre. */
    CUBIC_METRE(Dimension.VOLUME, "1", "m3", "m\u00b3"),
    /** Cubic inch. */
    CUBIC_INCH(Dimension.VOLUME, "0.000016387064", "in3", "in\u00b3"),

    /** Square millimetre. */
    SQUARE_MILLIMETRE(Dimension.AREA, "0.000001", "mm2", "mm\u00b2"),
    /** Square centimetre. */
    SQUARE_CENTIMETRE(Dimension.AREA, "0.0001", "cm2", "cm\u00b2"),
    /** Square metre. */
    SQUARE_METRE(Dimension.AREA, "1", "m2", "m\u00b2"),
    /** Square inch. */
    SQUARE_INCH(Dimension.AREA, "0.00064516", "in2", "in\u00b2"),

    /** Per cent of the International Annealed Copper Standard. */
    PER_CENT_IACS(Dimension.CONDUCTIVITY, "0.01", "%IACS", "% IACS"),
    /** Megasiemens per metre: annealed copper has 58 of them (IEC 60028; status: memory). */
    MEGASIEMENS_PER_METRE(Dimension.CONDUCTIVITY,
            BigDecimal.ONE.divide(new BigDecimal(58), MathContext.DECIMAL128), "MS/m"),

    /** Megapascal square root of metre. */
    MEGAPASCAL_ROOT_METRE(Dimension.STRESS_INTENSITY, "1000000", "MPa sqrt(m)", "MPa*sqrt(m)", "MPa\u221am",
            "MPa \u221am", "MPa m^0.5", "MPa m^1/2"),
    /** Thousand pounds-force per square inch square root of inch. */
    KSI_ROOT_INCH(Dimension.STRESS_INTENSITY,
            Factor.PSI.multiply(Factor.THOUSAND).multiply(Factor.INCH.sqrt(MathContext.DECIMAL128)), "ksi sqrt(in)",
            "ksi*sqrt(in)", "ksi\u221ain", "ksi \u221ain", "ksi in^0.5", "ksi in^1/2"),

    /** Per cent. */
    PER_CENT(Dimension.SHARE, "0.01", "%", "per cent", "percent");

    /** Significant digits of a printed SI value: fits in mm need five, and a digit more does no harm. */
    private static final MathContext PRINTED = new MathContext(6);
    /** A quantity as it is written: a plain decimal number, perhaps a blank, and a unit. */
    public static final Pattern WRITTEN = Pattern.compile("([-+]?[0-9]{1,18}(?:\\.[0-9]{1,18})?)\\s*(\\D.*)");

    private static final Map<String, Unit> BY_SYMBOL = bySymbol();
    private static final BigDecimal ICE_POINT_F = new BigDecimal(32);
    private static final BigDecimal ICE_POINT_K = new BigDecimal("273.15");

    private static final Map<Dimension, Unit> PRINTED_UNIT = printedUnits();

    private final Dimension dimension;
    private final BigDecimal factor;
    /** The factor, where a number of the machine holds it exactly; else 0. */
    private final double divisor;
    /** One divided by the factor, where a number of the machine holds it exactly; else 0. */
    private final double multiplier;
    private final List<String> symbols;

    Unit(Dimension dimension, BigDecimal factor, String... symbols) {
        this.dimension = dimension;
        this.factor = factor;
        this.divisor = exact(factor);
        this.multiplier = wholeInverse(factor);
        this.symbols = List.of(symbols);
    }

    /** A whole number that a number of the machine holds exactly (up to 2 to the 53rd); 0 for any other. */
    private static double exact(BigDecimal number) {
        boolean whole = number.stripTrailingZeros().scale() <= 0;
        return whole && number.compareTo(BigDecimal.valueOf(1L << 53)) <= 0 ? number.doubleValue() : 0;
    }

    /** One divided by a factor, if it is whole and held exactly; else 0. In whole numbers: decimals are slow to divide. */
    private static double wholeInverse(BigDecimal factor) {
        BigInteger[] inverse = BigInteger.TEN.pow(factor.scale()).divideAndRemainder(factor.unscaledValue());
        return inverse[1].signum() == 0 ? exact(new BigDecimal(inverse[0])) : 0;
    }

    Unit(Dimension dimension, String factor, String... symbols) {
        this(dimension, new BigDecimal(factor), symbols);
    }

    private static Map<String, Unit> bySymbol() {
        Map<String, Unit> units = new HashMap<>();
        for (Unit unit : values()) {
            for (String symbol : unit.symbols) {
                units.put(symbol, unit);
            }
        }
        return Map.copyOf(units);
    }

    private static Map<Dimension, Unit> printedUnits() {
        Map<Dimension, Unit> first = new EnumMap<>(Dimension.class);
        for (Unit unit : values()) {
            first.putIfAbsent(unit.dimension, unit);
        }
        return first;
    }

    /** {@return what this is a unit of} */
    public Dimension dimension() {
        return dimension;
    }

    /** {@return the symbol that messages and reports use} */
    public String symbol() {
        return symbols.get(0);
    }

    /** {@return every spelling that the reader takes, the usual one first} */
    public List<String> symbols() {
        return symbols;
    }

    /**
     * {@return the value in the SI unit of the dimension, temperatures in degC}
     *
     * @param value value in this unit
     */
    public double toSi(BigDecimal value) {
        return value.subtract(zero()).multiply(factor).doubleValue();
    }

    /**
     * {@return the value in this unit: the nearest number where the factor or its inverse is whole, else within one unit in
     * the last place}
     *
     * @param si value in the SI unit of the dimension, temperatures in degC
     * @throws NumberFormatException if it is not finite
     */
    public double fromSi(double si) {
        if (Double.isFinite(si) && zero().signum() == 0 && (divisor != 0 || multiplier != 0)) {
            // adding 0 takes the sign off a zero
            return (divisor != 0 ? si / divisor : si * multiplier) + 0.0;
        }
        return new BigDecimal(si).divide(factor, MathContext.DECIMAL128).add(zero()).doubleValue();
    }

    /** The reading of this scale at zero of the SI scale (temperatures: at 0 degC). */
    private BigDecimal zero() {
        return switch (this) {
            case FAHRENHEIT -> ICE_POINT_F;
            case KELVIN -> ICE_POINT_K;
            default -> BigDecimal.ZERO;
        };
    }

    /**
     * {@return the unit of that spelling; capitals matter, as between mPa and MPa}
     *
     * @param symbol a spelling
     */
    public static Optional<Unit> of(String symbol) {
        return Optional.ofNullable(BY_SYMBOL.get(symbol));
    }

    /**
     * {@return the value of a quantity written as a number, a blank and a unit, such as {@code 60 mm}, in the SI unit of
     * its dimension; empty if the text is no quantity of that dimension}
     *
     * @param text      the text
     * @param dimension what it should be a value of
     */
    public static Optional<Double> quantity(String text, Dimension dimension) {
        Matcher parts = WRITTEN.matcher(text.strip());
        return parts.matches() ? of(parts.group(2).strip()).filter(unit -> unit.dimension() == dimension)
                .map(unit -> unit.toSi(new BigDecimal(parts.group(1)))) : Optional.empty();
    }

    /**
     * {@return the units of a dimension; the first is the one that reports print}
     *
     * @param dimension the dimension
     */
    public static List<Unit> of(Dimension dimension) {
        return Arrays.stream(values()).filter(unit -> unit.dimension == dimension).toList();
    }

    /**
     * {@return the value in the unit that reports print, such as {@code 2.54 mm} or {@code 48.2633 MPa}}
     *
     * @param si        value in the SI unit of the dimension, temperatures in degC
     * @param dimension what it is a value of
     */
    public static String print(double si, Dimension dimension) {
        Unit unit = PRINTED_UNIT.get(dimension);
        BigDecimal value = new BigDecimal(unit.fromSi(si)).round(PRINTED).stripTrailingZeros();
        return value.toPlainString() + " " + unit.symbol();
    }

    /** Factors that several units share. */
    private static final class Factor {
        private static final BigDecimal THOUSAND = new BigDecimal(1000);
        private static final BigDecimal INCH = new BigDecimal("0.0254");
        private static final BigDecimal FIVE_NINTHS =
                new BigDecimal(5).divide(new BigDecimal(9), MathContext.DECIMAL128);
        /** Pound times standard gravity, in N. */
        private static final BigDecimal LBF = new BigDecimal("0.45359237").multiply(new BigDecimal("9.80665"));
        private static final BigDecimal PSI = LBF.divide(INCH.pow(2), MathContext.DECIMAL128);
    }
}
