package org.shortgrain.part.reader;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import org.shortgrain.part.Location;
import org.yaml.snakeyaml.nodes.Node;

/**
 * A YAML file of a few keys that people write beside a description or a report. Read as the description is: nodes only,
 * every problem with line and column, unknown keys refused with the nearest known one.
 */
final class SmallFile {

    private final Problems problems;

    SmallFile(Problems problems) {
        this.problems = problems;
    }

    /** The group of keys that a file holds; empty if a problem was reported. */
    Optional<Spot> group(byte[] bytes, String form) {
        if (bytes.length > PartReader.MOST_BYTES) {
            problems.add(ProblemCode.TOO_LARGE, new Location("", 0, 0), PartReader.MOST_BYTES);
            return Optional.empty();
        }
        Optional<Node> node = new YamlText(problems).compose(bytes);
        return node.map(Spot::root).filter(root -> isGroup(root, form));
    }

    /** Whether a value is a group of keys; anything else is reported. */
    boolean isGroup(Spot spot, String form) {
        if (!spot.isGroup()) {
            problems.add(ProblemCode.WRONG_KIND, spot.at(), spot.isList() ? "a list" : "plain text", form,
                    "Write its keys and values");
        }
        return spot.isGroup();
    }

    /** Reports keys that are not among the known ones. */
    void refuseOthers(Spot group, Collection<String> known) {
        for (Map.Entry<String, Spot> entry : group.entries().entrySet()) {
            if (!known.contains(entry.getKey())) {
                problems.add(ProblemCode.UNKNOWN_KEY, entry.getValue().atKey(), Values.shown(entry.getKey()),
                        "one of " + String.join(", ", known),
                        Nearest.advice(entry.getKey(), known, "Take it out, or write it in a comment"));
            }
        }
    }

    /** A text that must be there. */
    Optional<String> needed(Spot group, String key, String why) {
        Optional<String> text = text(group, key);
        if (text.isEmpty() && group.entry(key).isEmpty()) {
            problems.add(ProblemCode.MISSING_FIELD, group.atKey(), key, "missing", why);
        }
        return text;
    }

    /** A text that may be left out. */
    Optional<String> text(Spot group, String key) {
        Optional<Spot> value = group.entry(key);
        if (value.isEmpty()) {
            return Optional.empty();
        }
        Optional<Scalar> scalar = Scalar.of(value.get());
        if (scalar.isEmpty()) {
            problems.add(ProblemCode.WRONG_KIND, value.get().at(), value.get().isList() ? "a list" : "a group", "text",
                    "Write one line of text");
            return Optional.empty();
        }
        if (scalar.get().isNothing() || scalar.get().state().isPresent()) {
            problems.add(ProblemCode.EMPTY_VALUE, value.get().at(), "text");
            return Optional.empty();
        }
        OptionalInt unprintable = Values.unprintable(scalar.get().text());
        if (unprintable.isPresent()) {
            problems.add(ProblemCode.UNPRINTABLE_TEXT, value.get().at(), YamlText.hex(unprintable.getAsInt()));
            return Optional.empty();
        }
        return Optional.of(scalar.get().text().strip());
    }

    /** A date, or a part of one. */
    Optional<String> date(Spot group, String key) {
        return text(group, key).filter(text -> isDate(group, key, text));
    }

    /** A date that must be there. */
    Optional<String> neededDate(Spot group, String key, String why) {
        return needed(group, key, why).filter(text -> isDate(group, key, text));
    }

    private boolean isDate(Spot group, String key, String text) {
        boolean date = Dates.isDate(text);
        if (!date) {
            problems.add(ProblemCode.NOT_A_DATE, group.entry(key).orElse(group).at(), Values.shown(text));
        }
        return date;
    }

    /** The items of a list that can be read. */
    <T> List<T> items(Spot list, String form, Function<Spot, Optional<T>> read) {
        List<T> items = new ArrayList<>();
        if (!list.isList()) {
            problems.add(ProblemCode.WRONG_KIND, list.at(), list.isGroup() ? "a group" : "plain text", form,
                    "Write each item in a line that begins with a hyphen");
            return items;
        }
        for (int i = 0; i < list.size(); i++) {
            Spot item = list.item(i);
            if (isGroup(item, form)) {
                read.apply(item).ifPresent(items::add);
            }
        }
        return items;
    }

    void add(ProblemCode code, Location at, Object... values) {
        problems.add(code, at, values);
    }
}
