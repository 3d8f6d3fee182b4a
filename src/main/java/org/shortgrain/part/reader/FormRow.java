package org.shortgrain.part.reader;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.shortgrain.part.Dimension;
import org.shortgrain.part.Minimum;
import org.shortgrain.part.Vocabulary;

/**
 * A row of the table of forms: one component of a record.
 *
 * @param cells its cells
 */
record FormRow(CsvRecord cells) {
    private static final String YES = "yes";

    /** The columns in their order. */
    private enum Column {
        RECORD, COMPONENT, KEY,
        /** Whether a list of such values is expected. */
        LIST,
        /** What is expected, by the name of its record in {@link Expected}; or what the component is, if it is no key. */
        KIND,
        /** The dimension, the enum, the record or the list of words. */
        OF,
        VERBATIM, DATE, SHARE,
        /** Limits in the SI unit; blank where there is none. */
        MIN, MAX, POSITIVE, USUAL_MIN, USUAL_MAX,
        /** Role in the minimum set; blank for what is not in it. */
        MINIMUM, NONE_ANSWERS,
        IN_SHORT, MEANING
    }

    static List<String> heads() {
        return Arrays.stream(Column.values()).map(column -> column.name().toLowerCase(Locale.ROOT)).toList();
    }

    /** The cells of a row. */
    static List<String> write(String record, Expected.Component component) {
        Map<Column, String> cells = new EnumMap<>(Column.class);
        cells.put(Column.RECORD, record);
        if (component instanceof Expected.Field field) {
            cells.put(Column.COMPONENT, field.component());
            cells.put(Column.KEY, field.key());
            write(field.expected(), cells);
            field.need().ifPresent(need -> {
                cells.put(Column.MINIMUM, need.role().name());
                cells.put(Column.NONE_ANSWERS, flag(need.noneAnswers()));
            });
            cells.put(Column.IN_SHORT, flag(field.inShort()));
            cells.put(Column.MEANING, field.meaning());
        } else {
            cells.put(Column.KIND, component.toString());
        }
        return Arrays.stream(Column.values()).map(column -> cells.getOrDefault(column, "")).toList();
    }

    private static void write(Expected expected, Map<Column, String> cells) {
        cells.put(Column.KIND, expected.getClass().getSimpleName());
        if (expected instanceof Expected.ListOf list) {
            cells.put(Column.LIST, YES);
            write(list.item(), cells);
        } else if (expected instanceof Expected.Text text) {
            cells.put(Column.VERBATIM, flag(text.verbatim()));
            cells.put(Column.DATE, flag(text.date()));
            text.words().ifPresent(list -> cells.put(Column.OF, list.name()));
        } else if (expected instanceof Expected.Number number) {
            cells.put(Column.SHARE, flag(number.share()));
            write(number.bounds(), cells);
        } else if (expected instanceof Expected.Measure measure) {
            cells.put(Column.OF, measure.dimension().name());
            write(measure.bounds(), cells);
        } else if (expected instanceof Expected.Moisture moisture) {
            write(moisture.bounds(), cells);
        } else if (expected instanceof Expected.OneOf words) {
            cells.put(Column.OF, words.enumName());
        } else if (expected instanceof Expected.Group group) {
            cells.put(Column.OF, group.name());
        }
    }

    private static void write(Expected.Bounds bounds, Map<Column, String> cells) {
        cells.put(Column.MIN, limit(bounds.min()));
        cells.put(Column.MAX, limit(bounds.max()));
        cells.put(Column.POSITIVE, flag(bounds.positive()));
        cells.put(Column.USUAL_MIN, limit(bounds.usualMin()));
        cells.put(Column.USUAL_MAX, limit(bounds.usualMax()));
    }

    private static String flag(boolean isSet) {
        return isSet ? YES : "";
    }

    private static String limit(double si) {
        return Double.isInfinite(si) ? "" : Double.toString(si);
    }

    String record() {
        return text(Column.RECORD);
    }

    Expected.Component component() {
        return switch (text(Column.KIND)) {
            case "ORIGIN" -> Expected.Other.ORIGIN;
            case "VERSION" -> Expected.Other.VERSION;
            default -> new Expected.Field(text(Column.KEY), text(Column.COMPONENT), expected(), text(Column.MEANING), need(),
                    isSet(Column.IN_SHORT));
        };
    }

    private Expected expected() {
        Expected item = item();
        return isSet(Column.LIST) ? new Expected.ListOf(item) : item;
    }

    private Expected item() {
        return switch (text(Column.KIND)) {
            case "Text" -> new Expected.Text(isSet(Column.VERBATIM), isSet(Column.DATE), words());
            case "Number" -> new Expected.Number(isSet(Column.SHARE), bounds());
            case "Truth" -> new Expected.Truth();
            case "Measure" -> new Expected.Measure(Dimension.valueOf(text(Column.OF)), bounds());
            case "OneOf" -> new Expected.OneOf(text(Column.OF));
            case "PartAxis" -> new Expected.PartAxis();
            case "Direction" -> new Expected.Direction();
            case "Moisture" -> new Expected.Moisture(bounds());
            case "Group" -> new Expected.Group(text(Column.OF));
            default -> throw new IllegalStateException("unknown kind in the table of forms: " + cells);
        };
    }

    private Optional<Vocabulary.List> words() {
        return text(Column.OF).isEmpty() ? Optional.empty() : Optional.of(Vocabulary.List.valueOf(text(Column.OF)));
    }

    private Optional<Expected.Need> need() {
        return text(Column.MINIMUM).isEmpty() ? Optional.empty()
                : Optional.of(new Expected.Need(Minimum.Role.valueOf(text(Column.MINIMUM)), isSet(Column.NONE_ANSWERS)));
    }

    private Expected.Bounds bounds() {
        return new Expected.Bounds(limit(Column.MIN, Double.NEGATIVE_INFINITY), limit(Column.MAX, Double.POSITIVE_INFINITY),
                isSet(Column.POSITIVE), limit(Column.USUAL_MIN, Double.NEGATIVE_INFINITY),
                limit(Column.USUAL_MAX, Double.POSITIVE_INFINITY));
    }

    private double limit(Column column, double without) {
        return text(column).isEmpty() ? without : Double.parseDouble(text(column));
    }

    private boolean isSet(Column column) {
        return text(column).equals(YES);
    }

    private String text(Column column) {
        return cells.getField(column.ordinal());
    }
}
