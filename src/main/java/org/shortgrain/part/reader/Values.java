package org.shortgrain.part.reader;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.shortgrain.part.Axis;
import org.shortgrain.part.Dimension;
import org.shortgrain.part.DirectionWord;
import org.shortgrain.part.Humidity;
import org.shortgrain.part.Quantity;
import org.shortgrain.part.Range;
import org.shortgrain.part.StressDirection;
import org.shortgrain.part.Vocabulary;

/** One value: text, a number, a quantity, a word, a direction. An empty answer means that a problem was reported. */
final class Values {
    /** Longest text that a message repeats. */
    private static final int SHOWN = 60;
    /** Words that people write in place of an answer; none says whether there is none or whether nobody looked. */
    private static final Set<String> UNCLEAR = Set.of("no", "yes", "n/a", "na", "n.a.", "nil", "tbd", "tba", "?", "-", "--",
            "nothing", "not known", "not stated", "true", "false", "y", "n", "on", "off");
    private static final Set<Vocabulary.List> OPEN_LISTS = Set.of(Vocabulary.List.OPERATIONS);

    private final Problems problems;
    private final Vocabularies vocabularies;
    private final QuantityText quantities;

    Values(Problems problems, Vocabularies vocabularies) {
        this.problems = problems;
        this.vocabularies = vocabularies;
        this.quantities = new QuantityText(problems);
    }

    Optional<?> read(Expected expected, Spot spot) {
        if (expected instanceof Expected.PartAxis) {
            return axis(spot);
        }
        if (expected instanceof Expected.Measure measure) {
            return range(measure, spot);
        }
        if (expected instanceof Expected.Moisture moisture) {
            return moisture(moisture, spot);
        }
        if (expected instanceof Expected.Direction direction) {
            return direction(direction, spot);
        }
        Optional<Scalar> scalar = Scalar.of(spot);
        if (scalar.isEmpty()) {
            return wrongKind(expected, spot);
        }
        return scalar(expected, scalar.get(), spot);
    }

    private Optional<?> scalar(Expected expected, Scalar scalar, Spot spot) {
        if (expected instanceof Expected.Text text) {
            return text(text, scalar, spot);
        }
        if (expected instanceof Expected.Number number) {
            return number(number, scalar, spot);
        }
        return expected instanceof Expected.OneOf words ? word(words, scalar, spot) : truth(scalar, spot);
    }

    Optional<String> text(Expected.Text expected, Spot spot) {
        Optional<Scalar> scalar = Scalar.of(spot);
        if (scalar.isEmpty()) {
            wrongKind(expected, spot);
            return Optional.empty();
        }
        return text(expected, scalar.get(), spot);
    }

    private Optional<String> text(Expected.Text expected, Scalar scalar, Spot spot) {
        String text = scalar.text();
        if (scalar.plain() && !expected.verbatim() && UNCLEAR.contains(text.toLowerCase(Locale.ROOT))
                || scalar.isTruth()) {
            problems.add(ProblemCode.UNCLEAR_ANSWER, spot.at(), shown(text), Wanted.of(expected, vocabularies));
            return Optional.empty();
        }
        OptionalInt unprintable = unprintable(text);
        if (unprintable.isPresent()) {
            problems.add(ProblemCode.UNPRINTABLE_TEXT, spot.at(), YamlText.hex(unprintable.getAsInt()));
            return Optional.empty();
        }
        if (expected.date() && !Dates.isDate(text)) {
            problems.add(ProblemCode.NOT_A_DATE, spot.at(), shown(text));
            return Optional.empty();
        }
        return expected.words().isEmpty() ? Optional.of(text) : listed(expected.words().get(), text, spot);
    }

    /** The first character of a text that cannot be printed. */
    static OptionalInt unprintable(String text) {
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            if (isUnprintable(text.codePointAt(i))) {
                return OptionalInt.of(text.codePointAt(i));
            }
        }
        return OptionalInt.empty();
    }

    private static boolean isUnprintable(int character) {
        boolean blank = character == '\n' || character == '\t';
        return Character.isISOControl(character) && !blank || Character.getType(character) == Character.SURROGATE;
    }

    /** A word that is data of the rulebook. Operations are an open list: an unknown one becomes a question later. */
    private Optional<String> listed(Vocabulary.List list, String text, Spot spot) {
        Optional<String> word = vocabularies.canonical(list, text);
        if (word.isPresent() || OPEN_LISTS.contains(list)) {
            return Optional.of(word.orElse(text));
        }
        List<String> words = vocabularies.words(list);
        problems.add(ProblemCode.UNKNOWN_WORD, spot.at(), shown(text), QuantityText.list(words),
                Nearest.advice(text, words, "Choose the word that comes closest, or unknown"));
        return Optional.empty();
    }

    private Optional<Double> number(Expected.Number expected, Scalar scalar, Spot spot) {
        if (!scalar.isNumber() && expected.share() && scalar.text().contains("%")) {
            return quantities.read(scalar, spot, new Expected.Measure(Dimension.SHARE,
                    expected.bounds())).map(Quantity::si);
        }
        if (!scalar.isNumber()) {
            String advice = scalar.looksLikeNumber() ? "Take the quotes off"
                    : "Write the number out in digits with a decimal point, or unknown";
            problems.add(ProblemCode.NOT_A_NUMBER, spot.at(), shown(scalar.text()), advice);
            return Optional.empty();
        }
        double number = Double.parseDouble(scalar.text());
        if (!expected.bounds().hold(number)) {
            problems.add(ProblemCode.OUT_OF_RANGE, spot.at(), scalar.text(), "a number " + limits(expected.bounds()));
            return Optional.empty();
        }
        return Optional.of(number);
    }

    private static String limits(Expected.Bounds bounds) {
        String lower = bounds.positive() ? "above 0" : "at least " + plain(bounds.min());
        return Double.isInfinite(bounds.max()) ? lower : lower + ", at most " + plain(bounds.max());
    }

    private static String plain(double number) {
        return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
    }

    private Optional<Boolean> truth(Scalar scalar, Spot spot) {
        if (scalar.isTruth()) {
            return Optional.of(Boolean.parseBoolean(scalar.text()));
        }
        String advice = Map.of("yes", "Write true", "no", "Write false")
                .getOrDefault(scalar.text().toLowerCase(Locale.ROOT), "Write true or false without quotes");
        problems.add(ProblemCode.NOT_TRUE_OR_FALSE, spot.at(), shown(scalar.text()), advice);
        return Optional.empty();
    }

    private Optional<Object> word(Expected.OneOf expected, Scalar scalar, Spot spot) {
        Object meant = expected.words().get(scalar.text());
        if (meant == null) {
            List<String> words = List.copyOf(expected.words().keySet());
            problems.add(ProblemCode.UNKNOWN_WORD, spot.at(), shown(scalar.text()), QuantityText.list(words),
                    Nearest.advice(scalar.text(), words, "Choose the word that comes closest, or unknown"));
        }
        return Optional.ofNullable(meant);
    }

    private Optional<Range> range(Expected.Measure measure, Spot spot) {
        Optional<Scalar> scalar = Scalar.of(spot);
        if (scalar.isPresent()) {
            Optional<Quantity> quantity = quantities.read(scalar.get(), spot, measure);
            return quantity.isPresent() ? Optional.of(Range.of(quantity.get())) : Optional.empty();
        }
        if (!spot.isGroup()) {
            wrongKind(measure, spot);
            return Optional.empty();
        }
        return limits(measure, spot);
    }

    private Optional<Range> limits(Expected.Measure measure, Spot spot) {
        Map<String, Spot> entries = spot.entries();
        Optional<Quantity> min = limit("min", entries, measure);
        Optional<Quantity> max = limit("max", entries, measure);
        if (min.isEmpty() && max.isEmpty()) {
            problems.add(ProblemCode.NO_LIMITS, spot.at());
            return Optional.empty();
        }
        if (min.isPresent() && max.isPresent() && min.get().si() > max.get().si()) {
            problems.add(ProblemCode.CROSSED_LIMITS, spot.at(), shown(min.get().entered()), shown(max.get().entered()));
            return Optional.empty();
        }
        return Optional.of(new Range(min, max));
    }

    /** One limit; none and unknown leave this side open. */
    private Optional<Quantity> limit(String key, Map<String, Spot> entries, Expected.Measure measure) {
        Spot spot = entries.get(key);
        if (spot == null) {
            return Optional.empty();
        }
        Optional<Scalar> scalar = Scalar.of(spot);
        if (scalar.isEmpty()) {
            wrongKind(measure, spot);
            return Optional.empty();
        }
        return scalar.get().state().isPresent() ? Optional.empty() : quantities.read(scalar.get(), spot, measure);
    }

    private Optional<Humidity> moisture(Expected.Moisture expected, Spot spot) {
        Optional<Scalar> scalar = Scalar.of(spot);
        Object word = scalar.isPresent() ? expected.words().words().get(scalar.get().text()) : null;
        if (word != null) {
            return Optional.of(new Humidity(Optional.empty(), Optional.of((Humidity.HumidityWord) word)));
        }
        Optional<Range> range = range(expected.relative(), spot);
        return range.isPresent() ? Optional.of(new Humidity(range, Optional.empty())) : Optional.empty();
    }

    private Optional<StressDirection> direction(Expected.Direction expected, Spot spot) {
        if (spot.isGroup()) {
            Spot along = spot.entries().get("axis");
            Optional<Axis> axis = along == null ? Optional.empty() : axis(along);
            return axis.isPresent() ? Optional.of(new StressDirection.Along(axis.get())) : Optional.empty();
        }
        Optional<Scalar> scalar = Scalar.of(spot);
        if (scalar.isEmpty()) {
            wrongKind(expected, spot);
            return Optional.empty();
        }
        Optional<Object> word = word(expected.words(), scalar.get(), spot);
        return word.isPresent() ? Optional.of(new StressDirection.Named((DirectionWord) word.get())) : Optional.empty();
    }

    private Optional<Axis> axis(Spot spot) {
        Optional<Axis> axis = spot.isList() ? AxisText.vector(spot) : AxisText.named(spot);
        if (axis.isEmpty()) {
            String found = Scalar.of(spot).map(scalar -> '"' + shown(scalar.text()) + '"').orElse("this");
            problems.add(ProblemCode.NOT_AN_AXIS, spot.at(), found);
        }
        return axis;
    }

    Optional<Object> wrongKind(Expected expected, Spot spot) {
        String found = spot.isList() ? "a list" : spot.isGroup() ? "a group of keys"
                : "\"" + shown(Scalar.of(spot).orElseThrow().text()) + "\"";
        problems.add(ProblemCode.WRONG_KIND, spot.at(), found, Wanted.of(expected, vocabularies),
                Wanted.example(expected));
        return Optional.empty();
    }

    /** Text as a message repeats it: on one line, and not without end. */
    static String shown(String text) {
        String line = text.strip().replaceAll("[\\p{Cntrl}\\s]+", " ");
        return line.codePointCount(0, line.length()) <= SHOWN ? line
                : line.substring(0, line.offsetByCodePoints(0, SHOWN)) + "...";
    }
}
