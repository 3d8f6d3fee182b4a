package org.shortgrain.report.pdf;

import java.math.BigDecimal;
import java.util.Optional;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.SiUnit;
import org.shortgrain.part.Unit;
import org.shortgrain.review.Amount;

/** Prints the review's numbers in the units asked for. */
final class Numbers {

    /** Digits in running text: more would claim more than a range of stresses can hold. */
    private static final int IN_TEXT = 3;
    /** Digits of a utilisation: it is a quotient of two uncertain numbers. */
    private static final int OF_A_RATIO = 2;
    /** Digits in calculations: enough to follow the arithmetic. */
    private static final int IN_CALCULATIONS = 4;
    /** Moduli read more easily in GPa. */
    private static final double GIGAPASCALS_FROM = 1e10;
    private static final double DEGREES_PER_RADIAN = 180 / Math.PI;
    private static final double HOUR = 3600;
    /** Masses below this (kg) read more easily in grams. */
    private static final double GRAMS_BELOW = 0.1;
    private static final double GRAMS_PER_KILOGRAM = 1e3;

    private final Units units;
    private final Unit figureStress;
    private final Unit figureLength;
    /** Curves have hundreds of points: their factors are looked up once. */
    private final double pascalsPerUnit;
    private final double metresPerUnit;

    Numbers(Units units) {
        this.units = units;
        this.figureStress = units == Units.US ? Unit.KSI : Unit.MEGAPASCAL;
        this.figureLength = units == Units.US ? Unit.INCH : Unit.MILLIMETRE;
        this.pascalsPerUnit = figureStress.toSi(BigDecimal.ONE);
        this.metresPerUnit = figureLength.toSi(BigDecimal.ONE);
    }

    /** {@return the same in one system of units, where two would not fit} */
    Numbers single() {
        return units == Units.BOTH ? new Numbers(Units.SI) : this;
    }

    /**
     * A unit as printed.
     *
     * @param symbol its symbol, empty for a pure number
     * @param unit   the unit of the description's table; empty where the table has none
     * @param factor units for one SI unit, where the table has none
     */
    private record Shown(String symbol, Optional<Unit> unit, double factor) {

        static Shown of(Unit unit) {
            return new Shown(unit.symbol(), Optional.of(unit), 1);
        }

        static Shown of(Unit unit, String symbol) {
            return new Shown(symbol, Optional.of(unit), 1);
        }

        static Shown of(String symbol, double factor) {
            return new Shown(symbol, Optional.empty(), factor);
        }

        double value(double si) {
            return unit.isPresent() ? unit.get().fromSi(si) : si * factor;
        }
    }

    private static Shown si(SiUnit unit, double size) {
        return switch (unit) {
            case PASCAL -> size >= GIGAPASCALS_FROM ? Shown.of(Unit.GIGAPASCAL) : Shown.of(Unit.MEGAPASCAL);
            case PASCAL_PER_METRE -> Shown.of("MPa/mm", 1e-9);
            case PASCAL_SQRT_METRE -> Shown.of(Unit.MEGAPASCAL_ROOT_METRE, "MPa\u221am");
            case METRE -> Shown.of(Unit.MILLIMETRE);
            case PER_METRE -> Shown.of("1/m", 1);
            case SQUARE_METRE -> Shown.of(Unit.SQUARE_MILLIMETRE, "mm\u00b2");
            case CUBIC_METRE -> Shown.of(Unit.MILLILITRE);
            case NEWTON -> Shown.of(Unit.NEWTON);
            case NEWTON_METRE -> Shown.of(Unit.NEWTON_METRE, "N\u00b7m");
            case DEGREE_CELSIUS -> Shown.of(Unit.CELSIUS, "\u00b0C");
            case PER_KELVIN -> Shown.of("10\u207b\u2076/K", 1e6);
            case SECOND -> size >= HOUR ? Shown.of(Unit.HOUR) : Shown.of(Unit.SECOND);
            case KILOGRAM -> size < GRAMS_BELOW ? Shown.of("g", GRAMS_PER_KILOGRAM) : Shown.of("kg", 1);
            case RADIAN -> Shown.of("\u00b0", DEGREES_PER_RADIAN);
            case ONE -> Shown.of("", 1);
            default -> Shown.of(unit.symbol(), 1);
        };
    }

    private static Optional<Shown> us(SiUnit unit) {
        return switch (unit) {
            case PASCAL -> Optional.of(Shown.of(Unit.KSI));
            case PASCAL_SQRT_METRE -> Optional.of(Shown.of(Unit.KSI_ROOT_INCH, "ksi\u221ain"));
            case METRE -> Optional.of(Shown.of(Unit.INCH));
            case SQUARE_METRE -> Optional.of(Shown.of(Unit.SQUARE_INCH, "in\u00b2"));
            case CUBIC_METRE -> Optional.of(Shown.of(Unit.CUBIC_INCH, "in\u00b3"));
            case NEWTON -> Optional.of(Shown.of(Unit.POUND_FORCE));
            case NEWTON_METRE -> Optional.of(Shown.of(Unit.INCH_POUND, "in\u00b7lbf"));
            case DEGREE_CELSIUS -> Optional.of(Shown.of(Unit.FAHRENHEIT, "\u00b0F"));
            default -> Optional.empty();
        };
    }

    /** {@return a value with its unit, to the digits of a calculation} */
    String value(double value, SiUnit unit) {
        return print(unit, Math.abs(value), IN_CALCULATIONS, value);
    }

    /** {@return a value with its unit, to the digits of running text} */
    String rounded(double value, SiUnit unit) {
        return print(unit, Math.abs(value), IN_TEXT, value);
    }

    /** {@return both ends of a range with their unit; empty text for a number that is exact} */
    String range(Band band, SiUnit unit) {
        return band.isExact() ? "" : ends(band.low(), band.high(), unit);
    }

    /** {@return a value with its range behind it and the unit once, for narrow columns} */
    String withRange(Band band, SiUnit unit) {
        if (band.isExact()) {
            return value(band.value(), unit);
        }
        double size = Math.max(Math.abs(band.low()), Math.abs(band.high()));
        Shown shown = units == Units.US ? us(unit).orElse(si(unit, size)) : si(unit, size);
        return Digits.print(shown.value(band.value()), IN_CALCULATIONS) + " (" + print(shown, IN_CALCULATIONS,
                band.low(), band.high()) + ")";
    }

    private String ends(double low, double high, SiUnit unit) {
        return print(unit, Math.max(Math.abs(low), Math.abs(high)), IN_CALCULATIONS, low, high);
    }

    /** {@return the best value of an amount, to the digits of running text} */
    String value(Amount amount) {
        return isStress(amount) ? print(SiUnit.PASCAL, 0, IN_TEXT, pascals(amount.value()))
                : Digits.print(amount.value(), digits(amount)) + unit(amount);
    }

    /** {@return the range of an amount; empty text for a number that is exact} */
    String range(Amount amount) {
        if (amount.low() == amount.high()) {
            return "";
        }
        return isStress(amount)
                ? print(SiUnit.PASCAL, 0, IN_TEXT, pascals(amount.low()), pascals(amount.high()))
                : Digits.print(amount.low(), digits(amount)) + " to " + Digits.print(amount.high(), digits(amount))
                        + unit(amount);
    }

    private static String unit(Amount amount) {
        return amount.unit().equals("1") ? "" : "\u00a0" + amount.unit();
    }

    private static int digits(Amount amount) {
        return amount.unit().equals("1") ? OF_A_RATIO : IN_TEXT;
    }

    private static boolean isStress(Amount amount) {
        return amount.unit().equals(Unit.MEGAPASCAL.symbol());
    }

    private static double pascals(double megapascals) {
        return megapascals * 1e6;
    }

    /** {@return the stress unit of figures} */
    String stressUnit() {
        return figureStress.symbol();
    }

    /** {@return a stress in the unit of figures} */
    double stress(double pascals) {
        return pascals / pascalsPerUnit;
    }

    /** {@return a stress of the review, which counts in MPa, in the unit of figures} */
    double ofMegapascals(double megapascals) {
        return stress(pascals(megapascals));
    }

    /** {@return the length unit of figures} */
    String lengthUnit() {
        return figureLength.symbol();
    }

    /** {@return a length in the unit of figures} */
    double length(double metres) {
        return metres / metresPerUnit;
    }

    /** One value, or a range of two, with the unit behind. */
    private String print(SiUnit unit, double size, int digits, double... values) {
        Shown si = si(unit, size);
        Optional<Shown> us = us(unit);
        if (units == Units.SI || us.isEmpty()) {
            return print(si, digits, values);
        }
        if (units == Units.US) {
            return print(us.get(), digits, values);
        }
        return print(si, digits, values) + " [" + print(us.get(), digits, values) + "]";
    }

    private static String print(Shown shown, int digits, double... values) {
        StringBuilder text = new StringBuilder();
        for (double value : values) {
            text.append(text.isEmpty() ? "" : " to ").append(Digits.print(shown.value(value), digits));
        }
        if (!shown.symbol().isEmpty()) {
            text.append(shown.symbol().equals("\u00b0") ? "" : "\u00a0").append(shown.symbol());
        }
        return text.toString();
    }
}
