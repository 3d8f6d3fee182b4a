package org.shortgrain.part.reader;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shortgrain.part.Dimension;
import org.shortgrain.part.Quantity;
import org.shortgrain.part.Unit;

/** Text such as {@code 76 mm} to a quantity; what does not fit is refused with the units that would. */
final class QuantityText {
    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private final Problems problems;

    QuantityText(Problems problems) {
        this.problems = problems;
    }

    Optional<Quantity> read(Scalar scalar, Spot spot, Expected.Measure measure) {
        String text = scalar.text().strip().replace('\u2212', '-').replace('\u00a0', ' ').replace('\u202f', ' ');
        Matcher parts = Unit.WRITTEN.matcher(text);
        Optional<Unit> unit = parts.matches() ? Unit.of(BLANKS.matcher(parts.group(2)).replaceAll(" "))
                : Optional.empty();
        if (unit.isEmpty()) {
            return refuse(text, parts, spot, measure.dimension());
        }
        if (unit.get().dimension() != measure.dimension()) {
            problems.add(ProblemCode.WRONG_DIMENSION, spot.at(), Values.shown(text), unit.get().dimension().noun(),
                    measure.dimension().noun(), list(symbols(measure.dimension())));
            return Optional.empty();
        }
        return within(unit.get().toSi(new BigDecimal(parts.group(1))), text, spot, measure);
    }

    private Optional<Quantity> refuse(String text, Matcher parts, Spot spot, Dimension dimension) {
        List<String> units = symbols(dimension);
        String usual = "Write a number, a blank and a unit, such as \"76 " + units.get(0) + "\"";
        Optional<String> habit = Habits.advice(text, units.get(0));
        if (new Scalar(text, true).isNumber()) {
            problems.add(ProblemCode.BARE_NUMBER, spot.at(), Values.shown(text), dimension.noun(), list(units),
                    units.get(0));
        } else if (parts.matches() && habit.isEmpty()) {
            String symbol = parts.group(2);
            problems.add(ProblemCode.UNKNOWN_UNIT, spot.at(), Values.shown(text), Values.shown(symbol), dimension.noun(),
                    list(units), Nearest.advice(symbol, units, usual));
        } else {
            problems.add(ProblemCode.NOT_A_QUANTITY, spot.at(), Values.shown(text), dimension.noun(), list(units),
                    habit.orElse(usual));
        }
        return Optional.empty();
    }

    private static List<String> symbols(Dimension dimension) {
        return Unit.of(dimension).stream().map(Unit::symbol).toList();
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
