package org.shortgrain.part.reader;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shortgrain.part.Location;
import org.shortgrain.part.Origin;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Provenance;
import org.shortgrain.part.Stated;

/**
 * YAML nodes to records, each component filled by its own type and annotations.
 *
 * <p>An own walk and no data binding library: four states, a provenance, alternatives and the place in the file
 * belong to every single value, all problems of a file are wanted at once, and messages need the node itself (quotes,
 * marks). With Jackson each of these would be a custom deserializer over a tree that has lost the marks.
 *
 * <p>Nor does the walk run the published JSON Schema first. It has to look at every node anyway, refuses what the schema
 * refuses (a test with damaged descriptions holds the two together), and can say what was meant, where a validator lists
 * the branches that failed. Compiling the schema alone takes longer than this whole reading at a cold start.
 */
final class Binder {
    private final Problems problems;
    private final Forms forms;
    private final Vocabularies vocabularies;
    private final Values values;
    private final LongForm longForm;
    private final List<String> paths = new ArrayList<>();

    Binder(Problems problems, Forms forms, Vocabularies vocabularies) {
        this.problems = problems;
        this.forms = forms;
        this.vocabularies = vocabularies;
        this.values = new Values(problems, vocabularies);
        this.longForm = new LongForm(problems, forms, values);
    }

    /** JSON pointers of the keys and list items met, in the order of the file. */
    List<String> paths() {
        return paths;
    }

    PartDescription description(Spot root) {
        return (PartDescription) group(Expected.Group.DESCRIPTION, root);
    }

    private Record group(Expected.Group group, Spot spot) {
        Expected.Fields fields = forms.of(group);
        Map<String, Spot> entries = spot.entries();
        Map<String, Stated<?>> stated = new LinkedHashMap<>();
        Optional<String> ref = Optional.empty();
        for (Map.Entry<String, Spot> entry : entries.entrySet()) {
            Optional<Expected.Field> field = fields.named(entry.getKey());
            if (field.isPresent()) {
                stated.put(entry.getKey(), key(field.get().expected(), entry.getValue()));
            } else if (entry.getKey().equals("ref")) {
                ref = longForm.ref(entry.getValue());
            } else if (!(spot.path().isEmpty() && entry.getKey().equals(SchemaVersion.KEY))) {
                problems.add(ProblemCode.UNKNOWN_KEY, entry.getValue().atKey(), Values.shown(entry.getKey()),
                        "one of " + QuantityText.list(fields.keys()), forms.advice(fields, entry.getKey()));
            }
        }
        return record(group, stated, new Origin(spot.at(), ref));
    }

    /** The group whose main key alone is given. */
    private Record inShort(Expected.Group group, Expected.Field main, Spot spot) {
        Stated<?> stated = key(main.expected(), spot.as(main.key()));
        return record(group, Map.of(main.key(), stated), new Origin(spot.at(), Optional.empty()));
    }

    private Record record(Expected.Group group, Map<String, Stated<?>> stated, Origin origin) {
        List<Expected.Component> components = forms.of(group).components();
        Object[] arguments = new Object[components.size()];
        for (int i = 0; i < arguments.length; i++) {
            if (components.get(i) instanceof Expected.Field field) {
                Stated<?> value = stated.get(field.key());
                arguments[i] = value == null ? absent(field, origin.at()) : value;
            } else {
                arguments[i] = components.get(i) == Expected.Other.ORIGIN ? origin : SchemaVersion.READ;
            }
        }
        return Groups.of(group.type(), arguments);
    }

    private static Stated<?> absent(Expected.Field field, Location group) {
        return new Stated.Absent<>(new Location(group.path() + "/" + field.key(), group.line(), group.column()));
    }

    /** What is stated at a key. */
    private Stated<?> key(Expected expected, Spot spot) {
        paths.add(spot.path());
        if (!longForm.isLong(expected, spot)) {
            return stated(expected, spot, LongForm.plain(spot.at()));
        }
        LongForm.Parts parts = longForm.parts(expected, spot);
        return parts.value().isPresent() ? stated(expected, parts.value().get(), parts.provenance())
                : new Stated.Unknown<>(spot.at());
    }

    private Stated<?> stated(Expected expected, Spot spot, Provenance provenance) {
        if (spot.isEmpty() || Scalar.isNothing(spot)) {
            problems.add(ProblemCode.EMPTY_VALUE, spot.atKey(), Wanted.of(expected, vocabularies));
            return new Stated.Unknown<>(spot.at());
        }
        Optional<Scalar.State> state = Scalar.state(spot);
        if (state.isPresent()) {
            return state.get() == Scalar.State.NONE ? new Stated.None<>(provenance) : new Stated.Unknown<>(spot.at());
        }
        boolean several = spot.isList() && !(expected instanceof Expected.PartAxis && AxisText.isVector(spot));
        if (several) {
            return several(expected, spot, provenance);
        }
        Optional<?> value = value(expected.item(), spot);
        if (value.isEmpty()) {
            return new Stated.Unknown<>(spot.at());
        }
        return known(List.of(expected instanceof Expected.ListOf ? List.of(value.get()) : value.get()), provenance);
    }

    /** A list: all of the items where a list is expected, one of them where one value is. */
    private Stated<?> several(Expected expected, Spot spot, Provenance provenance) {
        if (spot.size() == 1 && Scalar.state(spot.item(0)).isPresent()) {
            return stated(expected, spot.item(0), provenance);
        }
        List<Object> items = new ArrayList<>();
        List<String> refs = new ArrayList<>();
        add(provenance.ref(), refs);
        for (int i = 0; i < spot.size(); i++) {
            Spot at = spot.item(i);
            paths.add(at.path());
            LongForm.Item one = longForm.item(expected.item(), at);
            add(one.ref(), refs);
            add(value(expected.item(), one.value()), items);
        }
        if (items.isEmpty()) {
            return new Stated.Unknown<>(spot.at());
        }
        Optional<String> ref = refs.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", refs));
        Provenance joined = new Provenance(provenance.kind(), ref, provenance.scope(), provenance.at());
        return known(expected instanceof Expected.ListOf ? List.of(List.copyOf(items)) : items, joined);
    }

    private static <T> void add(Optional<? extends T> one, List<T> all) {
        if (one.isPresent()) {
            all.add(one.get());
        }
    }

    private Optional<?> value(Expected expected, Spot spot) {
        Optional<Scalar> scalar = Scalar.of(spot);
        if (Scalar.isNothing(spot)) {
            problems.add(ProblemCode.EMPTY_VALUE, spot.at(), Wanted.of(expected, vocabularies));
            return Optional.empty();
        }
        if (Scalar.state(spot).isPresent()) {
            problems.add(ProblemCode.STATE_IN_LIST, spot.at(), scalar.orElseThrow().text());
            return Optional.empty();
        }
        if (!(expected instanceof Expected.Group group)) {
            return values.read(expected, spot);
        }
        if (spot.isGroup()) {
            return Optional.of(group(group, spot));
        }
        Optional<Expected.Field> main = forms.of(group).inShort();
        return main.isPresent() && scalar.isPresent() ? Optional.of(inShort(group, main.get(), spot))
                : values.wrongKind(expected, spot);
    }

    private static Stated<Object> known(List<?> alternatives, Provenance provenance) {
        return new Stated.Known<>(List.copyOf(alternatives), provenance);
    }
}
