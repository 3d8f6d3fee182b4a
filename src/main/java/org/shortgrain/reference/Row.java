package org.shortgrain.reference;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.SourceStatus;

/** One row of a CSV table, with typed and checked access to its fields. A fault is noted, not thrown. */
final class Row {
    private static final SourceStatus[] STATUS = SourceStatus.values();

    private final Csv csv;
    private final String file;
    private final Map<String, Integer> columns;
    private final CsvRecord fields;

    Row(Csv csv, String file, Map<String, Integer> columns, CsvRecord fields) {
        this.csv = csv;
        this.file = file;
        this.columns = columns;
        this.fields = fields;
    }

    private long line() {
        return fields.getStartingLineNumber();
    }

    void fault(String what) {
        csv.faults().add(file, line(), what);
    }

    /** {@return where the row stands} */
    String place() {
        return file + ":" + line();
    }

    /**
     * {@return the text of a field, stripped; empty when blank}
     *
     * @param column head of the column
     */
    String text(String column) {
        Integer i = columns.get(column);
        return i == null || i >= fields.getFieldCount() ? "" : fields.getField(i).strip();
    }

    String required(String column) {
        String text = text(column);
        if (text.isEmpty()) {
            fault(column + " is blank");
        }
        return text;
    }

    /**
     * {@return the items of a field that holds a list, separated by {@code |}}
     *
     * @param column head of the column
     */
    List<String> list(String column) {
        String text = text(column);
        if (text.isEmpty()) {
            return List.of();
        }
        return text.indexOf('|') < 0 ? List.of(text) : List.of(text.split("\\|"));
    }

    Set<String> set(String column) {
        return new LinkedHashSet<>(list(column));
    }

    /**
     * {@return a number in another unit, if the field is not blank}
     *
     * @param column head of the column, which names the unit of the field
     * @param lowest  least plausible value, in the unit of the field
     * @param highest greatest plausible value, in the unit of the field
     * @param factor  what one unit of the field is in the unit wanted
     */
    OptionalDouble number(String column, double lowest, double highest, double factor) {
        String text = text(column);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            double value = Double.parseDouble(text);
            if (!(lowest <= value && value <= highest)) {
                fault(column + " is " + text + ", outside " + lowest + " to " + highest);
            }
            return OptionalDouble.of(value * factor);
        } catch (NumberFormatException e) {
            fault(column + " is '" + text + "', not a number");
            return OptionalDouble.empty();
        }
    }

    double requiredNumber(String column, double lowest, double highest, double factor) {
        required(column);
        return number(column, lowest, highest, factor).orElse(0);
    }

    String oneOf(String column, Set<String> words) {
        String text = text(column);
        if (!words.contains(text)) {
            fault(column + " is '" + text + "'; expected one of " + words);
        }
        return text;
    }

    /**
     * {@return the constant whose name is the text of a field, blanks for underscores; the first one after a fault}
     *
     * @param column    head of the column
     * @param constants constants
     * @param <E>       enumeration
     */
    <E extends Enum<E>> E constant(String column, E[] constants) {
        return constant(column, text(column), constants);
    }

    /** {@return the constants whose names are the items of a list} */
    <E extends Enum<E>> Set<E> constants(String column, Class<E> type) {
        Set<E> named = EnumSet.noneOf(type);
        for (String item : list(column)) {
            named.add(constant(column, item, type.getEnumConstants()));
        }
        return named;
    }

    private <E extends Enum<E>> E constant(String column, String text, E[] constants) {
        String name = text.toUpperCase(Locale.ROOT).replace(' ', '_');
        for (E constant : constants) {
            if (constant.name().equals(name)) {
                return constant;
            }
        }
        fault(column + " is '" + text + "'; expected one of "
                + Arrays.toString(constants).toLowerCase(Locale.ROOT).replace('_', ' '));
        return constants[0];
    }

    boolean yes(String column) {
        return oneOf(column, Set.of("yes", "no")).equals("yes");
    }

    SourceStatus status(String column) {
        String word = text(column);
        for (SourceStatus status : STATUS) {
            if (status.word().equals(word)) {
                return status;
            }
        }
        fault(column + " is '" + word + "'; expected one of "
                + Arrays.stream(STATUS).map(SourceStatus::word).collect(Collectors.joining(", ", "[", "]")));
        return SourceStatus.MEMORY;
    }

    /** {@return the citation that the columns source, clause and status make; the document must be a listed one} */
    Citation citation() {
        String id = required("source");
        if (!csv.documents().has(id)) {
            fault("source '" + id + "' is not in " + Sources.FILE);
        }
        return new Citation(id, text("clause"), status("status"));
    }
}
