package org.shortgrain.part.reader;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The form of a description: the reader, the published schema and the minimum set all ask here. A key exists in one place
 * only, the component of its record.
 */
final class Forms {
    /** The same for the whole process. */
    private static final Map<String, Expected.Fields> SHIPPED = FormTable.shipped();

    private final Map<String, Expected.Fields> groups;

    Forms() {
        this(SHIPPED);
    }

    /** A form from elsewhere: each group by its name. */
    Forms(Map<String, Expected.Fields> groups) {
        this.groups = groups;
    }

    Expected.Fields of(Expected.Group group) {
        return groups.get(group.name());
    }

    /** What to do about an unknown key: the key that was meant, or the group that has it. */
    String advice(Expected.Fields fields, String key) {
        return Nearest.to(key, fields.keys()).map(near -> "Did you mean \"" + near + "\"?")
                .orElseGet(() -> {
                    List<String> places = places(Expected.Group.DESCRIPTION, "", key).toList();
                    return places.isEmpty() ? "\"shortgrain schema\" prints the whole form"
                            : "It belongs to " + String.join(" or ", places);
                });
    }

    /** The groups of the form that have the key. */
    private Stream<String> places(Expected.Group group, String path, String key) {
        Stream<String> here = of(group).named(key).map(field -> path.isEmpty() ? "the top of the file" : path).stream();
        return Stream.concat(here, of(group).all().stream().flatMap(field -> inside(field).stream()
                .flatMap(inner -> places(inner, path + "/" + field.key(), key))));
    }

    /** The group that stands at a key, or in the list there. */
    static Optional<Expected.Group> inside(Expected.Field field) {
        return field.expected().item() instanceof Expected.Group group ? Optional.of(group) : Optional.empty();
    }
}
