package org.shortgrain.part.reader;

import java.lang.annotation.Annotation;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.shortgrain.part.Axis;
import org.shortgrain.part.Dimension;
import org.shortgrain.part.Humidity;
import org.shortgrain.part.In;
import org.shortgrain.part.InShort;
import org.shortgrain.part.IsoDate;
import org.shortgrain.part.Key;
import org.shortgrain.part.Limits;
import org.shortgrain.part.Meaning;
import org.shortgrain.part.Minimum;
import org.shortgrain.part.Origin;
import org.shortgrain.part.Range;
import org.shortgrain.part.Stated;
import org.shortgrain.part.StressDirection;
import org.shortgrain.part.Verbatim;
import org.shortgrain.part.Vocabulary;

/** Reads the form of a description off the records of {@code org.shortgrain.part}, their components and annotations. */
final class RecordForms {
    private static final Pattern CAPITAL = Pattern.compile("([A-Z])");

    private RecordForms() {
    }

    /** Each group of the form by its name, a group before those that stand in it. */
    static Map<String, Expected.Fields> read() {
        Map<String, Expected.Fields> forms = new LinkedHashMap<>();
        add(Expected.Group.DESCRIPTION, forms);
        return forms;
    }

    private static void add(Expected.Group group, Map<String, Expected.Fields> forms) {
        if (!forms.containsKey(group.name())) {
            Expected.Fields fields = fields(group.type());
            forms.put(group.name(), fields);
            fields.all().forEach(field -> Forms.inside(field).ifPresent(inner -> add(inner, forms)));
        }
    }

    private static Expected.Fields fields(Class<? extends Record> type) {
        List<Expected.Component> all = new ArrayList<>();
        for (RecordComponent component : type.getRecordComponents()) {
            if (component.getType() == Stated.class) {
                all.add(field(component));
            } else {
                all.add(component.getType() == Origin.class ? Expected.Other.ORIGIN : Expected.Other.VERSION);
            }
        }
        return Expected.Fields.of(all);
    }

    private static Expected.Field field(RecordComponent component) {
        Type type = ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0];
        return new Expected.Field(key(component), component.getName(), expected(component, type),
                annotation(component, Meaning.class).map(Meaning::value).orElse(""),
                annotation(component, Minimum.class).map(minimum -> new Expected.Need(minimum.value(), minimum.noneAnswers())),
                component.isAnnotationPresent(InShort.class));
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
            Dimension dimension = annotation(component, In.class).orElseThrow().value();
            return new Expected.Measure(dimension, bounds(component, dimension.least(), dimension.greatest()));
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
            return new Expected.Moisture(bounds(component, Dimension.SHARE.least(), Dimension.SHARE.greatest()));
        }
        return plain == StressDirection.class ? new Expected.Direction() : simple(plain);
    }

    private static Expected simple(Class<?> type) {
        if (type == Boolean.class) {
            return new Expected.Truth();
        }
        if (type == Axis.class) {
            return new Expected.PartAxis();
        }
        return type.isEnum() ? Expected.OneOf.of(type) : Expected.Group.of(type);
    }

    private static Expected.Number number(RecordComponent component) {
        boolean share = annotation(component, In.class).isPresent();
        double least = share ? Dimension.SHARE.least() : Double.NEGATIVE_INFINITY;
        double greatest = share ? Dimension.SHARE.greatest() : Double.POSITIVE_INFINITY;
        return new Expected.Number(share, bounds(component, least, greatest));
    }

    private static Expected.Bounds bounds(RecordComponent component, double least, double greatest) {
        Limits given = component.getAnnotation(Limits.class);
        if (given == null) {
            return new Expected.Bounds(least, greatest);
        }
        double lower = given.positive() ? 0 : least;
        return new Expected.Bounds(Double.isNaN(given.min()) ? lower : given.min(),
                Double.isNaN(given.max()) ? greatest : given.max(), given.positive(), given.usualMin(), given.usualMax());
    }

    private static <A extends Annotation> Optional<A> annotation(RecordComponent component, Class<A> type) {
        return Optional.ofNullable(component.getAnnotation(type));
    }
}
