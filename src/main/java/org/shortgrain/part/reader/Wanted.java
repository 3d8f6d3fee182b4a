package org.shortgrain.part.reader;

import java.util.List;
import org.shortgrain.part.Unit;

/** What is expected, in the words of a message. */
final class Wanted {

    private Wanted() {
    }

    static String of(Expected expected, Vocabularies vocabularies) {
        if (expected instanceof Expected.Text text && text.date()) {
            return "a date such as 2026-01-15";
        }
        if (expected instanceof Expected.Text text) {
            return text.words().map(list -> "one of " + QuantityText.list(vocabularies.words(list))).orElse("text");
        }
        if (expected instanceof Expected.OneOf words) {
            return "one of " + QuantityText.list(List.copyOf(words.words().keySet()));
        }
        if (expected instanceof Expected.Measure measure) {
            return "a " + measure.dimension().noun() + " in one of the units " + units(measure);
        }
        if (expected instanceof Expected.Direction direction) {
            return of(direction.words(), vocabularies) + ", or {axis: [0, 0.34, 0.94]}";
        }
        if (expected instanceof Expected.Moisture moisture) {
            return of(moisture.words(), vocabularies) + ", or a share in %";
        }
        return ofStructure(expected, vocabularies);
    }

    private static String ofStructure(Expected expected, Vocabularies vocabularies) {
        if (expected instanceof Expected.Number) {
            return "a number";
        }
        if (expected instanceof Expected.Truth) {
            return "true or false";
        }
        if (expected instanceof Expected.PartAxis) {
            return "a direction such as X, -Z or [0, 0.34, 0.94]";
        }
        if (expected instanceof Expected.ListOf list) {
            return "a list, each item " + of(list.item(), vocabularies);
        }
        return "a group of keys such as " + QuantityText.list(new Forms().of((Expected.Group) expected).keys()
                .stream().limit(5).toList());
    }

    private static String units(Expected.Measure measure) {
        return QuantityText.list(Unit.of(measure.dimension()).stream().map(Unit::symbol).toList());
    }

    /** What to do where a list, a group or text stands in place of it. */
    static String example(Expected expected) {
        if (expected instanceof Expected.Group) {
            return "Write its keys below it, indented, or in braces {key: value}; or none or unknown";
        }
        return "Write one value; several in brackets mean that one of them holds";
    }
}
