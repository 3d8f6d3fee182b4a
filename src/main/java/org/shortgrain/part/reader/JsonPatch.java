package org.shortgrain.part.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A change of a description, as a JSON Patch after RFC 6902 (read): operations in the order in which they are made.
 *
 * <p>Of the six operations it has the five that change something; {@code test} is left out, since a change is made for one
 * description and names its hash elsewhere. Own code and no library: it works on the nodes of the YAML file, which keep
 * quotes and positions, and none of the libraries does.
 *
 * @param operations the operations
 */
public record JsonPatch(List<Operation> operations) {

    /** A change that changes nothing. */
    public static final JsonPatch NOTHING = new JsonPatch(List.of());

    /** Copies the list. */
    public JsonPatch {
        operations = List.copyOf(operations);
    }

    /** What an operation does. */
    public enum Kind {
        /** Puts a value at a key, or before an item of a list. */
        ADD,
        /** Puts a value in the place of another. */
        REPLACE,
        /** Takes a value away. */
        REMOVE,
        /** Takes a value from one place to another. */
        MOVE,
        /** Copies a value from one place to another. */
        COPY;

        private String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * One operation.
     *
     * @param kind  what it does
     * @param path  JSON pointer of the place that it changes
     * @param from  where the value comes from, for move and copy; empty otherwise
     * @param value the value, for add and replace; empty otherwise
     */
    public record Operation(Kind kind, String path, Optional<String> from, Optional<DescriptionValue> value) {

        /** Refuses an operation that lacks what its kind needs. */
        public Operation {
            boolean valued = kind == Kind.ADD || kind == Kind.REPLACE;
            boolean moved = kind == Kind.MOVE || kind == Kind.COPY;
            if (valued != value.isPresent() || moved != from.isPresent()) {
                throw new IllegalArgumentException(kind.word() + " " + path + " lacks value or origin, or has one too many");
            }
        }

        private String json() {
            return "{\"op\": \"" + kind.word() + "\", " + from.map(place -> "\"from\": " + DescriptionValue.quoted(place) + ", ")
                    .orElse("") + "\"path\": " + DescriptionValue.quoted(path)
                    + value.map(one -> ", \"value\": " + one.json()).orElse("") + "}";
        }
    }

    /**
     * {@return an operation that puts a value at a key or before an item}
     *
     * @param path  JSON pointer
     * @param value the value
     */
    public static Operation add(String path, DescriptionValue value) {
        return new Operation(Kind.ADD, path, Optional.empty(), Optional.of(value));
    }

    /**
     * {@return an operation that puts a value in the place of another}
     *
     * @param path  JSON pointer
     * @param value the value
     */
    public static Operation replace(String path, DescriptionValue value) {
        return new Operation(Kind.REPLACE, path, Optional.empty(), Optional.of(value));
    }

    /**
     * {@return an operation that takes a value away}
     *
     * @param path JSON pointer
     */
    public static Operation remove(String path) {
        return new Operation(Kind.REMOVE, path, Optional.empty(), Optional.empty());
    }

    /**
     * {@return an operation that takes a value from one place to another}
     *
     * @param from JSON pointer of the place that it leaves
     * @param to   JSON pointer of its new place, in what is left
     */
    public static Operation move(String from, String to) {
        return new Operation(Kind.MOVE, to, Optional.of(from), Optional.empty());
    }

    /**
     * {@return this change and then another}
     *
     * @param next made for what this change leaves
     */
    public JsonPatch then(JsonPatch next) {
        return new JsonPatch(Stream.concat(operations.stream(), next.operations.stream()).toList());
    }

    /** {@return whether it changes nothing} */
    public boolean isEmpty() {
        return operations.isEmpty();
    }

    /** {@return the change as JSON, one operation in a line} */
    public String json() {
        return operations.stream().map(Operation::json).collect(Collectors.joining(",\n ", "[", "]"));
    }

    /**
     * {@return the change that a text holds}
     *
     * @param json JSON after RFC 6902
     * @throws IllegalArgumentException if it holds none
     */
    public static JsonPatch parse(String json) {
        List<Operation> operations = new ArrayList<>();
        for (DescriptionValue item : DescriptionValue.of(json).items()) {
            Map<String, DescriptionValue> entries = item.entries();
            if (!entries.containsKey("op") || !entries.containsKey("path")) {
                throw new IllegalArgumentException("an operation needs op and path: " + item);
            }
            operations.add(new Operation(Kind.valueOf(entries.get("op").text().toUpperCase(Locale.ROOT)),
                    entries.get("path").text(), Optional.ofNullable(entries.get("from")).map(DescriptionValue::text),
                    Optional.ofNullable(entries.get("value"))));
        }
        return new JsonPatch(operations);
    }
}
