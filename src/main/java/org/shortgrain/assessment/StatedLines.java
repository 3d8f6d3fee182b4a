package org.shortgrain.assessment;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import org.shortgrain.part.Axis;
import org.shortgrain.part.Dimension;
import org.shortgrain.part.Humidity;
import org.shortgrain.part.Origin;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Provenance;
import org.shortgrain.part.Quantity;
import org.shortgrain.part.Range;
import org.shortgrain.part.Stated;
import org.shortgrain.part.StressDirection;
import org.shortgrain.part.Unit;
import org.shortgrain.part.Word;
import org.shortgrain.review.StatedLine;

/** Lists a part description value by value, as it was entered, for the report. */
final class StatedLines {

    private final List<StatedLine> lines = new ArrayList<>();

    private StatedLines() {
    }

    /**
     * {@return every value, none and unknown of a description, in its order}
     *
     * @param description the description
     */
    static List<StatedLine> of(PartDescription description) {
        StatedLines walk = new StatedLines();
        walk.record(description);
        return List.copyOf(walk.lines);
    }

    private void record(Record group) {
        for (RecordComponent component : group.getClass().getRecordComponents()) {
            if (value(group, component) instanceof Stated<?> stated) {
                stated(stated);
            }
        }
    }

    private void stated(Stated<?> stated) {
        if (stated instanceof Stated.Known<?> known) {
            known(known);
        } else if (stated instanceof Stated.None<?> none) {
            lines.add(new StatedLine(none.at().path(), "none", "", note(none.provenance())));
        } else if (stated instanceof Stated.Unknown<?> unknown) {
            lines.add(new StatedLine(unknown.at().path(), "unknown", "", ""));
        }
    }

    private void known(Stated.Known<?> known) {
        Object first = known.alternatives().get(0);
        if (isGroup(first)) {
            known.alternatives().forEach(group -> record((Record) group));
        } else if (first instanceof List<?> list && !list.isEmpty() && isGroup(list.get(0))) {
            known.alternatives().forEach(groups -> ((List<?>) groups).forEach(group -> record((Record) group)));
        } else {
            List<String> texts = known.alternatives().stream().map(StatedLines::text).toList();
            List<String> inSi = known.alternatives().stream().flatMap(value -> inSi(value).stream()).toList();
            lines.add(new StatedLine(known.at().path(), String.join(" or ", texts), String.join(" or ", inSi),
                    note(known.provenance())));
        }
    }

    /** A group is a record with an origin; everything else is a value. */
    static boolean isGroup(Object value) {
        if (!(value instanceof Record)) {
            return false;
        }
        for (RecordComponent component : value.getClass().getRecordComponents()) {
            if (component.getType() == Origin.class) {
                return true;
            }
        }
        return false;
    }

    /** {@return a value in words, quantities as they were entered} */
    static String text(Object value) {
        if (value instanceof Range range) {
            return range.entered();
        }
        if (value instanceof Word word) {
            return word.word();
        }
        if (value instanceof Axis axis) {
            return axis.entered();
        }
        if (value instanceof StressDirection.Named named) {
            return named.word().word();
        }
        if (value instanceof StressDirection.Along along) {
            return "axis " + along.axis().entered();
        }
        if (value instanceof Humidity humidity) {
            return humidity.relative().map(Range::entered)
                    .orElseGet(() -> humidity.word().map(Word::word).orElse(""));
        }
        if (value instanceof List<?> list) {
            return String.join(", ", list.stream().map(StatedLines::text).toList());
        }
        return String.valueOf(value);
    }

    /** A quantity in the units that reports print; empty for what has no unit. */
    private static Optional<String> inSi(Object value) {
        if (value instanceof Humidity humidity) {
            return humidity.relative().flatMap(StatedLines::inSi);
        }
        if (!(value instanceof Range range)) {
            return Optional.empty();
        }
        Optional<String> min = range.min().flatMap(StatedLines::inSi);
        Optional<String> max = range.max().flatMap(StatedLines::inSi);
        if (range.isSingle() || min.isEmpty() && max.isEmpty()) {
            return min;
        }
        return Optional.of(max.isEmpty() ? "at least " + min.get()
                : min.map(low -> low + " - ").orElse("at most ") + max.get());
    }

    /** Hours and years are read as they stand in either system. */
    private static Optional<String> inSi(Quantity quantity) {
        Matcher written = Unit.WRITTEN.matcher(quantity.entered().strip());
        return written.matches() ? Unit.of(written.group(2).strip()).filter(unit -> unit.dimension() != Dimension.TIME)
                .map(unit -> Unit.print(quantity.si(), unit.dimension())) : Optional.empty();
    }

    private static String note(Provenance provenance) {
        List<String> words = new ArrayList<>();
        if (provenance.kind() != Provenance.Kind.STATED) {
            words.add(provenance.kind().word());
        }
        provenance.scope().ifPresent(scope -> words.add("for the " + scope.word()));
        provenance.ref().ifPresent(words::add);
        return String.join("; ", words);
    }

    private static Object value(Record group, RecordComponent component) {
        try {
            return component.getAccessor().invoke(group);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(component.toString(), e);
        }
    }
}
