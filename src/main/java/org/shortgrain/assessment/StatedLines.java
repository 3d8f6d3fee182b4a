package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import org.shortgrain.part.Axis;
import org.shortgrain.part.Dimension;
import org.shortgrain.part.Humidity;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Provenance;
import org.shortgrain.part.Quantity;
import org.shortgrain.part.Range;
import org.shortgrain.part.Stated;
import org.shortgrain.part.StressDirection;
import org.shortgrain.part.Unit;
import org.shortgrain.part.Word;
import org.shortgrain.part.reader.Groups;
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
        for (Stated<?> stated : Groups.stated(group)) {
            stated(stated);
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
        if (Groups.isGroup(first)) {
            groups(known.alternatives());
        } else if (first instanceof List<?> list && !list.isEmpty() && Groups.isGroup(list.get(0))) {
            for (Object groups : known.alternatives()) {
                groups((List<?>) groups);
            }
        } else {
            List<String> texts = new ArrayList<>();
            List<String> inSi = new ArrayList<>();
            for (Object value : known.alternatives()) {
                texts.add(text(value));
                add(inSi(value), inSi);
            }
            lines.add(new StatedLine(known.at().path(), String.join(" or ", texts), String.join(" or ", inSi),
                    note(known.provenance())));
        }
    }

    private static void add(Optional<String> text, List<String> texts) {
        if (text.isPresent()) {
            texts.add(text.get());
        }
    }

    private void groups(List<?> groups) {
        for (Object group : groups) {
            record((Record) group);
        }
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
        Optional<String> min = limit(range.min());
        Optional<String> max = limit(range.max());
        if (range.isSingle() || min.isEmpty() && max.isEmpty()) {
            return min;
        }
        return Optional.of(max.isEmpty() ? "at least " + min.get()
                : min.map(low -> low + " - ").orElse("at most ") + max.get());
    }

    /** Hours and years are read as they stand in either system. */
    private static Optional<String> limit(Optional<Quantity> limit) {
        if (limit.isEmpty()) {
            return Optional.empty();
        }
        Matcher written = Unit.WRITTEN.matcher(limit.get().entered().strip());
        Optional<Unit> unit = written.matches() ? Unit.of(written.group(2).strip()) : Optional.empty();
        boolean told = unit.isPresent() && unit.get().dimension() != Dimension.TIME;
        return told ? Optional.of(Unit.print(limit.get().si(), unit.get().dimension())) : Optional.empty();
    }

    private static String note(Provenance provenance) {
        List<String> words = new ArrayList<>();
        if (provenance.kind() != Provenance.Kind.STATED) {
            words.add(provenance.kind().word());
        }
        if (provenance.scope().isPresent()) {
            words.add("for the " + provenance.scope().get().word());
        }
        add(provenance.ref(), words);
        return String.join("; ", words);
    }
}
