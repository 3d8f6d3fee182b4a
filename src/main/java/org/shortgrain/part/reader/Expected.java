package org.shortgrain.part.reader;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shortgrain.part.Dimension;
import org.shortgrain.part.DirectionWord;
import org.shortgrain.part.Humidity;
import org.shortgrain.part.Minimum;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Vocabulary;
import org.shortgrain.part.Word;

/**
 * What may stand at a key, as the type and the annotations of a record's component say.
 *
 * <p>Records and enums are named, and loaded when a value of theirs is met: one description uses a part of the form.
 */
sealed interface Expected {

    /** What one item is, if a list is expected; the same, if not. */
    default Expected item() {
        return this;
    }

    /**
     * Text.
     *
     * @param verbatim whether every word is taken as it stands
     * @param date     whether it is a date
     * @param words    list of words it is taken from; empty if it is free
     */
    record Text(boolean verbatim, boolean date, Optional<Vocabulary.List> words) implements Expected {
    }

    /**
     * A number without unit.
     *
     * @param share  whether per cent are read as well
     * @param bounds its limits
     */
    record Number(boolean share, Bounds bounds) implements Expected {
    }

    /** True or false. */
    record Truth() implements Expected {
    }

    /**
     * A quantity with unit, or a range of them.
     *
     * @param dimension what it is
     * @param bounds    its limits
     */
    record Measure(Dimension dimension, Bounds bounds) implements Expected {
    }

    /**
     * A word of a closed list.
     *
     * @param enumName the enum of the words, by its full name
     */
    record OneOf(String enumName) implements Expected {
        /** Collected once for the whole process. */
        private static final ClassValue<Map<String, Object>> WORDS = new ClassValue<>() {
            @Override
            protected Map<String, Object> computeValue(Class<?> type) {
                Map<String, Object> words = new LinkedHashMap<>();
                for (Object constant : type.getEnumConstants()) {
                    words.put(constant instanceof Word word ? word.word() : constant.toString(), constant);
                    for (String other : constant instanceof Word word ? word.otherSpellings() : List.<String>of()) {
                        words.put(other, constant);
                    }
                }
                return Collections.unmodifiableMap(words);
            }
        };

        static OneOf of(Class<?> type) {
            return new OneOf(type.getName());
        }

        /** The words, with what each stands for. */
        Map<String, Object> words() {
            return WORDS.get(Expected.type(enumName));
        }
    }

    /** A direction in the axes of the part. */
    record PartAxis() implements Expected {
    }

    /** A grain direction or {@code {axis: ...}}. */
    record Direction() implements Expected {
        OneOf words() {
            return OneOf.of(DirectionWord.class);
        }
    }

    /**
     * A relative humidity or a word.
     *
     * @param bounds limits of the relative humidity
     */
    record Moisture(Bounds bounds) implements Expected {
        Measure relative() {
            return new Measure(Dimension.SHARE, bounds);
        }

        OneOf words() {
            return OneOf.of(Humidity.HumidityWord.class);
        }
    }

    /**
     * A group of keys.
     *
     * @param name the record of {@code org.shortgrain.part} that it becomes, by its simple name
     */
    record Group(String name) implements Expected {
        private static final String PACKAGE = PartDescription.class.getPackageName() + ".";
        /** The whole description. */
        static final Group DESCRIPTION = of(PartDescription.class);

        static Group of(Class<?> type) {
            return new Group(type.getSimpleName());
        }

        /** The record that it becomes. */
        Class<? extends Record> type() {
            return Expected.type(PACKAGE + name).asSubclass(Record.class);
        }
    }

    /**
     * A list; one item alone may stand for it.
     *
     * @param item what each item is
     */
    record ListOf(Expected item) implements Expected {
    }

    /**
     * Limits of a number in SI units.
     *
     * @param min      least value
     * @param max      greatest value
     * @param positive whether zero is refused
     * @param usualMin below it a warning is given
     * @param usualMax above it a warning is given
     */
    record Bounds(double min, double max, boolean positive, double usualMin, double usualMax) {

        /** Outer limits alone. */
        Bounds(double min, double max) {
            this(min, max, false, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        }

        boolean hold(double si) {
            return si >= min && si <= max && !(positive && si <= 0);
        }

        boolean areUsual(double si) {
            return si >= usualMin && si <= usualMax;
        }
    }

    /** A component of a record. */
    sealed interface Component {
    }

    /** Components that are no keys. */
    enum Other implements Component {
        /** The place of the group. */
        ORIGIN,
        /** The version of the form. */
        VERSION
    }

    /**
     * A key of a group.
     *
     * @param key       key in the file
     * @param component name of the component that it fills
     * @param expected  what may stand there
     * @param meaning   what it means
     * @param need      whether it belongs to the minimum set
     * @param inShort   whether its value alone may stand for the group
     */
    record Field(String key, String component, Expected expected, String meaning, Optional<Need> need, boolean inShort)
            implements Component {
    }

    /**
     * That a key belongs to the minimum set.
     *
     * @param role        what its absence holds back
     * @param noneAnswers whether {@code none} answers it
     */
    record Need(Minimum.Role role, boolean noneAnswers) {
    }

    /**
     * The keys of a group.
     *
     * @param components components in the order of the record
     * @param byKey      those that are keys, in the same order
     */
    record Fields(List<Component> components, Map<String, Field> byKey) {

        static Fields of(List<Component> components) {
            Map<String, Field> byKey = new LinkedHashMap<>();
            for (Component component : components) {
                if (component instanceof Field field) {
                    byKey.put(field.key(), field);
                }
            }
            return new Fields(List.copyOf(components), Collections.unmodifiableMap(byKey));
        }

        Optional<Field> named(String key) {
            return Optional.ofNullable(byKey.get(key));
        }

        Optional<Field> inShort() {
            for (Field field : all()) {
                if (field.inShort()) {
                    return Optional.of(field);
                }
            }
            return Optional.empty();
        }

        Collection<Field> all() {
            return byKey.values();
        }

        List<String> keys() {
            return List.copyOf(byKey.keySet());
        }
    }

    private static Class<?> type(String name) {
        try {
            return Class.forName(name);
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException("the form names a type that is not there: " + name, e);
        }
    }
}
