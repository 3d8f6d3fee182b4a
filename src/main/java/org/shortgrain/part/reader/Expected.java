package org.shortgrain.part.reader;

import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shortgrain.part.Dimension;
import org.shortgrain.part.Limits;
import org.shortgrain.part.Minimum;
import org.shortgrain.part.Vocabulary;

/** What may stand at a key, read off the type and the annotations of a record's component. */
sealed interface Expected {

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
     * @param words the words, with what each stands for
     */
    record OneOf(Map<String, Object> words) implements Expected {
    }

    /** A direction in the axes of the part. */
    record PartAxis() implements Expected {
    }

    /** A grain direction or {@code {axis: ...}}. */
    record Direction(OneOf words) implements Expected {
    }

    /** A relative humidity or a word. */
    record Moisture(Measure relative, OneOf words) implements Expected {
    }

    /**
     * A group of keys.
     *
     * @param type record it becomes
     */
    record Group(Class<? extends Record> type) implements Expected {
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

        static Bounds of(Optional<Limits> limits, double least, double greatest) {
            if (limits.isEmpty()) {
                return new Bounds(least, greatest, false, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
            }
            Limits given = limits.get();
            double lower = given.positive() ? 0 : least;
            return new Bounds(Double.isNaN(given.min()) ? lower : given.min(),
                    Double.isNaN(given.max()) ? greatest : given.max(), given.positive(), given.usualMin(),
                    given.usualMax());
        }

        boolean hold(double si) {
            return si >= min && si <= max && !(positive && si <= 0);
        }

        boolean areUsual(double si) {
            return si >= usualMin && si <= usualMax;
        }
    }

    /**
     * A key of a group.
     *
     * @param key       key in the file
     * @param expected  what may stand there
     * @param meaning   what it means
     * @param minimum   whether it belongs to the minimum set
     * @param inShort   whether its value alone may stand for the group
     * @param accessor  accessor of the component it fills
     */
    record Field(String key, Expected expected, String meaning, Optional<Minimum> minimum, boolean inShort,
            Method accessor) implements Component {
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
     * The keys of a group.
     *
     * @param constructor canonical constructor of the record it becomes
     * @param components  components in the order of the record
     * @param byKey       those that are keys, in the same order
     */
    record Fields(Constructor<? extends Record> constructor, List<Component> components, Map<String, Field> byKey) {

        Optional<Field> named(String key) {
            return Optional.ofNullable(byKey.get(key));
        }

        Optional<Field> inShort() {
            return byKey.values().stream().filter(Field::inShort).findFirst();
        }

        Collection<Field> all() {
            return byKey.values();
        }

        List<String> keys() {
            return List.copyOf(byKey.keySet());
        }
    }
}
