package org.shortgrain.part.reader;

import java.lang.annotation.Annotation;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.shortgrain.part.Axis;
import org.shortgrain.part.Dimension;
import org.shortgrain.part.DirectionWord;
import org.shortgrain.part.Humidity;
import org.shortgrain.part.In;
import org.shortgrain.part.InShort;
import org.shortgrain.part.IsoDate;
import org.shortgrain.part.Key;
import org.shortgrain.part.Limits;
import org.shortgrain.part.Meaning;
import org.shortgrain.part.Minimum;
import org.shortgrain.part.Origin;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Range;
import org.shortgrain.part.Stated;
import org.shortgrain.part.StressDirection;
import org.shortgrain.part.Verbatim;
import org.shortgrain.part.Vocabulary;
import org.shortgrain.part.Word;

/**
 * The form of a description, read off the records of {@code org.shortgrain.part}: the reader, the published schema and
 * the minimum set all ask here, so that a key exists in one place only, the component of its record.
 */
final class Forms {
    private static final Pattern CAPITAL = Pattern.compile("([A-Z])");

    /** Read off each record once for the whole process: reading annotations is slow. */
    private static final ClassValue<Expected.Fields> FIELDS = new ClassValue<>() {
        @Override
        protected Expected.Fields computeValue(Class<?> type) {
            return fields(type.asSubclass(Record.class));
        }
    };

    Expected.Fields of(Class<? extends Record> type) {
        return FIELDS.get(type);
    }

    /** Visits every key of a group and of the groups within it. */
    void visit(Class<? extends Record> type, BiConsumer<Class<? extends Record>, Expected.Field> visitor) {
        visit(type, visitor, new HashSet<>());
    }

    private void visit(Class<? extends Record> type, BiConsumer<Class<? extends Record>, Expected.Field> visitor,
            Set<Class<?>> seen) {
        if (seen.add(type)) {
            for (Expected.Field field : of(type).all()) {
                visitor.accept(type, field);
                inside(field).ifPresent(inner -> visit(inner, visitor, seen));
            }
        }
    }

    boolean isGroup(Expected expected) {
        return expected instanceof Expected.Group
                || expected instanceof Expected.ListOf list && list.item() instanceof Expected.Group;
    }

    /** What to do about an unknown key: the key that was meant, or the group that has it. */
    String advice(Expected.Fields fields, String key) {
        return Nearest.to(key, fields.keys()).map(near -> "Did you mean \"" + near + "\"?")
                .orElseGet(() -> {
                    List<String> places = places(PartDescription.class, "", key).toList();
                    return places.isEmpty() ? "\"shortgrain schema\" prints the whole form"
                            : "It belongs to " + String.join(" or ", places);
                });
    }

    /** The groups of the form that have the key. */
    private Stream<String> places(Class<? extends Record> type, String path, String key) {
        Stream<String> here = of(type).named(key).map(field -> path.isEmpty() ? "the top of the file" : path).stream();
        return Stream.concat(here, of(type).all().stream().flatMap(field -> inside(field).stream()
                .flatMap(inner -> places(inner, path + "/" + field.key(), key))));
    }

    /** The group that stands at a key, or in the list there. */
    static Optional<Class<? extends Record>> inside(Expected.Field field) {
        Expected item = field.expected() instanceof Expected.ListOf list ? list.item() : field.expected();
        return item instanceof Expected.Group group ? Optional.of(group.type()) : Optional.empty();
    }

    private static Expected.Fields fields(Class<? extends Record> type) {
        RecordComponent[] components = type.getRecordComponents();
        List<Expected.Component> all = new ArrayList<>();
        Map<String, Expected.Field> byKey = new LinkedHashMap<>();
        for (RecordComponent component : components) {
            if (component.getType() == Stated.class) {
                Expected.Field field = field(component);
                all.add(field);
                byKey.put(field.key(), field);
            } else {
                all.add(component.getType() == Origin.class ? Expected.Other.ORIGIN : Expected.Other.VERSION);
            }
        }
        return new Expected.Fields(Records.canonical(type, components), List.copyOf(all),
                Collections.unmodifiableMap(byKey));
    }

    private static Expected.Field field(RecordComponent component) {
        Type type = ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0];
        return new Expected.Field(key(component), expected(component, type),
                annotation(component, Meaning.class).map(Meaning::value).orElse(""), annotation(component, Minimum.class),
                component.isAnnotationPresent(InShort.class), component.getAccessor());
    }

    /** The key is the component's name in lower case with underscores, unless an annotation names another. */
    private static String key(RecordComponent component) {
        return annotation(component, Key.class).map(Key::value).orElseGet(() -> CAPITAL.matcher(component.getName())
                .replaceAll("_$1").toLowerCase(Locale.ROOT));
    }

    private static Expected expected(RecordComponent component, Type type) {
        if (type instanceof ParameterizedType list && list.getRawType() == List.class) {
            return new Expected.ListOf(expected(component, list.getActualTypeArguments()[0]));
        }
        Class<?> plain = (Class<?>) type;
        if (plain == Range.class) {
            return measure(component, annotation(component, In.class).orElseThrow().value());
        }
        if (plain == Double.class) {
            return number(component);
        }
        if (plain == String.class) {
            return new Expected.Text(component.isAnnotationPresent(Verbatim.class),
                    component.isAnnotationPresent(IsoDate.class),
                    annotation(component, Vocabulary.class).map(Vocabulary::value));
        }
        if (plain == Humidity.class) {
            return new Expected.Moisture(measure(component, Dimension.SHARE), words(Humidity.HumidityWord.class));
        }
        return plain == StressDirection.class ? new Expected.Direction(words(DirectionWord.class)) : simple(plain);
    }

    private static Expected simple(Class<?> type) {
        if (type == Boolean.class) {
            return new Expected.Truth();
        }
        if (type == Axis.class) {
            return new Expected.PartAxis();
        }
        return type.isEnum() ? words(type) : new Expected.Group(type.asSubclass(Record.class));
    }

    private static Expected.Measure measure(RecordComponent component, Dimension dimension) {
        return new Expected.Measure(dimension, Expected.Bounds.of(annotation(component, Limits.class), dimension.least(),
                dimension.greatest()));
    }

    private static Expected.Number number(RecordComponent component) {
        boolean share = annotation(component, In.class).isPresent();
        double least = share ? Dimension.SHARE.least() : Double.NEGATIVE_INFINITY;
        double greatest = share ? Dimension.SHARE.greatest() : Double.POSITIVE_INFINITY;
        return new Expected.Number(share, Expected.Bounds.of(annotation(component, Limits.class), least, greatest));
    }

    static Expected.OneOf words(Class<?> type) {
        Map<String, Object> words = new LinkedHashMap<>();
        for (Object constant : type.getEnumConstants()) {
            words.put(constant instanceof Word word ? word.word() : constant.toString(), constant);
            if (constant instanceof Word word) {
                word.otherSpellings().forEach(other -> words.put(other, constant));
            }
        }
        return new Expected.OneOf(words);
    }

    private static <A extends Annotation> Optional<A> annotation(RecordComponent component, Class<A> type) {
        return Optional.ofNullable(component.getAnnotation(type));
    }
}
