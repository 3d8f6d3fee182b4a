package org.shortgrain.part.reader;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shortgrain.part.Dimension;
import org.shortgrain.part.Quantity;
import org.shortgrain.part.Unit;

/** Text such as {@code 76 mm} to a quantity; what does not fit is refused with the units that would. */
final class QuantityText {
    private static final Pattern NUMBER_AND_UNIT = Pattern.compile("([-+]?[0-9]{1,18}(?:\\.[0-9]{1,18})?)\\s*(\\D.*)");
    private static final String USUAL = "Write a number, a blank and a unit, such as \"%s %s\"";
    /** What is often written instead, and what to write. */
    private static final Map<Pattern, String> HABITS = habits();

    private final Problems problems;

    QuantityText(Problems problems) {
        this.problems = problems;
    }

    private static Map<Pattern, String> habits() {
        Map<Pattern, String> habits = new LinkedHashMap<>();
        habits.put(Pattern.compile("[0-9][,'\u2019][0-9].*|[0-9]+ [0-9].*"),
                "Write decimals with a point and thousands without separator, such as \"0.5 %2$s\" or \"1000 %2$s\"");
        habits.put(Pattern.compile("[0-9] ?/ ?[0-9]"), "Write fractions as decimals, such as \"0.375 %2$s\"");
        habits.put(Pattern.compile("[0-9][eE][-+]?[0-9]"), "Write the number out, without exponent");
        habits.put(Pattern.compile("(^|[^0-9])\\.[0-9]"), "Write a zero before the point, such as \"0.5 %2$s\"");
        habits.put(Pattern.compile("[0-9] ?[^0-9]{0,4}(-|\u2013|to|\u2026|\\.\\.) ?[0-9]|\u00b1|\\+/?-|[<>~\u2264\u2265]|max|min"),
                "Write limits as {min: 1 %2$s, max: 2 %2$s}, or one of the two");
        return habits;
    }

    Optional<Quantity> read(Scalar scalar, Spot spot, Expected.Measure measure) {
        String text = scalar.text().strip().replace('\u2212', '-').replace('\u00a0', ' ').replace('\u202f', ' ');
        List<String> units = Unit.of(measure.dimension()).stream().map(Unit::symbol).toList();
        if (new Scalar(text, true).isNumber()) {
            problems.add(ProblemCode.BARE_NUMBER, spot.at(), Values.shown(text), measure.dimension().noun(), list(units),
                    units.get(0));
            return Optional.empty();
        }
        Matcher parts = NUMBER_AND_UNIT.matcher(text);
        Optional<String> advice = habit(text, units.get(0));
        if (!parts.matches() || advice.isPresent() && Unit.of(unitText(parts)).isEmpty()) {
            problems.add(ProblemCode.NOT_A_QUANTITY, spot.at(), Values.shown(text), measure.dimension().noun(),
                    list(units), advice.orElse(USUAL.formatted("76", units.get(0))));
            return Optional.empty();
        }
        return unit(unitText(parts), text, spot, measure.dimension()).flatMap(
                unit -> within(unit.toSi(new BigDecimal(parts.group(1))), text, spot, measure));
    }

    private static String unitText(Matcher parts) {
        return parts.group(2).strip().replaceAll("\\s+", " ");
    }

    private static Optional<String> habit(String text, String unit) {
        return HABITS.entrySet().stream().filter(habit -> habit.getKey().matcher(text).find())
                .map(habit -> habit.getValue().formatted("", unit)).findFirst();
    }

    private Optional<Unit> unit(String symbol, String text, Spot spot, Dimension dimension) {
        List<String> units = Unit.of(dimension).stream().map(Unit::symbol).toList();
        Optional<Unit> unit = Unit.of(symbol);
        if (unit.isEmpty()) {
            problems.add(ProblemCode.UNKNOWN_UNIT, spot.at(), Values.shown(text), Values.shown(symbol), dimension.noun(),
                    list(units), Nearest.advice(symbol, units, USUAL.formatted("76", units.get(0))));
        } else if (unit.get().dimension() != dimension) {
            problems.add(ProblemCode.WRONG_DIMENSION, spot.at(), Values.shown(text), unit.get().dimension().noun(),
                    dimension.noun(), list(units));
        }
        return unit.filter(found -> found.dimension() == dimension);
    }

    private Optional<Quantity> within(double si, String text, Spot spot, Expected.Measure measure) {
        Expected.Bounds bounds = measure.bounds();
        if (!bounds.hold(si)) {
            String lower = bounds.positive() ? "above " + print(0, measure) : "of at least " + print(bounds.min(), measure);
            problems.add(ProblemCode.OUT_OF_RANGE, spot.at(), Values.shown(text), "a %s %s, at most %s"
                    .formatted(measure.dimension().noun(), lower, print(bounds.max(), measure)));
            return Optional.empty();
        }
        if (!bounds.areUsual(si)) {
            problems.add(ProblemCode.UNUSUAL, spot.at(), Values.shown(text), print(bounds.usualMin(), measure),
                    print(bounds.usualMax(), measure));
        }
        return Optional.of(new Quantity(si, text));
    }

    private static String print(double si, Expected.Measure measure) {
        return Double.isInfinite(si) ? "any" : Unit.print(si, measure.dimension());
    }

    static String list(List<String> words) {
        return String.join(", ", words);
    }
}
