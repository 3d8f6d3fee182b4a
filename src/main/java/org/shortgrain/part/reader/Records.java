package org.shortgrain.part.reader;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;

/** Records made and asked by reflection. */
final class Records {

    private Records() {
    }

    static <R extends Record> R construct(Class<R> type, List<Object> arguments) {
        Class<?>[] types = Arrays.stream(type.getRecordComponents()).map(RecordComponent::getType).toArray(Class[]::new);
        try {
            Constructor<R> canonical = type.getDeclaredConstructor(types);
            return canonical.newInstance(arguments.toArray());
        } catch (NoSuchMethodException | InstantiationException | IllegalAccessException e) {
            throw new IllegalStateException("a public record has a public canonical constructor: " + type, e);
        } catch (InvocationTargetException e) {
            throw new IllegalStateException("the records of a description refuse no stated value: " + type, e);
        }
    }

    static Object value(Record record, RecordComponent component) {
        try {
            return component.getAccessor().invoke(record);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException("a public record has public accessors: " + record.getClass(), e);
        }
    }
}
